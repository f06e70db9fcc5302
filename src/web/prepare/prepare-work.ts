import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import type {
  AnsweredNow,
  Chosen,
  Edit,
  FileKind,
  SetupRest,
  SetupView,
  TableNow,
  Texts,
  Whole,
} from '../engine/prepare-wire.ts';
import { type Followed, followed } from './followed.ts';
import { type PrepareEngine, startEngine } from './prepare-engine.ts';
import { historyFrom, redone, type TextHistory, undone, withTexts } from './text-history.ts';

/** What the page knows, and what can be done on it. */
export interface PrepareWork {
  readonly history: TextHistory;
  readonly whole: Whole | null;
  /** Table and setup in hand; `null` until there is one. */
  readonly place: Chosen | null;
  /** The last that could be reckoned there; `isBuilt` falls where the files give none just now. */
  readonly setup: Followed<SetupView> | null;
  /** Its drawings and fields, which come a moment after it. */
  readonly rest: SetupRest;
  readonly isBuilt: boolean;
  /** Whether all tables are reckoned as the texts now are. */
  readonly isSettled: Followed<boolean>;
  readonly isRefused: boolean;
  readonly isStopped: boolean;
  readonly isKept: boolean;
  /** Grows when texts come from elsewhere than the fields: half-written fields then give way. */
  readonly turn: number;
  readonly choose: (chosen: Chosen) => void;
  readonly edit: (edit: Edit) => void;
  readonly write: (kind: FileKind, text: string, name?: string) => void;
  readonly put: (texts: Texts) => void;
  /** The engine can't be had. */
  readonly stop: () => void;
  /** As they are this moment, before the page shows them. */
  readonly textsNow: () => Texts;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** What is typed at one place without such a pause, in milliseconds, is one step back. */
const STROKE = 1000;

/** So long after an edit, in milliseconds, its file is shown and kept, and the list of setups follows. */
const SOON = 40;

/** What was kept of the page before, or begun afresh: texts, and edits that were not yet in them. */
export interface FirstTexts {
  readonly texts: Texts;
  readonly edits: readonly Edit[];
}

export function usePrepareWork(language: 'en' | 'es', store: DeviceStore, first: FirstTexts): PrepareWork {
  const [history, setHistory] = useState(() => historyFrom(first.texts));
  const [whole, setWhole] = useState<Whole | null>(null);
  const [setup, setSetup] = useState<Followed<SetupView> | null>(null);
  const [place, setPlace] = useState<Chosen | null>(null);
  const [rest, setRest] = useState<SetupRest>({ setup: '', drawings: [], groups: [] });
  const [flags, setFlags] = useState({ isBuilt: true, isRefused: false, isStopped: false });
  const [isSettled] = useState(() => followed(false));
  const [isKept, setKept] = useState(store.isKept());
  const [turn, setTurn] = useState(0);
  const now = useRef(history);
  const shown = useRef(history);
  shown.current = history;
  const chosen = useRef<Chosen | null>(null);
  const inHand = useRef<Followed<SetupView> | null>(null);
  const stroke = useRef({ place: '', at: 0 });
  const engine = useRef<PrepareEngine | null>(null);

  const later = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const heard = useRef<TableNow | null>(null);
  const keep = (next: TextHistory): void => {
    now.current = next;
    setHistory(next);
    void store.keepNote('texts', next.now).then(() => setKept(store.isKept()));
  };
  /** Strip and key are shown first: list and texts need not move in the same moment. */
  const showBehind = (): void => {
    clearTimeout(later.current);
    const rows = heard.current?.rows;
    if (rows !== undefined) setWhole((before) => withRows(before, rows));
    if (now.current !== shown.current) keep(now.current);
  };
  const stepped = (texts: Texts, place: string): TextHistory => {
    const at = Date.now();
    const isSame = place === stroke.current.place && at - stroke.current.at < STROKE;
    stroke.current = { place, at };
    return withTexts(now.current, texts, isSame);
  };
  /** Nothing is drawn anew where nothing has changed. */
  const mark = (next: Partial<typeof flags>): void =>
    setFlags((before) => {
      const after = { ...before, ...next };
      return Object.entries(after).every(([name, is]) => before[name as keyof typeof before] === is)
        ? before
        : after;
    });
  const ask = (edit: Edit | null = null): void => {
    isSettled.put(false);
    engine.current?.ask({ edit, chosen: chosen.current, language });
  };
  const hearNow = (answer: AnsweredNow, edit: Edit | null): void => {
    const found = answer.now?.setup ?? null;
    const written = edit === null ? null : answer.texts;
    mark({ isBuilt: found !== null, isRefused: edit !== null && written === null });
    heard.current = answer.now;
    if (edit !== null && written !== null) {
      const { file, path, and = [] } = edit;
      const changed = [file, ...and.map((each) => each.file)];
      const before = now.current.now;
      const after = (kind: FileKind) =>
        changed.includes(kind) ? { ...before[kind], text: written[kind].text } : before[kind];
      const texts = { ...before, kit: after('kit'), activity: after('activity'), visit: after('visit') };
      now.current = stepped(texts, JSON.stringify([file, path]));
    }
    const isHere = isSamePlace(found, inHand.current?.now() ?? null);
    if (!isHere) showBehind();
    else {
      clearTimeout(later.current);
      later.current = setTimeout(showBehind, SOON);
    }
    if (found === null) return;
    chosen.current ??= { table: found.table, setup: found.setup };
    if (!isHere) {
      setRest((before) => ({ ...before, drawings: [] }));
      setPlace({ table: found.table, setup: found.setup });
    }
    if (inHand.current === null) {
      inHand.current = followed(found);
      setSetup(inHand.current);
    } else inHand.current.put(found);
  };
  const stop = (): void => mark({ isStopped: true });
  useEffect(() => {
    engine.current = startEngine(() => now.current.now, {
      now: hearNow,
      rest: (answer) => afterFrame(() => setRest(answer.rest)),
      whole: (answer) => {
        setWhole(answer.whole);
        isSettled.put(true);
      },
      fail: stop,
    });
    ask();
    for (const edit of first.edits) ask(edit);
    void store.keepNote('edits', []);
    // What was typed a moment before a reload is kept as well.
    const leave = (): void => {
      showBehind();
      void store.keepNote('edits', engine.current?.unanswered() ?? []);
    };
    addEventListener('pagehide', leave);
    return () => removeEventListener('pagehide', leave);
  }, []);
  const turnTo = (next: TextHistory | null): void => {
    if (next === null) return;
    stroke.current = { place: '', at: 0 };
    keep(next);
    setTurn((before) => before + 1);
    ask();
  };
  return {
    history,
    whole,
    place,
    setup,
    rest,
    isSettled,
    ...flags,
    isKept,
    turn,
    choose: (place) => {
      chosen.current = place;
      ask();
    },
    edit: (edit) => ask(edit),
    write: (kind, text, name) => {
      const file = now.current.now[kind];
      keep(stepped({ ...now.current.now, [kind]: { name: name ?? file.name, text } }, `${kind} as text`));
      ask();
    },
    stop,
    textsNow: () => now.current.now,
    put: (texts) => turnTo(withTexts(now.current, texts)),
    undo: () => turnTo(undone(now.current)),
    redo: () => turnTo(redone(now.current)),
  };
}

/** Behind the next frame, also where the page is hidden and has no frames. */
const afterFrame = (act: () => void): void => {
  if (document.hidden) act();
  else requestAnimationFrame(() => setTimeout(act));
};

const isSamePlace = (one: Chosen | null, other: Chosen | null): boolean =>
  one !== null && other !== null && one.table === other.table && one.setup === other.setup;

const withRows = (whole: Whole | null, rows: Whole['tables'][number] | undefined): Whole | null =>
  whole === null || rows === undefined
    ? whole
    : { ...whole, tables: whole.tables.map((table) => (table.mark === rows.mark ? rows : table)) };

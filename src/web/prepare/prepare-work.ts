import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import type { Answered, Chosen, Edit, FileKind, SetupView, Texts, Whole } from '../engine/prepare-wire.ts';
import { type PrepareEngine, startEngine } from './prepare-engine.ts';
import { historyFrom, redone, type TextHistory, undone, withTexts } from './text-history.ts';

/** What the page knows, and what can be done on it. */
export interface PrepareWork {
  readonly history: TextHistory;
  readonly whole: Whole | null;
  /** The last that could be reckoned; `isBuilt` falls where the files give none just now. */
  readonly setup: SetupView | null;
  readonly isBuilt: boolean;
  readonly isSettled: boolean;
  readonly isRefused: boolean;
  readonly isStopped: boolean;
  readonly isKept: boolean;
  /** Grows when texts come from elsewhere than the fields: half-written fields then give way. */
  readonly turn: number;
  readonly choose: (chosen: Chosen) => void;
  readonly edit: (edit: Edit) => void;
  readonly write: (kind: FileKind, text: string, name?: string) => void;
  readonly put: (texts: Texts) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

/** What is typed at one place without such a pause, in milliseconds, is one step back. */
const STROKE = 1000;

export function usePrepareWork(language: 'en' | 'es', store: DeviceStore, first: Texts): PrepareWork {
  const [history, setHistory] = useState(() => historyFrom(first));
  const [whole, setWhole] = useState<Whole | null>(null);
  const [setup, setSetup] = useState<SetupView | null>(null);
  const [flags, setFlags] = useState({ isBuilt: true, isSettled: false, isRefused: false, isStopped: false });
  const [isKept, setKept] = useState(store.isKept());
  const [turn, setTurn] = useState(0);
  const now = useRef(history);
  const chosen = useRef<Chosen | null>(null);
  const stroke = useRef({ place: '', at: 0 });
  const engine = useRef<PrepareEngine | null>(null);

  const keep = (next: TextHistory): void => {
    now.current = next;
    setHistory(next);
    void store.keepNote('texts', next.now).then(() => setKept(store.isKept()));
  };
  const step = (texts: Texts, place: string): void => {
    const at = Date.now();
    const isSame = place === stroke.current.place && at - stroke.current.at < STROKE;
    stroke.current = { place, at };
    keep(withTexts(now.current, texts, isSame));
  };
  const ask = (edit: Edit | null = null): void => {
    setFlags((before) => ({ ...before, isSettled: false }));
    engine.current?.ask({ edit, chosen: chosen.current, language });
  };
  const hear = (answer: Answered, edit: Edit | null, isLatest: boolean): void => {
    if (edit !== null) {
      const { file, path } = edit;
      const text = answer.texts?.[file].text;
      setFlags((before) => ({ ...before, isRefused: text === undefined }));
      if (text !== undefined)
        step(
          { ...now.current.now, [file]: { ...now.current.now[file], text } },
          JSON.stringify([file, path]),
        );
    }
    if (answer.whole !== null) {
      if (isLatest) setWhole(answer.whole);
      setFlags((before) => ({ ...before, isSettled: isLatest }));
      return;
    }
    const found = answer.now?.setup ?? null;
    setFlags((before) => ({ ...before, isBuilt: found !== null }));
    if (answer.now !== null) setWhole((before) => withRows(before, answer.now?.rows));
    if (found !== null) {
      chosen.current ??= { table: found.table, setup: found.setup };
      setSetup(found);
    }
  };
  useEffect(() => {
    engine.current = startEngine(
      () => now.current.now,
      hear,
      () => setFlags((before) => ({ ...before, isStopped: true })),
    );
    ask();
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
    setup,
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
      step({ ...now.current.now, [kind]: { name: name ?? file.name, text } }, `${kind} as text`);
      ask();
    },
    put: (texts) => turnTo(withTexts(now.current, texts)),
    undo: () => turnTo(undone(now.current)),
    redo: () => turnTo(redone(now.current)),
  };
}

const withRows = (whole: Whole | null, rows: Whole['tables'][number] | undefined): Whole | null =>
  whole === null || rows === undefined
    ? whole
    : { ...whole, tables: whole.tables.map((table) => (table.mark === rows.mark ? rows : table)) };

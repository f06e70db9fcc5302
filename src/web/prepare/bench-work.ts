import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import { keptBook, linesLost } from '../engine/bench-texts.ts';
import type {
  ArrivalChecks,
  BenchAtSetup,
  BenchLineAdded,
  BenchOf,
  TrialRead,
} from '../engine/bench-wire.ts';
import type { Texts } from '../engine/prepare-wire.ts';
import { type BenchEngine, benchEngine } from './bench-engine.ts';
import type { PrepareWork } from './prepare-work.ts';
import { sameTexts } from './text-history.ts';

/** Readings that the teacher takes, on the bench and on arrival, as the page has them. */
export interface BenchWork {
  /** What may be read at the setup in hand and what the book holds of it; `null` until that is known. */
  readonly at: BenchAtSetup | null;
  /** What the last line did, or why it was not taken; as long as nothing else has been changed. */
  readonly answer: BenchLineAdded | null;
  readonly arrival: ArrivalChecks | null;
  /** What was typed on arrival with what follows, by setup; as long as nothing else has been changed. */
  readonly trials: Readonly<Record<string, TrialRead>>;
  /** A book from a disk in which lines are lacking that are kept here: somebody has to decide. */
  readonly doubtful: DoubtfulBook | null;
  /** Who reads here: a label, kept in this browser. */
  readonly by: string;
  readonly sign: (by: string) => void;
  readonly open: (part: Part, isOpen: boolean) => void;
  /** Gives whether the line stands in the book now. */
  readonly add: (of: BenchOf) => Promise<boolean>;
  readonly read: (setup: string, written: string) => void;
  readonly openBook: (file: File) => void;
  readonly takeBook: (isTaken: boolean) => void;
  /** The kit names no book, and one is kept here for it: from now on it does. */
  readonly takeKept: () => void;
}

export interface DoubtfulBook {
  readonly name: string;
  readonly text: string;
  readonly lost: number;
}

type Part = 'bench' | 'arrival';

/** So long nothing was changed, in milliseconds, before the parts that stand open are asked for anew. */
const QUIET = 120;

const NO_TRIALS: BenchWork['trials'] = {};

export function useBenchWork(language: 'en' | 'es', store: DeviceStore, work: PrepareWork): BenchWork {
  const [at, setAt] = useState<BenchAtSetup | null>(null);
  const [arrival, setArrival] = useState<ArrivalChecks | null>(null);
  const [last, setLast] = useState<{ readonly texts: Texts; readonly answer: BenchLineAdded } | null>(null);
  const [tried, setTried] = useState<{ readonly texts: Texts; readonly trials: BenchWork['trials'] } | null>(
    null,
  );
  const [doubtful, setDoubtful] = useState<DoubtfulBook | null>(null);
  const [isOpen, setOpen] = useState<Readonly<Record<Part, boolean>>>({ bench: false, arrival: false });
  const [by, setBy] = useState('');
  const engine = useRef<BenchEngine | null>(null);
  const ask = (of: BenchOf, asked: Texts) => {
    engine.current ??= benchEngine(work.stop);
    return engine.current.ask(asked, language, of);
  };
  const texts = work.history.now;
  const setup = work.place?.setup ?? '';
  useEffect(() => {
    void store.note('read by').then((kept) => typeof kept === 'string' && setBy(kept));
  }, []);
  useEffect(() => {
    if (!isOpen.bench || setup === '') return;
    return afterQuiet(async (isStill) => {
      const found = await ask({ kind: 'setup', setup }, texts);
      if (isStill()) setAt(found?.found === 'setup' ? found : null);
    });
  }, [texts, setup, isOpen.bench]);
  useEffect(() => {
    if (!isOpen.arrival) return;
    return afterQuiet(async (isStill) => {
      const found = await ask({ kind: 'arrival' }, texts);
      if (isStill()) setArrival(found?.found === 'arrival' ? found : null);
    });
  }, [texts, isOpen.arrival]);
  /** Puts texts in that came of `asked`, unless something else was changed meanwhile. */
  const put = (asked: Texts, fresh: Texts): boolean => {
    if (!sameTexts(asked, work.textsNow())) return false;
    work.put(fresh);
    return true;
  };
  const add = async (of: BenchOf): Promise<boolean> => {
    const asked = work.textsNow();
    const answer = await ask(of, asked);
    if (answer?.found !== 'line') return false;
    if (answer.texts !== null && !put(asked, answer.texts)) return add(of);
    setLast({ texts: answer.texts ?? asked, answer });
    return answer.texts !== null;
  };
  const putBook = async (book: { readonly name?: string; readonly text: string }): Promise<void> => {
    const asked = work.textsNow();
    const answer = await ask({ kind: 'book', ...book }, asked);
    if (answer?.found === 'book' && answer.texts !== null) put(asked, answer.texts);
  };
  return {
    at,
    answer: last !== null && sameTexts(last.texts, texts) ? last.answer : null,
    arrival,
    trials: tried !== null && sameTexts(tried.texts, texts) ? tried.trials : NO_TRIALS,
    doubtful,
    by,
    sign: (label) => {
      setBy(label);
      void store.keepNote('read by', label);
    },
    open: (part, open) => setOpen((before) => ({ ...before, [part]: open })),
    add,
    read: async (mark, written) => {
      const asked = work.textsNow();
      const trial = await ask({ kind: 'trial', setup: mark, written }, asked);
      if (trial?.found !== 'trial') return;
      setTried((before) => ({
        texts: asked,
        trials: {
          ...(before !== null && sameTexts(before.texts, asked) ? before.trials : {}),
          [mark]: trial,
        },
      }));
    },
    openBook: async (file) => {
      const book = { name: file.name, text: await file.text() };
      const lost = linesLost(keptBook(work.textsNow()), book.text);
      setDoubtful(lost === 0 ? null : { ...book, lost });
      if (lost === 0) await putBook(book);
    },
    takeKept: () => void putBook({ text: keptBook(work.textsNow()) }),
    takeBook: (isTaken) => {
      setDoubtful(null);
      if (isTaken && doubtful !== null) void putBook({ name: doubtful.name, text: doubtful.text });
    },
  };
}

/** Calls once nothing has changed for a while; what comes after the next change is nobody's. */
function afterQuiet(act: (isStill: () => boolean) => Promise<void>): () => void {
  let isStill = true;
  const timer = setTimeout(() => void act(() => isStill), QUIET);
  return () => {
    isStill = false;
    clearTimeout(timer);
  };
}

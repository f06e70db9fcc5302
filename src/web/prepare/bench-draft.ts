import { useEffect, useState } from 'preact/hooks';
import type { BenchLineView, BenchTaskView } from '../engine/bench-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import type { BenchWork } from './bench-work.ts';

/** A line of the bench book as it is being written. */
export interface BenchDraft {
  readonly what: string;
  readonly reading: string;
  readonly date: string;
  readonly note: string;
  /** The line that it stands for; `null` for a line of its own. */
  readonly instead: number | null;
  /** What is lacking still. */
  readonly trouble: string | null;
  readonly change: (to: Partial<Pick<BenchDraft, 'what' | 'reading' | 'date' | 'note'>>) => void;
  readonly add: (task: BenchTaskView | undefined) => Promise<void>;
  readonly putRight: (line: BenchLineView | null) => void;
  /** The same line once more, used or left out; gives whether that was tried. */
  readonly decide: (line: BenchLineView, use: 'yes' | 'no') => Promise<boolean>;
}

const EMPTY = { what: '', reading: '', note: '', instead: null, trouble: null } as const;

export function useBenchDraft(say: BenchSay, setup: string, work: BenchWork): BenchDraft {
  const [draft, setDraft] = useState<Omit<BenchDraft, 'change' | 'add' | 'putRight' | 'decide'>>(() => ({
    ...EMPTY,
    date: today(),
  }));
  const change = (to: Partial<typeof draft>): void => setDraft((before) => ({ ...before, ...to }));
  useEffect(() => change(EMPTY), [setup]);
  const by = work.by.trim();
  const { date, note, reading, instead } = draft;
  const signed = { by, date };
  const lacking = (isReadingAsked: boolean): string | null =>
    isReadingAsked && reading.trim() === ''
      ? say('bench.reading.lacking')
      : by === ''
        ? say('bench.by.lacking')
        : date === ''
          ? say('bench.date.lacking')
          : null;
  return {
    ...draft,
    change: (to) => change({ ...to, trouble: null }),
    add: async (task) => {
      const trouble = lacking(true);
      if (trouble !== null || (task === undefined && instead === null)) return change({ trouble });
      const entry = { ...task?.entry, ...signed, reading: reading.trim(), note: note.trim() };
      const isAdded = await work.add(
        instead === null ? { kind: 'line', entry } : { kind: 'instead', line: instead, entry },
      );
      if (isAdded) change({ reading: '', note: '', instead: null, trouble: null });
    },
    putRight: (line) =>
      change(
        line === null
          ? { ...EMPTY, what: draft.what }
          : { what: line.what, reading: line.reading, note: line.note, instead: line.line, trouble: null },
      ),
    decide: async (line, use) => {
      const trouble = lacking(false);
      change({ trouble });
      if (trouble !== null) return false;
      await work.add({ kind: 'instead', line: line.line, entry: { ...signed, use, note: line.note } });
      return true;
    },
  };
}

/** The day as it is where the page is read. */
function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

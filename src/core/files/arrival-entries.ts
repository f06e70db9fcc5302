import { arrivalCheckOf } from '../calibration/arrival-check.ts';
import { rekeyedPrediction } from '../calibration/rekey.ts';
import { figureFact, followedSpan, isFollowed } from '../calibration/rekey-table.ts';
import type { Diagnostic, Facts } from '../diagnostics/diagnostic.ts';
import { arrivalReading } from '../readings/arrival-reading.ts';
import { READING_EXAMPLE } from '../readings/reading-example.ts';
import type { Predicted } from '../setups/difference.ts';
import { nearestFact } from './context.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import type { ArrivalEntry, Visit } from './visit-file.ts';

interface Table {
  readonly setups: readonly Predicted[];
  /** Marks of setups that can't be built today. */
  readonly notPrepared: readonly string[];
}

/**
 * The tables with the visit's arrival readings put in: at each table with one, every prediction follows
 * it. A reading that can't be used leaves its table as packed and is told.
 */
export function followArrival<T extends Table>(
  tables: readonly T[],
  visit: Pick<Visit, 'file' | 'arrival'> | null,
): { readonly tables: readonly T[]; readonly diagnostics: readonly Diagnostic[] } {
  if (visit === null || visit.arrival.length === 0) return { tables, diagnostics: [] };
  const diagnostics: Diagnostic[] = [];
  const taken = new Map<T, Taken>();
  for (const entry of visit.arrival) {
    const say = (code: FileCode, facts: Facts, severity: Diagnostic['severity'] = 'error') => {
      const at = { file: visit.file, path: entry.path, on: code === UNKNOWN ? 'key' : 'value' } as const;
      diagnostics.push(fileFinding(code, at, facts, severity));
    };
    const table = tables.find((each) => marksOf(each).includes(entry.setup));
    if (table === undefined) {
      const known = tables.flatMap(marksOf);
      say(UNKNOWN, { written: entry.setup, known, ...nearestFact(entry.setup, known) });
      continue;
    }
    const before = taken.get(table);
    if (before !== undefined) {
      say('arrival-second', { setup: entry.setup, other: before.at.setup.mark });
      continue;
    }
    const found = readAt(table, entry, say);
    if (found !== null) taken.set(table, found);
  }
  return { tables: tables.map((table) => following(table, taken.get(table))), diagnostics };
}

const UNKNOWN = 'arrival-unknown-setup';

interface Taken {
  readonly at: Predicted;
  readonly reading: number;
}

type Say = (code: FileCode, facts: Facts, severity?: Diagnostic['severity']) => void;

function readAt(table: Table, entry: ArrivalEntry, say: Say): Taken | null {
  const at = table.setups.find(({ setup }) => setup.mark === entry.setup);
  const span = at === undefined ? null : followedSpan(at);
  if (at === undefined || span === null) {
    const check = arrivalCheckOf(table.setups)?.setup.mark;
    say('arrival-no-figure', { setup: entry.setup, ...(check === undefined ? {} : { check }) });
    return null;
  }
  const reading = arrivalReading(at, entry.written);
  if (reading === null) {
    say('arrival-not-a-reading', { written: entry.written, example: READING_EXAMPLE[at.setup.watched] });
    return null;
  }
  if (isFollowed(at, reading)) return { at, reading };
  const facts = {
    reading: figureFact(at, reading),
    from: figureFact(at, span.from),
    to: figureFact(at, span.to),
  };
  say('arrival-look-again', facts, 'warning');
  return null;
}

function following<T extends Table>(table: T, taken: Taken | undefined): T {
  if (taken === undefined) return table;
  const setups = table.setups.map((each) => ({
    ...each,
    prediction: rekeyedPrediction(each, taken.at, taken.reading),
  }));
  return { ...table, setups };
}

const marksOf = ({ setups, notPrepared }: Table): readonly string[] => [
  ...setups.map(({ setup }) => setup.mark),
  ...notPrepared,
];

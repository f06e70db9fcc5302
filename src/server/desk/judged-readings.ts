import { type ClassState, classWithAll, judgements, tableFindings } from '../../core/readings/class-state.ts';
import type { TableFinding } from '../../core/readings/table-finding.ts';
import type { WrittenReading } from '../../core/readings/written-reading.ts';
import type { JudgedReading } from '../../core/review.ts';
import type { LoggedReading } from '../../store/visit-log.ts';
import type { PreparedSetups } from './visit-at-desk.ts';

/** What is made of readings, by their ids, and of the tables they were taken at. */
export interface JudgedReadings {
  readonly byId: ReadonlyMap<string, JudgedReading>;
  readonly findings: readonly TableFinding[];
}

/** Judges readings as they come: what was judged before is not judged again unless it changed. */
export type Judge = (readings: readonly LoggedReading[]) => JudgedReadings;

/**
 * A judge for readings at these setups. A reading that was voided or written anew is taken out: then all are
 * weighed from the beginning, which comes to the same as if it had never been written.
 */
export function judgeFor(empty: ClassState, setups: PreparedSetups): Judge {
  let taken: readonly string[] = [];
  let state = empty;
  return (readings) => {
    const weighed = readings.filter(({ isVoid, reading }) => !isVoid && setups.has(reading.setup));
    const keys = weighed.map(({ id, reading }) => JSON.stringify([id, reading]));
    const goesOn = taken.length <= keys.length && taken.every((key, n) => key === keys[n]);
    const more = (goesOn ? weighed.slice(taken.length) : weighed).map(({ reading }) => asWritten(reading));
    const next = more.length === 0 && goesOn ? state : classWithAll(goesOn ? state : empty, more);
    // Readings of unknown setups were taken out above.
    if (next === null) throw new RangeError('a reading at a setup that the class does not have');
    [state, taken] = [next, keys];
    const judged = judgements(state);
    return {
      byId: new Map(
        weighed.flatMap(({ id, reading }, n) => {
          const [judgement, at] = [judged[n], setups.get(reading.setup)];
          return judgement === undefined || at === undefined ? [] : [[id, { judgement, at }] as const];
        }),
      ),
      findings: tableFindings(state),
    };
  };
}

/** A reading of a device as one of a file: a count of turns, or how easy it felt, stands for itself. */
export function asWritten({
  group,
  setup,
  written,
  ease,
  turns,
  note,
}: LoggedReading['reading']): WrittenReading {
  const alone = turns ?? (ease === null ? '' : String(ease));
  return {
    group,
    setup,
    written: written.trim() === '' ? alone : written,
    note: note ?? '',
    line: null,
    ...(ease === null ? {} : { ease: String(ease) }),
  };
}

import { nearestName } from './diagnostics/nearest-name.ts';
import { type FileNote, type RefusedRow, readReadingsFile } from './files/readings-file.ts';
import type { SourceText } from './files/source-text.ts';
import type { Prepared, PreparedSetup } from './prepare.ts';
import {
  type ClassOptions,
  type ClassState,
  classOf,
  classWithAll,
  groupHabits,
  judgements,
  tableFindings,
} from './readings/class-state.ts';
import type { GroupHabit } from './readings/group-habit.ts';
import type { Judgement } from './readings/judgement.ts';
import type { TableFinding } from './readings/table-finding.ts';
import type { WrittenReading } from './readings/written-reading.ts';

/** Readings against their setups: every row comes back, judged or with the reason why not. */
export interface Review {
  readonly judged: readonly JudgedReading[];
  /** Rows that can't be matched with a setup, kept as they stand. */
  readonly refused: readonly (RefusedRow & { readonly nearest?: string })[];
  /** How the file was read where it was not as plain as that: merged cells, guessed headings, doubles. */
  readonly notes: readonly FileNote[];
  /** What whole tables have to say: a station that has changed, a card that leads astray, a kit that is off. */
  readonly tables: readonly TableFinding[];
  /** Mistakes that a group makes again and again. */
  readonly groups: readonly GroupHabit[];
}

export interface JudgedReading {
  readonly judgement: Judgement;
  readonly at: PreparedSetup;
}

/** Readings file -> readings -> each against its setup and all other readings -> likely causes. */
export function review(prepared: Prepared, file: SourceText, options: ClassOptions = {}): Review {
  const marks = setupsOf(prepared).map(({ setup }) => setup.mark);
  const { readings, refused, notes } = readReadingsFile(file, marks);
  const found = readings.map((reading) => ({ reading, at: setupNamed(prepared, reading.setup) }));
  const known = found.flatMap(({ reading, at }) => (at === null ? [] : [{ reading, at }]));
  const state = classWithAll(
    classFor(prepared, options),
    known.map(({ reading }) => reading),
  );
  const judged = state === null ? [] : judgements(state);
  return {
    judged: known.flatMap(({ at }, n) => {
      const judgement = judged[n];
      return judgement === undefined ? [] : [{ judgement, at }];
    }),
    refused: [
      ...refused,
      ...found.flatMap(({ reading, at }) => (at === null ? [unknownSetup(prepared, reading)] : [])),
    ].sort((a, b) => a.line - b.line),
    notes,
    tables: state === null ? [] : tableFindings(state),
    groups: state === null ? [] : groupHabits(state),
  };
}

/** A class that has written nothing yet, at the tables as they were prepared. */
export const classFor = (prepared: Prepared, options: ClassOptions = {}): ClassState =>
  classOf(prepared.tables, options);

/** One reading typed at the table, without any other. `null` where there is no such setup. */
export function reviewOne(prepared: Prepared, reading: WrittenReading): JudgedReading | null {
  const at = setupNamed(prepared, reading.setup);
  const state = at === null ? null : classWithAll(classFor(prepared), [reading]);
  const [judgement] = state === null ? [] : judgements(state);
  return at === null || judgement === undefined ? null : { judgement, at };
}

/** A setup by its mark, in any case. */
export function setupNamed(prepared: Prepared, mark: string): PreparedSetup | null {
  const all = setupsOf(prepared);
  return (
    all.find(({ setup }) => setup.mark === mark) ??
    all.find(({ setup }) => setup.mark.toLowerCase() === mark.toLowerCase()) ??
    null
  );
}

export const setupsOf = (prepared: Prepared): readonly PreparedSetup[] =>
  prepared.tables.flatMap((table) => table.setups);

function unknownSetup(prepared: Prepared, reading: WrittenReading): Review['refused'][number] {
  const nearest = nearestName(
    reading.setup,
    setupsOf(prepared).map(({ setup }) => setup.mark),
  );
  return {
    line: reading.line ?? 0,
    text: [reading.group, reading.setup, reading.written, reading.note].join(', '),
    because: 'readings.unknown-setup',
    ...(nearest === undefined ? {} : { nearest }),
  };
}

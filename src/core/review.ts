import { nearestName } from './diagnostics/nearest-name.ts';
import { type FileNote, type RefusedRow, readReadingsFile } from './files/readings-file.ts';
import type { SourceText } from './files/source-text.ts';
import type { Prepared, PreparedSetup } from './prepare.ts';
import { type Judgement, judge } from './readings/judgement.ts';
import type { WrittenReading } from './readings/written-reading.ts';

/** Readings against their setups: every row comes back, judged or with the reason why not. */
export interface Review {
  readonly judged: readonly JudgedReading[];
  /** Rows that can't be matched with a setup, kept as they stand. */
  readonly refused: readonly (RefusedRow & { readonly nearest?: string })[];
  /** How the file was read where it was not as plain as that: merged cells, guessed headings, doubles. */
  readonly notes: readonly FileNote[];
}

export interface JudgedReading {
  readonly judgement: Judgement;
  readonly at: PreparedSetup;
}

/** Readings file -> readings -> each against its setup -> likely causes. */
export function review(prepared: Prepared, file: SourceText): Review {
  const marks = setupsOf(prepared).map(({ setup }) => setup.mark);
  const { readings, refused, notes } = readReadingsFile(file, marks);
  const found = readings.map((reading) => ({ reading, at: setupNamed(prepared, reading.setup) }));
  return {
    judged: found.flatMap(({ reading, at }) =>
      at === null ? [] : [{ judgement: judge(reading, at.setup, at.prediction), at }],
    ),
    refused: [
      ...refused,
      ...found.flatMap(({ reading, at }) => (at === null ? [unknownSetup(prepared, reading)] : [])),
    ].sort((a, b) => a.line - b.line),
    notes,
  };
}

/** One reading typed at the table. `null` where there is no such setup. */
export function reviewOne(prepared: Prepared, reading: WrittenReading): JudgedReading | null {
  const at = setupNamed(prepared, reading.setup);
  return at === null ? null : { judgement: judge(reading, at.setup, at.prediction), at };
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

import type { ScaleOnBench } from '../../core/bench.ts';
import type { FittedReading, FittedUnknown } from '../../core/calibration/bench-fit.ts';
import { correctionAt } from '../../core/calibration/scale-check.ts';
import type { Confused } from '../../core/calibration/told-apart.ts';
import type { Bench } from '../../core/files/bench-readings.ts';
import type { Prepared } from '../../core/prepare.ts';
import { decimalText, significant } from '../../core/quantities/print-quantity.ts';
import { toSi } from '../../core/quantities/unit.ts';
import { setupsOf } from '../../core/review.ts';
import {
  COVERAGE_95,
  type Measured,
  standardUncertainty,
  type Unknown,
} from '../../core/uncertainty/measured.ts';
import { setupSheet } from '../prepare.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { unknownName } from '../sentences/unknown-name.ts';
import { measurementText } from './measurement-text.ts';
import { unknownUnit } from './unknown-unit.ts';

/** Rows of words under their heading, for a terminal or a page. */
export interface ToldRows {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export const READING_COLUMNS = [
  'line',
  'date',
  'by',
  'what',
  'reading',
  'expected',
  'off',
  'fitted',
  'used',
] as const;

/** Every reading of the book that can be used, beside what the files made one expect of it. */
export function readingsTold(language: Language, bench: Bench): ToldRows {
  return {
    head: READING_COLUMNS.map((column) => sentence(language, `bench.column.${column}`)),
    rows: bench.fit.readings.map((reading) => {
      const told = readingTold(language, bench, reading);
      return READING_COLUMNS.map((column) => told[column]);
    }),
  };
}

/** One reading of the book in words, column by column. */
export function readingTold(
  language: Language,
  bench: Bench,
  reading: FittedReading,
): Readonly<Record<(typeof READING_COLUMNS)[number], string>> {
  const { decimal } = languagePack(language);
  const line = bench.lines.find((each) => String(each.line) === reading.observation.name);
  const figure = (si: number): string => factText(language, bench.factOf(reading, si));
  return {
    line: reading.observation.name,
    date: reading.observation.date,
    by: line?.by ?? '',
    what: line?.what ?? '',
    reading: line?.reading ?? '',
    expected: figure(reading.expected),
    off: `${decimalText(reading.off, 1, decimal)} u`,
    fitted: figure(reading.fitted),
    used: sentence(language, `bench.used.${reading.because ?? 'yes'}`),
  };
}

/** An unknown is worth a row where the readings moved it, or made it better known. */
const isTold = ({ unknown, shift, u }: FittedUnknown): boolean =>
  Math.abs(shift) > 0.1 * unknown.u || u < 0.9 * unknown.u;

/** The unknowns that the readings moved or made better known, best known first; of the others how many there are. */
export function unknownsTold(
  language: Language,
  prepared: Prepared,
  { fit }: Bench,
): ToldRows & { readonly others: number } {
  const { decimal } = languagePack(language);
  const told = fit.unknowns.filter(isTold);
  const rows = told
    .toSorted((a, b) => a.u / a.unknown.u - b.u / b.unknown.u)
    .map(({ unknown, shift, u }) => {
      const { unit, si: one } = shownIn(unitOf(prepared, unknown));
      const figure = (si: number, sign = ''): string =>
        `${sign}${trimmed(significant(si / one, 2, decimal))} ${unit}`.trim();
      return [
        unknownName(language, unknown.id),
        figure(shift, shift > 0 ? '+' : ''),
        figure(COVERAGE_95 * unknown.u, '± '),
        figure(COVERAGE_95 * u, '± '),
      ];
    });
  const head = ['unknown', 'moved', 'before', 'now'].map((column) =>
    sentence(language, `bench.column.${column}`),
  );
  return { head, rows, others: fit.unknowns.length - told.length };
}

/** A small doubt in a unit that shows it: grams and millimetres. */
const shownIn = (unit: string): { readonly unit: string; readonly si: number } =>
  unit === 'kg'
    ? { unit: 'g', si: 0.001 }
    : unit === 'm'
      ? { unit: 'mm', si: 0.001 }
      : unit === 'rad'
        ? { unit: '°', si: Math.PI / 180 }
        : { unit: unit === '1' ? '' : unit, si: 1 };

/** SI unit of an unknown, as it follows from its name. */
function unitOf(prepared: Prepared, { id, origin }: Unknown): string {
  const [first] = setupsOf(prepared);
  if (first === undefined) return '1';
  const mark = id.slice(0, id.indexOf('/'));
  const load = setupsOf(prepared).find((each) => each.load?.mark === mark) ?? first;
  const row = { unknown: id, origin, sensitivity: 1, u: 0, contribution: 0, share: 0 } as const;
  return unknownUnit(row, setupSheet(load));
}

/** A scale by itself: its line against masses, and what it shows less upside down. */
export function scaleTold(
  language: Language,
  { scale, unit, check, shift, known }: ScaleOnBench,
): readonly string[] {
  const { decimal } = languagePack(language);
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const si = toSi(1, unit);
  const figure = (value: number, digits = 2): string => trimmed(significant(value, digits, decimal));
  const inMarks = (newtons: number): string => `${figure(newtons / si)} ${unitWords(language, unit)}`;
  const withHalf = (shift: Measured) => ({
    shift: inMarks(shift.value),
    half: inMarks(COVERAGE_95 * standardUncertainty(shift)),
  });
  const lines: string[] = [];
  if (check !== null) {
    const ends = [check.from, check.to].map((at) => {
      const { correction, u } = correctionAt(check, at);
      return say('bench.scale.at', {
        shown: inMarks(at),
        correction: inMarks(correction),
        half: inMarks(check.coverage * u),
      });
    });
    lines.push(
      say('bench.scale.line', {
        scale,
        residual: inMarks(Math.round(check.residual / si / 1e-6) * 1e-6 * si),
        ends,
      }),
    );
  }
  if (shift !== null)
    lines.push(
      'because' in shift
        ? say(shift.because, { ...shift.facts, scale })
        : say('bench.scale.shift', {
            scale,
            ...withHalf(shift),
            known: known === null ? '' : say('bench.scale.known', withHalf(known)),
          }),
    );
  return lines;
}

/** Two unknowns that the readings tie together, and what would tell them apart. */
export function confusedTold(
  language: Language,
  { first, second, correlation, by }: Confused,
): readonly string[] {
  const { decimal } = languagePack(language);
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const figure = (value: number): string => decimalText(value, 2, decimal);
  return [
    say('bench.confused', {
      first: unknownName(language, first.unknown.id),
      second: unknownName(language, second.unknown.id),
      correlation: figure(correlation),
    }),
    by === null
      ? say('bench.not-told-apart')
      : say('bench.told-apart', {
          measurement: measurementText(language, by.measurement),
          correlation: figure(by.correlation),
        }),
  ];
}

/** What else is to know beside the unknowns, a sentence a line. */
export function benchRemarks(
  language: Language,
  prepared: Prepared,
  bench: Bench,
  confused: readonly Confused[],
  scales: readonly ScaleOnBench[],
): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { rows, others } = unknownsTold(language, prepared, bench);
  return [
    ...(bench.fit.isConverged ? [] : [say('bench.not-converged')]),
    ...(rows.length === 0 ? [say('bench.told.nothing')] : []),
    ...(rows.length === 0 || others === 0 ? [] : [say('bench.others', { count: others })]),
    ...confused.map((pair) => confusedTold(language, pair).join(' ')),
    ...scales.flatMap((scale) => scaleTold(language, scale)),
    say('bench.priors'),
  ];
}

import type { ScaleOnBench } from '../../core/bench.ts';
import type { FittedReading, FittedUnknown } from '../../core/calibration/bench-fit.ts';
import { correctionAt } from '../../core/calibration/scale-check.ts';
import type { Confused } from '../../core/calibration/told-apart.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
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
import { columns, wrapped } from './columns.ts';
import { measurementText } from './measurement-text.ts';
import { plainJson } from './plain-json.ts';
import { unknownUnit } from './unknown-unit.ts';

const WIDTH = 100;

/** What the bench book holds and tells: its readings, the unknowns, and what they can't tell apart. */
export function benchText(
  language: Language,
  prepared: Prepared,
  bench: Bench,
  confused: readonly Confused[],
  scales: readonly ScaleOnBench[],
): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { readings, isConverged } = bench.fit;
  const isUnread = prepared.diagnostics.some((each) => isError(each) && each.at.file === bench.file);
  if (bench.lines.length === 0) return say(isUnread ? 'bench.unread' : 'bench.empty', { file: bench.file });
  const used = readings.filter(({ isUsed }) => isUsed).length;
  const elsewhere = bench.elsewhere === 0 ? '' : say('bench.elsewhere', { count: bench.elsewhere });
  const unusable = bench.unusable === 0 ? '' : say('bench.unusable', { count: bench.unusable });
  const left = `${elsewhere}${unusable}`;
  return [
    ...wrapped(say('bench.head', { file: bench.file, used, readings: readings.length, left }), WIDTH),
    '',
    ...readingsTable(language, bench),
    '',
    ...(isConverged ? [] : [...wrapped(say('bench.not-converged'), WIDTH), '']),
    ...unknownsTable(language, prepared, bench),
    ...confused.flatMap((pair) => ['', ...confusedText(language, pair)]),
    ...scales.flatMap((scale) => scaleText(language, scale)).flatMap((line) => ['', ...wrapped(line, WIDTH)]),
    '',
    ...wrapped(say('bench.priors'), WIDTH),
    '',
  ].join('\n');
}

const READING_COLUMNS = [
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

function readingsTable(language: Language, bench: Bench): readonly string[] {
  const { decimal } = languagePack(language);
  const head = READING_COLUMNS.map((column) => sentence(language, `bench.column.${column}`));
  const rows = bench.fit.readings.map((reading) => {
    const line = bench.lines.find((each) => String(each.line) === reading.observation.name);
    const figure = (si: number): string => factText(language, bench.factOf(reading, si));
    return [
      reading.observation.name,
      reading.observation.date,
      line?.by ?? '',
      line?.what ?? '',
      line?.reading ?? '',
      figure(reading.expected),
      `${decimalText(reading.off, 1, decimal)} u`,
      figure(reading.fitted),
      sentence(language, `bench.used.${reading.because ?? 'yes'}`),
    ];
  });
  const sides = READING_COLUMNS.map((column) =>
    ['line', 'expected', 'off', 'fitted'].includes(column) ? ('right' as const) : ('left' as const),
  );
  return columns([head, ...rows], sides).map((row) => `  ${row}`);
}

/** An unknown is worth a row where the readings moved it, or made it better known. */
const isTold = ({ unknown, shift, u }: FittedUnknown): boolean =>
  Math.abs(shift) > 0.1 * unknown.u || u < 0.9 * unknown.u;

function unknownsTable(language: Language, prepared: Prepared, { fit }: Bench): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { decimal } = languagePack(language);
  const told = fit.unknowns.filter(isTold);
  const others = fit.unknowns.length - told.length;
  if (told.length === 0) return [say('bench.told.nothing')];
  const head = ['unknown', 'moved', 'before', 'now'].map((column) => say(`bench.column.${column}`));
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
  return [
    say('bench.told'),
    ...columns([head, ...rows], ['left', 'right', 'right', 'right']).map((row) => `  ${row}`),
    ...(others === 0
      ? []
      : wrapped(say('bench.others', { count: others }), WIDTH - 2).map((row) => `  ${row}`)),
  ];
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
function scaleText(
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

function confusedText(language: Language, { first, second, correlation, by }: Confused): readonly string[] {
  const { decimal } = languagePack(language);
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const figure = (value: number): string => decimalText(value, 2, decimal);
  return [
    ...wrapped(
      say('bench.confused', {
        first: unknownName(language, first.unknown.id),
        second: unknownName(language, second.unknown.id),
        correlation: figure(correlation),
      }),
      WIDTH,
    ),
    ...wrapped(
      by === null
        ? say('bench.not-told-apart')
        : say('bench.told-apart', {
            measurement: measurementText(language, by.measurement),
            correlation: figure(by.correlation),
          }),
      WIDTH,
    ),
  ];
}

/** The same as JSON; figures are SI. */
export const benchJson = (
  bench: Bench,
  confused: readonly Confused[],
  scales: readonly ScaleOnBench[],
): string =>
  plainJson({
    handspike: 'bench 1',
    file: bench.file,
    since: bench.known?.since ?? null,
    readings: bench.fit.readings.map((reading) => readingJson(bench, reading)),
    replaced: bench.lines
      .filter(({ replacedBy }) => replacedBy !== null)
      .map(({ line, replacedBy }) => ({ line, by: replacedBy })),
    elsewhere: bench.elsewhere,
    unusable: bench.unusable,
    settled: bench.fit.isConverged,
    unknowns: bench.fit.unknowns.map(({ unknown, shift, u }) => ({
      unknown: unknown.id,
      shift,
      uBefore: unknown.u,
      u,
    })),
    covariance: bench.fit.knowledge.covariance,
    notToldApart: confused.map(({ first, second, correlation, by }) => ({
      unknowns: [first.unknown.id, second.unknown.id],
      correlation,
      by,
    })),
    scales: scales.map(({ scale, check, shift, known }) => ({
      scale,
      check,
      turnOverShift:
        shift === null || 'because' in shift ? shift : { value: shift.value, u: standardUncertainty(shift) },
      knownShift: known === null ? null : { value: known.value, u: standardUncertainty(known) },
    })),
  });

function readingJson(bench: Bench, reading: FittedReading) {
  const { observation, expected, u, off, offOthers, fitted, isUsed, because } = reading;
  const line = bench.lines.find((each) => String(each.line) === observation.name);
  return {
    line: line?.line ?? null,
    date: observation.date,
    by: line?.by ?? '',
    what: line?.what ?? '',
    written: line?.reading ?? '',
    note: line?.note ?? '',
    value: observation.value,
    expected,
    u,
    off,
    offOthers,
    fitted,
    isUsed,
    because,
  };
}

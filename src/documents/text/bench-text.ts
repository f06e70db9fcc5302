import type { ScaleOnBench } from '../../core/bench.ts';
import type { FittedReading } from '../../core/calibration/bench-fit.ts';
import type { Confused } from '../../core/calibration/told-apart.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import type { Bench } from '../../core/files/bench-readings.ts';
import type { Prepared } from '../../core/prepare.ts';
import { standardUncertainty } from '../../core/uncertainty/measured.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { confusedTold, READING_COLUMNS, readingsTold, scaleTold, unknownsTold } from './bench-told.ts';
import { columns, wrapped } from './columns.ts';
import { plainJson } from './plain-json.ts';

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
    ...confused.flatMap((pair) => [
      '',
      ...confusedTold(language, pair).flatMap((line) => wrapped(line, WIDTH)),
    ]),
    ...scales.flatMap((scale) => scaleTold(language, scale)).flatMap((line) => ['', ...wrapped(line, WIDTH)]),
    '',
    ...wrapped(say('bench.priors'), WIDTH),
    '',
  ].join('\n');
}

function readingsTable(language: Language, bench: Bench): readonly string[] {
  const { head, rows } = readingsTold(language, bench);
  const sides = READING_COLUMNS.map((column) =>
    ['line', 'expected', 'off', 'fitted'].includes(column) ? ('right' as const) : ('left' as const),
  );
  return columns([head, ...rows], sides).map((row) => `  ${row}`);
}

function unknownsTable(language: Language, prepared: Prepared, bench: Bench): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { head, rows, others } = unknownsTold(language, prepared, bench);
  if (rows.length === 0) return [say('bench.told.nothing')];
  return [
    say('bench.told'),
    ...columns([head, ...rows], ['left', 'right', 'right', 'right']).map((row) => `  ${row}`),
    ...(others === 0
      ? []
      : wrapped(say('bench.others', { count: others }), WIDTH - 2).map((row) => `  ${row}`)),
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

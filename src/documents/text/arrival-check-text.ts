import { arrivalCheckOf, stepsOutside } from '../../core/calibration/arrival-check.ts';
import { asPacked, rekeyed } from '../../core/calibration/rekey.ts';
import { followedSpan, isFollowed } from '../../core/calibration/rekey-table.ts';
import type { Fact } from '../../core/diagnostics/diagnostic.ts';
import type { Prepared, PreparedTable } from '../../core/prepare.ts';
import type { Predicted } from '../../core/setups/difference.ts';
import type { GoodRange } from '../../core/setups/prediction.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { wrapped } from './columns.ts';
import { plainJson } from './plain-json.ts';
import { goodRangeOf, marksOf, rangeText } from './prediction-text.ts';

const WIDTH = 100;

/** The trial reading of each table on arrival, and what to do where it lies outside. */
export function arrivalChecksText(language: Language, prepared: Prepared): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  return [
    ...wrapped(say('arrival.command.head'), WIDTH),
    ...prepared.tables.flatMap((table) => [
      '',
      say('key.text.table', { mark: table.mark, title: table.title }),
      ...checkLines(language, table).map((line) => `  ${line}`),
    ]),
    '',
  ].join('\n');
}

function checkLines(language: Language, table: PreparedTable): readonly string[] {
  const check = checkTold(language, table);
  if (check === null) return [sentence(language, 'arrival.command.none')];
  return [check.text, sentence(language, 'arrival.command.outside'), ...numbered(check.steps)];
}

/** The trial reading of a table in words, and what to do where it lies outside. */
export interface CheckTold {
  readonly setup: string;
  readonly text: string;
  readonly steps: readonly string[];
}

/** `null` where nothing at the table is read as one figure. */
export function checkTold(language: Language, table: Pick<PreparedTable, 'setups'>): CheckTold | null {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const check = arrivalCheckOf(table.setups);
  const good = check === null ? null : goodRangeOf(check.prediction);
  if (check === null || good === null) return null;
  const { setup, prediction } = check;
  const facts = {
    setup: setup.mark,
    way: say(`way.${setup.way}`),
    range: rangeText(language, prediction, good),
  };
  return {
    setup: setup.mark,
    text: say(setup.watched === 'pull' ? 'arrival.command.check' : 'arrival.command.watched', facts),
    steps: stepsOutsideText(language, check),
  };
}

const numbered = (steps: readonly string[]): readonly string[] =>
  steps.map((step, n) => `  ${n + 1}. ${step}`);

/**
 * What to do where the arrival reading lies outside, in this order. On the screen no row is ringed: the next
 * reading is typed in. Figures as they stand on the instrument.
 */
export function stepsOutsideText(language: Language, at: Predicted): readonly string[] {
  return stepsOutside(at, false).map(({ key, facts }) => {
    const told = Object.entries(facts).map(([name, fact]): readonly [string, Fact] => {
      if (typeof fact === 'number') return [name, onTheMarks(language, at, fact)];
      return typeof fact === 'object' && 'si' in fact
        ? [name, onTheMarks(language, at, fact.si)]
        : [name, fact];
    });
    return sentence(language, key, Object.fromEntries(told));
  });
}

function onTheMarks(language: Language, { prediction }: Predicted, si: number): string {
  const marks = marksOf(prediction);
  return `${markText(marks, si, languagePack(language).decimal)} ${unitWords(language, marks.unit)}`;
}

/** One reading taken on arrival at a table: the good ranges that follow, or that none does. */
export function arrivedText(
  language: Language,
  table: PreparedTable,
  at: Predicted,
  reading: number,
): string {
  const { verdict, rows, steps } = arrivedTold(language, table, at, reading);
  return [
    ...wrapped(verdict, WIDTH),
    ...rows.map(({ setup, text }) => `  ${setup}  ${text}`),
    ...numbered(steps),
    '',
  ].join('\n');
}

/** What follows from a reading taken on arrival: a row for each setup of the table, or what to do first. */
export interface ArrivedTold {
  readonly isFollowed: boolean;
  readonly verdict: string;
  readonly rows: readonly { readonly setup: string; readonly text: string }[];
  readonly steps: readonly string[];
}

export function arrivedTold(
  language: Language,
  table: PreparedTable,
  at: Predicted,
  reading: number,
): ArrivedTold {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const shown = onTheMarks(language, at, reading);
  if (!isFollowed(at, reading)) {
    const span = followedSpan(at) ?? { from: 0, to: 0 };
    const facts = {
      reading: shown,
      setup: at.setup.mark,
      from: onTheMarks(language, at, span.from),
      to: onTheMarks(language, at, span.to),
    };
    const verdict = say('arrival.command.again', facts);
    return { isFollowed: false, verdict, rows: [], steps: stepsOutsideText(language, at) };
  }
  const rows = rekeyed(table.setups, at, reading).map(({ setup, good }) => {
    const before = table.setups.find((each) => each.setup.mark === setup);
    const packed = before === undefined ? null : goodRangeOf(asPacked(before).prediction);
    if (before === undefined || good === null || packed === null)
      return { setup, text: say('arrival.command.no-figure') };
    const range = (each: GoodRange): string => rangeText(language, before.prediction, each);
    return { setup, text: say('arrival.command.row', { good: range(good), before: range(packed) }) };
  });
  const facts = { reading: shown, setup: at.setup.mark, table: table.mark };
  return { isFollowed: true, verdict: say('arrival.command.after', facts), rows, steps: [] };
}

/** The checks as JSON, or one reading with what follows from it; figures are SI. */
export const arrivalChecksJson = (prepared: Prepared): string =>
  plainJson({
    handspike: 'arrival 1',
    tables: prepared.tables.map((table) => {
      const check = arrivalCheckOf(table.setups);
      return {
        table: table.mark,
        setup: check?.setup.mark ?? null,
        good: check === null ? null : goodRangeOf(check.prediction),
        follows: check === null ? null : followedSpan(check),
      };
    }),
  });

export const arrivedJson = (table: PreparedTable, at: Predicted, reading: number): string =>
  plainJson({
    handspike: 'arrival 1',
    table: table.mark,
    setup: at.setup.mark,
    reading,
    isFollowed: isFollowed(at, reading),
    setups: isFollowed(at, reading) ? rekeyed(table.setups, at, reading) : [],
  });

import { arrivalCheckOf, stepsOutside } from '../../core/calibration/arrival-check.ts';
import { rekeyed } from '../../core/calibration/rekey.ts';
import { followedSpan, isFollowed } from '../../core/calibration/rekey-table.ts';
import type { Fact } from '../../core/diagnostics/diagnostic.ts';
import type { Prepared, PreparedTable } from '../../core/prepare.ts';
import type { Predicted } from '../../core/setups/difference.ts';
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
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const check = arrivalCheckOf(table.setups);
  const good = check === null ? null : goodRangeOf(check.prediction);
  if (check === null || good === null) return [say('arrival.command.none')];
  const { setup, prediction } = check;
  return [
    say(setup.watched === 'pull' ? 'arrival.command.check' : 'arrival.command.watched', {
      setup: setup.mark,
      way: say(`way.${setup.way}`),
      range: rangeText(language, prediction, good),
    }),
    say('arrival.command.outside'),
    ...stepsText(language, check),
  ];
}

/** On the screen no row is ringed: the next reading is typed in. Figures as they stand on the instrument. */
const stepsText = (language: Language, at: Predicted): readonly string[] =>
  stepsOutsideText(language, at).map((step, n) => `  ${n + 1}. ${step}`);

/** What to do where the arrival reading lies outside, in this order. */
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
    return [...wrapped(say('arrival.command.again', facts), WIDTH), ...stepsText(language, at), ''].join(
      '\n',
    );
  }
  const rows = rekeyed(table.setups, at, reading).map(({ setup, good }) => {
    const before = table.setups.find((each) => each.setup.mark === setup)?.prediction;
    const packed = before === undefined ? null : goodRangeOf(before);
    if (before === undefined || good === null || packed === null)
      return `  ${setup}  ${say('arrival.command.no-figure')}`;
    return `  ${setup}  ${say('arrival.command.row', {
      good: rangeText(language, before, good),
      before: rangeText(language, before, packed),
    })}`;
  });
  const facts = { reading: shown, setup: at.setup.mark, table: table.mark };
  return [...wrapped(say('arrival.command.after', facts), WIDTH), ...rows, ''].join('\n');
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

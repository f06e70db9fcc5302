import { isNotDefined } from '../../core/description/not-defined.ts';
import type { PreparedSetup } from '../../core/prepare.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { type Cause, causesOf } from '../../core/readings/causes.ts';
import { ownUnit } from '../../core/readings/judgement.ts';
import { readingText, stepDecimals } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { causeNamed, causeToSee, causeToTry } from './cause-text.ts';
import { columns, wrapped } from './columns.ts';
import { goodRangeOf, marksOf, rangeText } from './prediction-text.ts';

const WIDTH = 100;

/** Every usual mistake at a setup: the number it would leave, how often it is assumed, and what to say. */
export function mistakesText(language: Language, at: PreparedSetup): string {
  const { setup, prediction } = at;
  const good = goodRangeOf(prediction);
  const title = sentence(language, 'mistakes.title', { setup: setup.mark });
  if (good === null || isNotDefined(prediction.outcome))
    return `${title}\n  ${sentence(language, 'mistakes.none')}\n`;
  const found = causesOf(setup, ownUnit(setup), prediction).filter(({ kind }) => kind !== 'good');
  const sorted = [...found].sort((a, b) => b.rate - a.rate);
  const head = ['written', 'often', 'again', 'what'].map((key) => sentence(language, `mistakes.${key}`));
  const [first = '', ...lines] = columns(
    [head, ...sorted.map((cause) => rowOf(language, at, cause))],
    ['right', 'right', 'left', 'left'],
  );
  return [
    title,
    `  ${sentence(language, 'mistakes.good', { range: rangeText(language, prediction, good) })}`,
    '',
    `  ${first}`,
    ...sorted.flatMap((cause, n) => [
      `  ${lines[n] ?? ''}`,
      // Several weights, or several partners, are told in the same words.
      ...(sorted[n + 1]?.code === cause.code ? [] : wordsOf(language, cause)),
    ]),
    '',
    ...wrapped(sentence(language, 'mistakes.note'), WIDTH).map((line) => `  ${line}`),
    '',
  ].join('\n');
}

function rowOf(language: Language, at: PreparedSetup, cause: Cause): readonly string[] {
  const { decimal } = languagePack(language);
  return [
    numberOf(language, at, cause),
    `${decimalText(cause.rate * 100, 1, decimal)} %`,
    sentence(language, `mistakes.persists.${cause.persists}`),
    causeNamed(language, cause),
  ];
}

const wordsOf = (language: Language, { code }: Cause): readonly string[] =>
  [causeToTry(language, { code }), causeToSee(language, { code })].flatMap((words) =>
    wrapped(words, WIDTH - 8).map((line) => `        ${line}`),
  );

/** What would be written: a number in the marks that it is then read from, or the word for the stop. */
function numberOf(language: Language, { prediction }: PreparedSetup, { figure, unit }: Cause): string {
  const { decimal } = languagePack(language);
  if (figure === null) return sentence(language, 'mistakes.at-the-stop');
  const marks = marksOf(prediction);
  const middle = (figure.low + figure.high) / 2;
  if (unit === null)
    return `${readingText(marks, middle, figure.u, decimal)} ${unitWords(language, marks.unit)}`;
  // Only the number is written, in another unit than it is taken for.
  const decimals = stepDecimals(marks) + Math.round(Math.log10(unit.si / marks.unitSi));
  return decimalText(middle / unit.si, Math.max(decimals, -2), decimal);
}

import type { WorkingLine } from '../../core/description/working.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import type { BudgetRow } from '../../core/setups/prediction.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { unknownName } from '../sentences/unknown-name.ts';
import { columns } from './columns.ts';
import { narrowingText, outcomeText, textbookText } from './prediction-text.ts';
import { reasonsOf } from './reasons.ts';
import { sixFigures, substitute } from './substitute.ts';
import { unknownUnit } from './unknown-unit.ts';
import { workText } from './work-text.ts';

/**
 * How a prediction comes about, for the terminal: every line of working with its equation, the
 * numbers put in, the result and where the equation comes from; then what the doubt is made of.
 */
export function explainText(language: Language, setup: SetupSheet): string {
  const { prediction } = setup;
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const working = prediction.working();
  return [
    say('explain.title', {
      setup: `${prediction.table} ${prediction.setup}`,
      machine: machineName(language, prediction.machine),
      way: say(`way.${prediction.way}`),
    }),
    ...(prediction.benchSince === undefined ? [] : [say('bench.since', { since: prediction.benchSince })]),
    '',
    say('explain.working'),
    ...(working.length === 0
      ? [`  ${say('explain.no-working')}`]
      : [`  ${say('explain.angles')}`, ...working.flatMap((line) => workingText(language, line))]),
    '',
    say('explain.result'),
    `  ${outcomeText(language, prediction)}`,
    `  ${textbookText(language, prediction.textbook, prediction.graduations)}`,
    ...reasonsOf(language, setup).map((reason) => `  - ${reason}`),
    '',
    ...workText(language, prediction),
    ...(prediction.budget.length === 0 ? [] : ['', say('explain.budget'), ...budgetText(language, setup)]),
    ...(prediction.narrows === null ? [] : ['', narrowingText(language, prediction)]),
    '',
  ].join('\n');
}

/**
 * A line of working: what it finds, then equation, numbers and result in one line.
 *
 * @example equationText({ what: 'lever.bar-weight', symbol: 'B', formula: 'mB*g', values: { mB: 0.118, g: 9.81 }, value: 1.15758, unit: 'N', source: 'weight' }) // => 'B = mB*g = 0.118*9.81 = 1.15758 N   [weight]'
 */
export function equationText(line: WorkingLine): string {
  const unit = line.unit === '1' || line.unit === '' ? '' : ` ${line.unit}`;
  const numbers = substitute(line.formula, line.values);
  // A formula that is itself a number or a single name needn't be said twice.
  const steps = [line.symbol, line.formula, numbers, `${sixFigures(line.value)}${unit}`];
  return `${steps.filter((step, n) => n === 0 || n === 3 || step !== steps[n - 1]).join(' = ')}   [${line.source}]`;
}

/** The machine's own name in the language, where it has one. */
export const machineName = (language: Language, machine: string): string =>
  hasSentence(language, `machine.${machine}`) ? sentence(language, `machine.${machine}`) : machine;

const workingText = (language: Language, line: WorkingLine): readonly string[] => [
  ...(line.heading === undefined ? [] : ['', `  ${sentence(language, line.heading)}`]),
  `    ${sentence(language, line.what)}`,
  `      ${equationText(line)}`,
];

/** Each doubt as |c| x u: what the reading changes by for one unit of the unknown, times how well that is known. */
function budgetText(language: Language, setup: SetupSheet): readonly string[] {
  const { decimal } = languagePack(language);
  const { budget, graduations } = setup.prediction;
  const unit = graduations === null ? 'N' : graduations.unit;
  const si = graduations === null ? 1 : graduations.unitSi;
  const head = ['contribution', 'share', 'sensitivity', 'u', 'unknown', 'origin'].map((key) =>
    sentence(language, `explain.budget.${key}`),
  );
  const rows = [...budget]
    .sort((a, b) => b.share - a.share)
    .map((row) => {
      const of = unknownUnit(row, setup);
      const per = of === '1' ? unit : of === unit ? '' : `${unit}/${of.includes('/') ? `(${of})` : of}`;
      return [
        `${sixFigures(row.contribution / si)} ${unit}`,
        `${decimalText(row.share * 100, row.share < 0.0995 ? 1 : 0, decimal)} %`,
        `${sixFigures(row.sensitivity / si)} ${per}`.trim(),
        `${sixFigures(row.u)} ${of === '1' ? '' : of}`.trim(),
        unknownName(language, row.unknown),
        originText(language, row),
      ];
    });
  return columns([head, ...rows], ['right', 'right', 'right', 'right', 'left', 'left']).map(
    (line) => `  ${line}`,
  );
}

const originText = (language: Language, row: BudgetRow): string => {
  const origin = sentence(language, `origin.${row.origin}`);
  return row.source === undefined ? origin : `${origin} [${row.source}]`;
};

import type { Prepared } from '../../core/prepare.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { setupNamed } from '../../core/review.ts';
import type { ChosenRange } from '../../core/setups/predict-by-trials.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { plainJson } from './plain-json.ts';
import { fineFigureIn, rangeText } from './prediction-text.ts';

/** The range of one setup, by whichever law holds. */
export interface RangeAtSetup {
  readonly setup: string;
  readonly range: ChosenRange;
}

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 100;

/** Linear law and trials side by side, setup by setup, with which of them is used and why. */
export function trialsText(
  language: Language,
  prepared: Prepared,
  seed: number,
  ranges: readonly RangeAtSetup[],
): string {
  const say = (key: string, facts = {}) => sentence(language, `trials.${key}`, facts);
  return [
    ...wrapped(say('head', { seed }), WIDTH),
    ...ranges.flatMap(({ setup, range }) => {
      const prediction = setupNamed(prepared, setup)?.prediction;
      if (prediction === undefined) return [];
      return ['', setup, ...linesOf(language, prediction, range).map((line) => `  ${line}`)];
    }),
    '',
    ...wrapped(say('assumes'), WIDTH),
    '',
  ].join('\n');
}

function linesOf(language: Language, prediction: Prediction, range: ChosenRange): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, `trials.${key}`, facts);
  const figure = fineFigureIn(language, prediction);
  const { trials, linear, check, near } = range;
  if (range.because === 'nothing is read') return [say('because.nothing is read')];
  const because = check === null ? {} : { low: check.low, high: check.high, tolerance: check.tolerance };
  const facts = Object.fromEntries(Object.entries(because).map(([name, si]) => [name, figure(si)]));
  return [
    ...(near.length === 0
      ? []
      : [say('near', { limits: near.map((limit) => say(`near.${limit}`)).join(', ') })]),
    linear === null ? say('linear.none') : say('linear', { good: rangeText(language, prediction, linear) }),
    ...(trials === null
      ? []
      : [
          say('trials', {
            good: rangeText(language, prediction, trials.good),
            mean: figure(trials.expected),
            u: figure(trials.u),
            trials: trials.trials,
          }),
          ...(prediction.way === 'held' && prediction.watched === 'pull'
            ? [say('held', { range: rangeText(language, prediction, trials.symmetric) })]
            : []),
          ...fatesOf(language, trials.fates),
          ...(trials.stable ? [] : [say('rough')]),
        ]),
    say(`because.${range.because}`, facts),
  ];
}

/** Shares of the trials, greatest first; left out where all of them are readings. */
function fatesOf(language: Language, fates: Readonly<Record<string, number>>): readonly string[] {
  const { decimal } = languagePack(language);
  const found = Object.entries(fates).sort(([, a], [, b]) => b - a);
  if (found.length < 2 && found[0]?.[0] === 'reading') return [];
  const each = found.map(([fate, share]) =>
    sentence(language, `trials.fate.${fate}`, { percent: decimalText(share * 100, 1, decimal) }),
  );
  return [sentence(language, 'trials.fates', { fates: each.join(', ') })];
}

/** Below a prediction near a limit: what trials make of it, and which law holds. */
export const nearLimitText = (
  language: Language,
  prediction: Prediction,
  seed: number,
  range: ChosenRange,
): string =>
  [
    sentence(language, 'trials.explain', { seed }),
    ...linesOf(language, prediction, range).map((line) => `  ${line}`),
    ...(range.used === 'trials' ? [`  ${sentence(language, 'trials.key-stays')}`] : []),
    '',
  ].join('\n');

/** The same as JSON; figures are SI. */
export const trialsJson = (seed: number, ranges: readonly RangeAtSetup[]): string =>
  plainJson({
    handspike: 'trials 1',
    seed,
    setups: ranges.map(({ setup, range }) => ({ setup, ...range })),
  });

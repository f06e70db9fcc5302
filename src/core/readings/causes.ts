import { isNotDefined } from '../description/not-defined.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Persists } from '../machines/machine.ts';
import { predict } from '../setups/predict.ts';
import type { Prediction } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { type Assumptions, BASE_RATES } from './base-rates.ts';
import { type DoingMistake, doingMistakes } from './doing-mistakes.ts';
import { type Figure, figureOf } from './figure.ts';
import { outcomeAt } from './outcome-at.ts';
import { numberSlips, type PenSlip, plainSlips } from './pen-slips.ts';
import type { ReadingUnit } from './written-reading.ts';

export { unitsFor } from './pen-slips.ts';
export type { Persists };

/**
 * One explanation of a reading: where the figure then lies, in which unit it was then written, and
 * how often that happens. `rate` is an assumption: common practice, no source.
 */
export interface Cause {
  readonly code: string;
  readonly kind: 'good' | 'doing' | 'reading';
  readonly rate: number;
  /** Where the instrument would stand; `null` where it would rest on its stop. */
  readonly figure: Figure | null;
  /** Unit that the group wrote in, whatever it thought; `null` is the unit it says. */
  readonly unit: ReadingUnit | null;
  /** What of it is met again: a habit of the group, something left at the station, or nothing. */
  readonly persists: Persists;
  /** Which weight, which partner: causes of one code differ by these. */
  readonly facts?: Facts;
}

/** What is known and assumed where explanations are looked for. */
export interface Asking extends Assumptions {
  /** The number as it was written: slips that hang on its digits are found only then. */
  readonly number?: number;
}

/**
 * A cause with what tells it from others of its code.
 *
 * @example causeKey({ code: 'setup.swapped', facts: { setup: 'L1', partner: 'L2' } }) // => 'setup.swapped L1 L2'
 */
export const causeKey = ({ code, facts }: Pick<Cause, 'code' | 'facts'>): string =>
  facts === undefined
    ? code
    : [
        code,
        ...Object.values(facts).map((fact) => (typeof fact === 'string' ? fact : JSON.stringify(fact))),
      ].join(' ');

/** All explanations of a reading at a setup, the good one first: where the prediction stands today. */
export function causesOf(
  setup: Setup,
  own: ReadingUnit,
  prediction: Prediction = predict(setup),
  { rateFactor = 1, number }: Asking = {},
): readonly Cause[] {
  const { figure, done, slips, schoolbook } = withoutNumber(setup, own, prediction);
  const ofDigits =
    number === undefined || figure === null ? [] : penCauses(numberSlips(setup, own, number), figure);
  const all = [...done, ...slips, ...ofDigits, ...schoolbook];
  const found = rateFactor === 1 ? all : all.map((cause) => ({ ...cause, rate: cause.rate * rateFactor }));
  const rest = found.reduce((sum, cause) => sum + cause.rate, 0);
  return [
    {
      code: 'good',
      kind: 'good',
      rate: Math.max(LEAST_GOOD, 1 - rest),
      figure,
      unit: null,
      persists: 'reading',
    },
    ...found,
  ];
}

/** What may happen whatever number is then written. */
interface WithoutNumber {
  readonly figure: Figure | null;
  readonly done: readonly Cause[];
  readonly slips: readonly Cause[];
  readonly schoolbook: readonly Cause[];
}

/** Kept for each prediction of a setup and each unit: a class asks for them again with every reading. */
const asked = new WeakMap<Setup, WeakMap<Prediction, WeakMap<ReadingUnit, WithoutNumber>>>();

function withoutNumber(setup: Setup, own: ReadingUnit, prediction: Prediction): WithoutNumber {
  const bySetup = asked.get(setup) ?? new WeakMap<Prediction, WeakMap<ReadingUnit, WithoutNumber>>();
  asked.set(setup, bySetup);
  const byPrediction = bySetup.get(prediction) ?? new WeakMap<ReadingUnit, WithoutNumber>();
  bySetup.set(prediction, byPrediction);
  const before = byPrediction.get(own);
  if (before !== undefined) return before;
  const figure = figureOf(prediction.outcome);
  const found: WithoutNumber = {
    figure,
    done: doingCauses(setup, prediction, figure),
    slips: figure === null ? [] : penCauses(plainSlips(setup, own), figure),
    schoolbook: schoolbookCauses(prediction, figure),
  };
  byPrediction.set(own, found);
  return found;
}

/** However many mistakes can be made somewhere, every second reading is good: common practice, no source. */
const LEAST_GOOD = 0.5;

function doingCauses(setup: Setup, prediction: Prediction, figure: Figure | null): readonly Cause[] {
  const { packed, mistakes } = stoodWrong(setup);
  const before = prediction.rekeyedBy === null ? figure : packed;
  return mistakes.flatMap(({ mistake, there }): readonly Cause[] => {
    if (isSame(there, before)) return [];
    const { code, rate, persists, facts } = mistake;
    return [
      {
        code,
        kind: 'doing',
        rate,
        figure: followed(there, before, figure),
        unit: null,
        persists,
        ...(facts === undefined ? {} : { facts }),
      },
    ];
  });
}

interface StoodWrong {
  /** Where the instrument would stand as the kit was packed. */
  readonly packed: Figure | null;
  readonly mistakes: readonly { readonly mistake: DoingMistake; readonly there: Figure | null }[];
}

/**
 * Figures of the mistakes of doing, kept for each setup: they follow from it alone, and a class asks for
 * them again with every reading.
 */
const known = new WeakMap<Setup, StoodWrong>();

function stoodWrong(setup: Setup): StoodWrong {
  const before = known.get(setup);
  if (before !== undefined) return before;
  const found: StoodWrong = {
    packed: figureOf(outcomeAt(setup)),
    mistakes: doingMistakes(setup).flatMap((mistake) => {
      const outcome = outcomeAt(mistake.changed);
      if (isNotDefined(outcome) || outcome.kind === 'scale on the other side') return [];
      const there = figureOf(outcome);
      return there === null && outcome.kind !== 'on its stop' ? [] : [{ mistake, there }];
    }),
  };
  known.set(setup, found);
  return found;
}

const penCauses = (slips: readonly PenSlip[], figure: Figure): readonly Cause[] =>
  slips.map((slip) => ({ ...slip, kind: 'reading' as const, figure }));

/**
 * The frictionless figure, where the scale would hardly show it: somebody reckoned instead of reading.
 * It is held to no finer than a reading, so that a slip at the scale that leads to the same figure is
 * named before it.
 */
function schoolbookCauses({ textbook }: Prediction, figure: Figure | null): readonly Cause[] {
  if (figure === null || isNotDefined(textbook)) return [];
  const reckoned = { low: textbook.value, high: textbook.value, u: figure.u };
  if (isSame(reckoned, figure)) return [];
  return [
    {
      code: 'reading.schoolbook',
      kind: 'reading',
      rate: BASE_RATES.schoolbook,
      figure: reckoned,
      unit: null,
      persists: 'group',
    },
  ];
}

/** A slip is made on the same apparatus: its figure follows the arrival reading as the good one does. */
function followed(there: Figure | null, packed: Figure | null, now: Figure | null): Figure | null {
  if (there === null || packed === null || now === null || packed === now) return there;
  const variance = there.u ** 2 - packed.u ** 2 + now.u ** 2;
  return {
    low: there.low + now.low - packed.low,
    high: there.high + now.high - packed.high,
    u: Math.max(Math.sqrt(Math.max(variance, 0)), Math.min(there.u, now.u)),
  };
}

/** A mistake that changes nothing here can't be told from a good reading, and need not be. */
const isSame = (a: Figure | null, b: Figure | null): boolean =>
  a !== null && b !== null && Math.abs(a.low - b.low) + Math.abs(a.high - b.high) < (a.u + b.u) / 10;

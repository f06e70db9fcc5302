import { isNotDefined, notDefined } from '../description/not-defined.ts';
import type { SpringScale } from '../instruments/spring-scale.ts';
import type { Newtons } from '../quantities/brands.ts';
import { type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import { type At, propagate } from '../uncertainty/propagate.ts';
import { budgetOf, narrowingOf, without } from './budget.ts';
import { asRead, goodBand, goodRange } from './good-range.ts';
import type { BudgetRow, GoodRange, Narrowing, Outcome } from './prediction.ts';
import { inputsOf, pullOf } from './pull.ts';
import type { Setup } from './setup.ts';
import { hangingFigure, lagOf, type Sense, senseOf, shownLaw } from './shown.ts';

/** What comes of an instrument: the outcome, and for a figure where its doubt comes from. */
export interface Reading {
  readonly outcome: Outcome;
  /** The figure (for a band its upper end) as one group reads it. */
  readonly read: Measured | null;
  /** The figure before anybody reads it. */
  readonly shown: Measured | null;
  /** The lower end of a band, as one group reads it. */
  readonly lower: Measured | null;
  readonly budget: readonly BudgetRow[];
  readonly narrows: Narrowing | null;
}

export const onlyOutcome = (outcome: Outcome): Reading => ({
  outcome,
  read: null,
  shown: null,
  lower: null,
  budget: [],
  narrows: null,
});

/** What the spring scale of a setup will show. */
export function predictScale(setup: Setup): Reading {
  const { scale } = setup;
  if (scale === null) return onlyOutcome(notDefined('setup.no-scale'));
  const pull = pullOf(setup);
  if (isNotDefined(pull)) return onlyOutcome(pull);
  switch (pull.kind) {
    case 'scale on the other side':
      return onlyOutcome(pull);
    case 'moves under the scale':
      return movesUnder(setup, scale, pull.needed);
    case 'force':
      return oneFigure(setup, scale, pull.law, pull.cut);
    case 'band':
      return band(setup, scale, pull);
  }
}

function oneFigure(setup: Setup, scale: SpringScale, law: (at: At) => Newtons | null, cut: boolean): Reading {
  const shown = show(setup, scale, law, senseOf(setup));
  if (shown === null) return onlyOutcome(notDefined('setup.no-balance'));
  const out = offTheMarks(scale, shown.value, shown.value);
  if (out !== null) return onlyOutcome(out);
  const read = asRead(shown, scale.graduations, setup.reader.scatter);
  const range = (value: Measured): GoodRange => goodRange(value, scale.graduations, scale.stop, scale.range);
  const good = range(read);
  const budget = budgetOf(read);
  return {
    outcome: {
      kind: 'reading',
      expected: shown.value,
      u: standardUncertainty(read),
      good,
      ...(cut ? { cutAtOwnWeight: true } : {}),
    },
    read,
    shown,
    lower: null,
    budget,
    narrows: narrowingOf(budget, good, (unknown) => range(without(read, unknown))),
  };
}

/** Held still: anything between the starting limits. The lower end may lie at the stop. */
function band(
  setup: Setup,
  scale: SpringScale,
  pull: {
    readonly lower: (at: At) => Newtons | null;
    readonly upper: (at: At) => Newtons | null;
    readonly cut: boolean;
  },
): Reading {
  const low = show(setup, scale, pull.lower, 'resting');
  const shown = show(setup, scale, pull.upper, 'resting');
  if (low === null || shown === null) return onlyOutcome(notDefined('setup.no-balance'));
  const out = offTheMarks(scale, low.value, shown.value);
  if (out !== null) return onlyOutcome(out);
  const lower = asRead(low, scale.graduations, setup.reader.scatter);
  const read = asRead(shown, scale.graduations, setup.reader.scatter);
  const range = (a: Measured, b: Measured): GoodRange =>
    goodBand(a, b, scale.graduations, scale.stop, scale.range);
  const good = range(lower, read);
  const budget = budgetOf(read);
  return {
    outcome: {
      kind: 'band',
      lower: Math.max(low.value, scale.stop),
      upper: shown.value,
      u: standardUncertainty(read),
      good,
      ...(pull.cut ? { cutAtOwnWeight: true } : {}),
    },
    read,
    shown,
    lower,
    budget,
    narrows: narrowingOf(budget, good, (unknown) => range(without(lower, unknown), without(read, unknown))),
  };
}

/** The machine runs away under the scale's own weight; the scale shows its turn-over figure. */
function movesUnder(setup: Setup, scale: SpringScale, needed: Newtons): Reading {
  const law = hangingFigure(setup, scale);
  const shown = show(setup, scale, law, 'resting');
  if (shown === null) return onlyOutcome(notDefined('setup.no-balance'));
  const read = asRead(shown, scale.graduations, setup.reader.scatter);
  const weight = propagate(law, inputsOf(setup));
  return {
    outcome: {
      kind: 'moves under the scale',
      needed,
      ownWeight: weight?.value ?? 0,
      shows: shown.value,
      u: standardUncertainty(read),
      good: goodRange(read, scale.graduations, scale.stop, scale.range),
    },
    read,
    shown,
    lower: null,
    budget: budgetOf(read),
    narrows: null,
  };
}

function show(
  setup: Setup,
  scale: SpringScale,
  force: (at: At) => Newtons | null,
  sense: Sense,
): Measured | null {
  const lag = lagOf(setup, sense);
  return propagate(shownLaw(setup, scale, force, lag), [...inputsOf(setup), lag]);
}

/** On its stop: the shown value would be below it. Off the scale: beyond its last mark. */
export function offTheMarks(scale: SpringScale, lowest: number, highest: number): Outcome | null {
  if (highest < scale.stop) return { kind: 'on its stop', wouldShow: highest, stop: scale.stop };
  if (lowest > scale.range || (highest > scale.range && lowest === highest))
    return {
      kind: 'off the scale',
      wouldShow: highest,
      range: scale.range,
      overloads: scale.overload !== null && highest > scale.overload,
    };
  return null;
}

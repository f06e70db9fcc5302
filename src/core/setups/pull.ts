import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { measuredOfScale, ownWeight } from '../instruments/spring-scale.ts';
import { forceOf, measuredOf } from '../parts/weight.ts';
import { type Newtons, newtons } from '../quantities/brands.ts';
import type { Asked, Balance } from '../statics/balance.ts';
import type { Measured } from '../uncertainty/measured.ts';
import { type At, atBest } from '../uncertainty/propagate.ts';
import type { WayOfReading } from './prediction.ts';
import { hangsFromTheMachine, type Setup } from './setup.ts';

/**
 * The machine of a setup at a limit of motion, under its load. Where what is drawn by chance or moved by a fit
 * can't be (a rise beyond the length of its slope), there is no balance either.
 */
export function balanceOf(
  setup: Setup,
  at: At,
  direction: Asked['direction'],
  grip: Asked['grip'],
): Balance | NotDefined {
  const balance = setup.machine.balance(setup.station, at, {
    load: forceOf(setup.load, at, at(setup.gravity)),
    gravity: at(setup.gravity),
    direction,
    grip,
  });
  return isNotDefined(balance) || Number.isFinite(balance.effort) ? balance : notDefined('setup.no-balance');
}

/** The balance that a way of reading is about; for held still, the upper limit. */
export function balanceFor(setup: Setup, at: At, way: WayOfReading): Balance | NotDefined {
  switch (way) {
    case 'raise':
      return balanceOf(setup, at, 'raise', 'moving');
    case 'lower':
      return balanceOf(setup, at, 'lower', 'moving');
    case 'start':
    case 'held':
      return balanceOf(setup, at, 'raise', 'starting');
  }
}

/** Least force that the scale can pull with: its own weight where it hangs from the machine. */
export const leastPull = (setup: Setup, at: At): Newtons =>
  setup.scale !== null && hangsFromTheMachine(setup.hang) && !setup.handCarries
    ? ownWeight(setup.scale, at, at(setup.gravity))
    : newtons(0);

/** Every value of a setup that is not known exactly. */
export const inputsOf = (setup: Setup): readonly Measured[] => [
  ...Object.values(setup.station.inputs),
  measuredOf(setup.load),
  setup.gravity,
  ...(setup.scale === null ? [] : measuredOfScale(setup.scale)),
  ...(typeof setup.hang === 'object' ? [setup.hang.angle] : []),
];

/**
 * What the way of reading asks for at the hook, before the scale: one force, the two ends of a band,
 * or why there is no number. Decided at the best values.
 */
export type Pull =
  | { readonly kind: 'force'; readonly law: (at: At) => Newtons | null; readonly cut: boolean }
  | {
      readonly kind: 'band';
      readonly lower: (at: At) => Newtons | null;
      readonly upper: (at: At) => Newtons | null;
      readonly cut: boolean;
    }
  | { readonly kind: 'moves under the scale'; readonly needed: Newtons }
  | { readonly kind: 'scale on the other side'; readonly force: Newtons }
  | NotDefined;

export function pullOf(setup: Setup): Pull {
  const least = leastPull(setup, atBest);
  const raise = balanceFor(setup, atBest, setup.way === 'lower' ? 'raise' : setup.way);
  if (isNotDefined(raise)) return raise;
  if (raise.effort < 0) return { kind: 'scale on the other side', force: newtons(-raise.effort) };
  if (least > 0 && raise.effort < least) return { kind: 'moves under the scale', needed: raise.effort };
  switch (setup.way) {
    case 'raise':
    case 'start':
      return { kind: 'force', law: (at) => effortOf(balanceFor(setup, at, setup.way)), cut: false };
    case 'lower':
      return loweringPull(setup, least);
    case 'held':
      return heldPull(setup, least);
  }
}

/** Letting it come back. Where even no pull would not let it, there is no such reading. */
function loweringPull(setup: Setup, least: Newtons): Pull {
  const back = balanceOf(setup, atBest, 'lower', 'moving');
  if (isNotDefined(back)) return back;
  if (back.effort < 0) return notDefined('setup.does-not-come-back');
  return {
    kind: 'force',
    law: (at) => atLeast(effortOf(balanceOf(setup, at, 'lower', 'moving')), leastPull(setup, at)),
    cut: back.effort < least,
  };
}

/**
 * Every pull at which nothing moves: from the lower to the upper starting limit, never below 0. Where
 * no pull at all lets it back (it wedges itself), the lower end is none.
 */
function heldPull(setup: Setup, least: Newtons): Pull {
  const back = balanceOf(setup, atBest, 'lower', 'starting');
  const lowest = isNotDefined(back) ? 0 : back.effort;
  return {
    kind: 'band',
    lower: (at) =>
      newtons(Math.max(effortOf(balanceOf(setup, at, 'lower', 'starting')) ?? 0, leastPull(setup, at), 0)),
    upper: (at) => effortOf(balanceOf(setup, at, 'raise', 'starting')),
    cut: least > 0 && lowest < least,
  };
}

export const effortOf = (balance: Balance | NotDefined): Newtons | null =>
  isNotDefined(balance) ? null : balance.effort;

const atLeast = (force: Newtons | null, least: Newtons): Newtons | null =>
  force === null ? null : newtons(Math.max(force, least));

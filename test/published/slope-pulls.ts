import { balanceUnder, dragOf, planeOf } from '../stations/incline.ts';
import { baseOf, stringAt } from '../stations/ride.ts';
import { solveFor } from './solve-for.ts';

/** Pull up, or held back, on a rough slope with the string at some lean. */
export const up = (W: number, angle: number, mu: number, lean = 0): number =>
  balanceUnder(planeOf({ angle }, baseOf({ mu }), stringAt(lean)), W).effort;
export const back = (W: number, angle: number, mu: number, lean = 0): number =>
  balanceUnder(planeOf({ angle }, baseOf({ mu }), stringAt(lean)), W, 'lower').effort;
/** Pull along the level at some lean. */
export const level = (W: number, mu: number, lean = 0): number =>
  balanceUnder(dragOf(baseOf({ mu }), stringAt(lean)), W).effort;
/** Friction alone, from the losses of the account: a metre of travel, so newtons. */
export const rubbing = (W: number, angle: number, mu: number): number =>
  balanceUnder(planeOf({ angle }, baseOf({ mu })), W)
    .work.filter(({ by }) => by === 'loss')
    .reduce((sum, { rate }) => sum - rate, 0);

/** Weight and friction that two pulls settle: the weight for each friction from one, then the friction. */
export function weightAndFriction(
  first: (W: number, mu: number) => number,
  pull1: number,
  second: (W: number, mu: number) => number,
  pull2: number,
) {
  const weightAt = (mu: number) => pull1 / first(1, mu);
  const mu = solveFor((guess) => second(weightAt(guess), guess), pull2, 1e-6, 0.99);
  return { weight: weightAt(mu), mu };
}

export function twoSlopes(given: (name: string) => number) {
  return weightAndFriction(
    (W, mu) => up(W, given('angle1'), mu),
    given('P1'),
    (W, mu) => up(W, given('angle2'), mu),
    given('P2'),
  );
}

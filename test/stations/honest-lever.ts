/**
 * Honest readings of a lever, drawn one by one: a second reckoning apart from the program, with its own
 * formulas and its own chance. Each draw is another group at another copy of the table: what the kit
 * doesn't know is drawn from what it says, then the hand scatters, the tube lags, and the eye rounds.
 */
export interface HonestLever {
  readonly pulls: 'down' | 'up';
  /** Level distances from the pin, m: load, pull, bar centre (positive on the load's side). */
  readonly load: Spread;
  readonly pull: Spread;
  readonly bar: Spread;
  readonly barMass: Spread;
  readonly pinRadius: Spread;
  readonly friction: Spread;
  readonly loadMass: Spread;
  /** Turn-over figure, N, already times what the way of hanging leaves of it. */
  readonly shift: Spread;
  readonly accuracy: Spread;
  readonly tubeFriction: number;
  readonly scatter: number;
  readonly step: number;
  readonly sense: 'raise' | 'lower';
}

/** A normal law by its standard deviation, or anywhere within a half-width. */
export type Spread =
  | { readonly mean: number; readonly sd: number }
  | { readonly mean: number; readonly half: number };

const G = 9.80665;

/** Chance from a seed: a 32-bit mixing generator (mulberry32, public domain). */
export function chanceFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** One normal number (Box and Muller). */
const normal = (chance: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

export function honestReadings(lever: HonestLever, count: number, seed: number): readonly number[] {
  const chance = chanceFrom(seed);
  const draw = (spread: Spread): number =>
    'sd' in spread
      ? spread.mean + spread.sd * normal(chance)
      : spread.mean + spread.half * (2 * chance() - 1);
  return Array.from({ length: count }, () => {
    const [load, pull, bar] = [draw(lever.load), draw(lever.pull), draw(lever.bar)];
    const B = draw(lever.barMass) * G;
    const W = draw(lever.loadMass) * G;
    const circle = draw(lever.pinRadius) * draw(lever.friction);
    const force = pullOf(lever, W * load + B * bar, pull, W + B, circle);
    const lag = lever.tubeFriction * chance() * (lever.sense === 'raise' ? -1 : 1);
    const shown = force - draw(lever.shift) + draw(lever.accuracy) + lag;
    return Math.round((shown * (1 + lever.scatter * normal(chance))) / lever.step) * lever.step;
  });
}

/**
 * Moments about the pin with the pin's rubbing, upright pulls only. Down: the pin carries load, bar
 * and pull. Up: it carries load and bar less the pull (second class, where the pull is the smaller).
 */
function pullOf(lever: HonestLever, moment: number, arm: number, weight: number, circle: number): number {
  const rubs = lever.sense === 'raise' ? circle : -circle;
  return lever.pulls === 'down'
    ? (moment + rubs * weight) / (arm - rubs)
    : (moment + rubs * weight) / (arm + rubs);
}

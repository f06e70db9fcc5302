import type { Unknown } from './measured.ts';
import { tabledNormalQuantile } from './normal-table.ts';
import type { At } from './propagate.ts';
import { randomFrom } from './random.ts';

/** Copies of one apparatus as it may be, for all that is known of it. */
export interface ApparatusCopies {
  readonly count: number;
  readonly seed: number;
  /** Reads a value as it is on copy `n`; the same unknown is the same wherever it turns up. */
  readonly at: (n: number) => At;
}

/**
 * So many copies of an apparatus, each unknown drawn for itself: every copy takes its place in one of as
 * many equal shares of the unknown's law, in an order of chance (Latin hypercube: McKay, Beckman and
 * Conover, 1979). An unknown's draws hang on its id and the seed only, so that two setups that are compared
 * differ by what differs in them and not by the luck of the draw.
 *
 * @example
 * import { between } from './measured.ts';
 * const friction = between('pin/friction', 0.15, 0.35, 'assumed');
 * apparatusCopies(2, 7).at(0)(friction) + apparatusCopies(2, 7).at(1)(friction) > 0.35 // => true
 */
export function apparatusCopies(count: number, seed: number): ApparatusCopies {
  const drawn = new Map<string, Float64Array>();
  const drawsOf = (unknown: Unknown): Float64Array => {
    const before = drawn.get(unknown.id);
    if (before !== undefined) return before;
    const draws = spreadDraws(unknown, count, seed);
    drawn.set(unknown.id, draws);
    return draws;
  };
  return {
    count,
    seed,
    at: (n) => (value) => {
      let here: number = value.value;
      for (const { unknown, slope } of value.parts) here += slope * unknown.u * (drawsOf(unknown)[n] ?? 0);
      return here as typeof value.value;
    },
  };
}

/** In standard uncertainties: one draw in each of `count` equal shares, shuffled. */
function spreadDraws({ id, shape }: Unknown, count: number, seed: number): Float64Array {
  const random = randomFrom(seed + numberOf(id));
  const draws = new Float64Array(count);
  for (let n = 0; n < count; n += 1) {
    const share = (n + random.even()) / count;
    draws[n] = shape === 'even' ? Math.sqrt(3) * (2 * share - 1) : tabledNormalQuantile(share);
  }
  for (let n = count - 1; n > 0; n -= 1) {
    const other = Math.floor(random.even() * (n + 1));
    const held = draws[n] ?? 0;
    draws[n] = draws[other] ?? 0;
    draws[other] = held;
  }
  return draws;
}

/** A whole number from a name (FNV-1a, 32 bits). */
function numberOf(name: string): number {
  let hash = 0x811c9dc5;
  for (let n = 0; n < name.length; n += 1) hash = Math.imul(hash ^ name.charCodeAt(n), 0x01000193);
  return hash >>> 0;
}

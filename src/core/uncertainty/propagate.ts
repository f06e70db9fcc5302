import type { Measured, Part, Unknown } from './measured.ts';

/** Reads a measured value at some state of the unknowns: `at(mass)` is a plain number. */
export type At = <Q extends number>(value: Measured<Q>) => Q;

/** Every unknown at its best value. */
export const atBest: At = (value) => value.value;

/** One unknown moved by `shift` (SI of that unknown), all others at their best value. */
export const atShifted =
  (id: string, shift: number): At =>
  <Q extends number>(value: Measured<Q>): Q => {
    // A plain loop: a law asks for every value twice for every unknown.
    for (const { unknown, slope } of value.parts)
      if (unknown.id === id) return (value.value + slope * shift) as Q;
    return value.value;
  };

/** Slopes are taken over this share of an unknown's standard uncertainty: the tangent, but for rounding. */
const STEP = 1e-3;

/**
 * A law, evaluated at its best value, with the share of every unknown: the linear law of JCGM 100
 * (5.1.2, 5.1.3), each slope taken between two points close beside the best value. `null` where the
 * law has no number.
 *
 * @example
 * import { exactly } from './measured.ts';
 * const [length, width] = [exactly(2), exactly(3)];
 * propagate((at) => at(length) * at(width), [length, width]).value // => 6
 */
export function propagate<Q extends number>(
  law: (at: At) => Q | null,
  inputs: readonly Measured[],
): Measured<Q> | null {
  const value = law(atBest);
  if (value === null) return null;
  const parts: Part[] = [];
  for (const unknown of unknownsOf(inputs)) {
    const step = unknown.u * STEP;
    if (step === 0) continue;
    const above = law(atShifted(unknown.id, step));
    const below = law(atShifted(unknown.id, -step));
    const slope = slopeOf(value, above, below, step);
    if (slope !== 0) parts.push({ unknown, slope });
  }
  return { value, parts };
}

/** The distinct unknowns behind some values, in order of first mention. */
export function unknownsOf(inputs: readonly Measured[]): readonly Unknown[] {
  const byId = new Map<string, Unknown>();
  for (const input of inputs)
    for (const part of input.parts) if (!byId.has(part.unknown.id)) byId.set(part.unknown.id, part.unknown);
  return [...byId.values()];
}

/** Where the law ends on one side, the other side alone is used. */
function slopeOf(value: number, above: number | null, below: number | null, step: number): number {
  if (above !== null && below !== null) return (above - below) / (2 * step);
  if (above !== null) return (above - value) / step;
  if (below !== null) return (value - below) / step;
  return 0;
}

import { mapAround, mapSetup } from '../setups/map-setup.ts';
import type { Setup } from '../setups/setup.ts';
import { cholesky, element, type Matrix } from '../uncertainty/matrix.ts';
import type { Measured, Part, Unknown } from '../uncertainty/measured.ts';

/**
 * What is known of some unknowns after bench readings: how far each lies from the value in the files,
 * and how well, and how much alike, they are known now.
 */
export interface Knowledge {
  readonly unknowns: readonly Unknown[];
  /** From the value in the files, in the unknown's own SI unit. */
  readonly shift: readonly number[];
  readonly covariance: Matrix;
}

/** Nothing was read: everything is as the files say. */
export const NOTHING_KNOWN: Knowledge = { unknowns: [], shift: [], covariance: [] };

/**
 * A value as it is known now. Unknowns that the readings tied together stay tied:
 *
 *     unknown i = shift i + sum over j <= i of (L i j) z j,   L Lᵀ = covariance,
 *
 * with independent z that go on under the unknown's own name (u = L jj, slope L ij / L jj), so that a
 * budget keeps its rows. What a row of such a budget stands for is the unknown given those before it.
 * Source: Cholesky factor of a covariance, as in JCGM 101:2008, C.5 (drawing from correlated normals).
 *
 * @example
 * import { measured, standardUncertainty } from '../uncertainty/measured.ts';
 * const unknown = { id: 'pin/friction', u: 0.1, shape: 'normal', origin: 'stated' };
 * const knowledge = { unknowns: [unknown], shift: [0.05], covariance: [[0.0004]] };
 * const known = withKnowledge(measured(0.25, unknown), knowledge);
 * [known.value, standardUncertainty(known)] // => [0.3, 0.02]
 */
export const withKnowledge = <Q extends number>(value: Measured<Q>, knowledge: Knowledge): Measured<Q> =>
  rewrittenBy(knowledge)(value);

/** Every value of a setup as it is known now, and of what may be taken for what belongs there. */
export function setupWithKnowledge(setup: Setup, knowledge: Knowledge): Setup {
  if (knowledge.unknowns.length === 0) return setup;
  const change = rewrittenBy(knowledge);
  const known = mapSetup(setup, change);
  return setup.around === undefined ? known : { ...known, around: mapAround(setup.around, change) };
}

/** A tie this weak is no row of a budget: it takes a million-millionth from the variance. */
const NEGLIGIBLE = 1e-6;

/** The factor is found once, however many values are rewritten. */
function rewrittenBy(knowledge: Knowledge): <Q extends number>(value: Measured<Q>) => Measured<Q> {
  const { unknowns, shift, covariance } = knowledge;
  const place = new Map(unknowns.map((unknown, n) => [unknown.id, n]));
  const L = factorOf(covariance);
  const known = unknowns.map((unknown, n): Unknown => ({ ...unknown, u: element(L, n, n), shape: 'normal' }));
  return (value) => {
    if (!value.parts.some(({ unknown }) => place.has(unknown.id))) return value;
    const slopes = new Map<number, number>();
    const others: Part[] = [];
    let moved: number = value.value;
    for (const part of value.parts) {
      const i = place.get(part.unknown.id);
      if (i === undefined) {
        others.push(part);
        continue;
      }
      moved += part.slope * (shift[i] ?? 0);
      for (let j = 0; j <= i; j += 1) {
        const own = element(L, j, j);
        const share = own === 0 ? 0 : element(L, i, j) / own;
        if (share !== 0) slopes.set(j, (slopes.get(j) ?? 0) + part.slope * share);
      }
    }
    const told = [...slopes].flatMap(([j, slope]): readonly Part[] => {
      const unknown = known[j];
      return unknown === undefined ? [] : [{ unknown, slope }];
    });
    const whole = Math.hypot(...told.map(({ unknown, slope }) => slope * unknown.u));
    const worth = told.filter(({ unknown, slope }) => Math.abs(slope) * unknown.u > NEGLIGIBLE * whole);
    return { value: moved as typeof value.value, parts: [...others, ...worth] };
  };
}

/** The lower factor, scaled first so that grams and newtons meet as equals. */
function factorOf(covariance: Matrix): Matrix {
  const u = covariance.map((row, n) => Math.sqrt(Math.max(0, row[n] ?? 0)));
  const scaled = covariance.map((row, i) =>
    row.map((each, j) => (i === j ? 1 : each / ((u[i] || 1) * (u[j] || 1)))),
  );
  const L = cholesky(scaled);
  if (L === null) throw new Error('what is known is no covariance');
  return L.map((row, i) => row.map((each) => each * (u[i] ?? 0)));
}

import { element, inverseOfPositive, type Matrix, times } from '../uncertainty/matrix.ts';
import type { BenchFit, FittedUnknown } from './bench-fit.ts';
import type { Candidate, Measurement } from './candidate.ts';
import type { Knowledge } from './knowledge.ts';
import { persistentOf } from './persistence.ts';

/** Two unknowns that the readings tie together without telling which is which. */
export interface Confused {
  readonly first: FittedUnknown;
  readonly second: FittedUnknown;
  /** Correlation of the two: near -1, only their sum is known. */
  readonly correlation: number;
  /** The measurement of this kit that would tell them apart best, and the correlation then. */
  readonly by: { readonly measurement: Measurement; readonly correlation: number } | null;
}

/** Tied more closely than this, one would be known to 0.6 of its u if the other were. Our own bound. */
const TIED = 0.8;
/** In a sum of three that are known alike two are tied by a half and less: so closely at least. Our own bound. */
const SHARED = 0.4;
/** Known to less than this share of what the files said: then it is told, whatever the other. Our own bound. */
const TOLD = 0.4;

/**
 * The pairs that the bench readings can't tell apart, most closely tied first, with what would. Where three
 * and more share a sum no two of them are tied closely: then those two count of which each would be known
 * that much better if all others were.
 */
export function confusedPairs(
  { unknowns, knowledge }: BenchFit,
  candidates: readonly Candidate[],
): readonly Confused[] {
  const withAll = tiedToTheRest(knowledge.covariance);
  const isTied = (i: number, j: number): boolean => {
    const tie = Math.abs(correlationIn(knowledge.covariance, i, j));
    return tie > TIED || (tie > SHARED && Math.min(withAll[i] ?? 0, withAll[j] ?? 0) > TIED);
  };
  return unknowns
    .flatMap((first, i) => unknowns.slice(i + 1).map((second, k) => ({ first, second, i, j: i + 1 + k })))
    .filter(
      ({ first, second, i, j }) =>
        isTied(i, j) && [first, second].every(({ u, unknown }) => u > TOLD * unknown.u),
    )
    .map(({ first, second, i, j }) => {
      const correlation = correlationIn(knowledge.covariance, i, j);
      return { first, second, correlation, by: bestOf(candidates, knowledge, i, j, correlation) };
    })
    .sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation));
}

function bestOf(
  candidates: readonly Candidate[],
  knowledge: Knowledge,
  i: number,
  j: number,
  before: number,
): Confused['by'] {
  const [best] = candidates
    .flatMap((candidate) => {
      const covariance = covarianceAfter(knowledge, candidate);
      if (covariance === null) return [];
      return [{ measurement: candidate.measurement, correlation: correlationIn(covariance, i, j) }];
    })
    .sort((a, b) => Math.abs(a.correlation) - Math.abs(b.correlation));
  return best === undefined || Math.abs(best.correlation) >= Math.abs(before) ? null : best;
}

/** Covariance once a measurement is known: P - (P h)(P h)' / (h' P h + v). Its value does not matter. */
export function covarianceAfter(knowledge: Knowledge, { law, measurement }: Candidate): Matrix | null {
  const figure = law.figureAt(new Map());
  if (figure === null) return null;
  const { parts, scatter } = persistentOf(figure, { setting: law.setting, date: '' }, 0);
  const place = new Map(knowledge.unknowns.map(({ id }, n) => [id, n]));
  const h = knowledge.unknowns.map(({ id }) => parts.find(({ unknown }) => unknown.id === id)?.slope ?? 0);
  const repeats = measurement.kind === 'reading' ? measurement.times : 1;
  const strange = parts.filter(({ unknown }) => !place.has(unknown.id));
  const noise =
    scatter.reduce(
      (sum, { part }) => sum + shareOf(part.unknown.id, repeats) * (part.slope * part.unknown.u) ** 2,
      0,
    ) + strange.reduce((sum, { slope, unknown }) => sum + (slope * unknown.u) ** 2, 0);
  const P = knowledge.covariance;
  const Ph = times(P, h);
  const variance = noise + h.reduce((sum, each, n) => sum + each * (Ph[n] ?? 0), 0);
  if (variance === 0) return null;
  return P.map((row, a) => row.map((each, b) => each - ((Ph[a] ?? 0) * (Ph[b] ?? 0)) / variance));
}

const shareOf = (id: string, repeats: number): number => (id.startsWith('reading/') ? 1 / repeats : 1);

/** Multiple correlation of each unknown with all others together: root(1 - 1 / (inverse of the correlations)ii). */
function tiedToTheRest(covariance: Matrix): readonly number[] {
  const inverse = inverseOfPositive(
    covariance.map((row, i) => row.map((_, j) => correlationIn(covariance, i, j))),
  );
  return covariance.map((_, i) =>
    inverse === null ? 0 : Math.sqrt(Math.max(0, 1 - 1 / element(inverse, i, i))),
  );
}

const correlationIn = (m: Matrix, i: number, j: number): number =>
  element(m, i, j) / Math.sqrt(element(m, i, i) * element(m, j, j));

import { effectiveFreedom } from '../uncertainty/coverage-factor.ts';
import { type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import { quantileFrom, studentShare } from '../uncertainty/probability.ts';
import type { RobustCentre } from '../uncertainty/robust.ts';

/** A figure with what a class's own scatter, and what is known of load, scale and lengths, leave open. */
export interface ClassFigure {
  readonly value: number;
  /** Standard uncertainty. */
  readonly u: number;
  /** Degrees of freedom (Welch and Satterthwaite); `null` where they don't matter. */
  readonly freedom: number | null;
  /** 19 of 20, by t. */
  readonly from: number;
  readonly to: number;
}

/** Degrees of freedom by unknown: those of the class's own scatter; all others are known for sure. */
export type Freedoms = ReadonlyMap<string, number>;

/** Unknowns of a setup's centre: the scatter of its readings, and the marks that all of them stand on. */
export const scatterOf = (mark: string): string => `class/scatter of ${mark}`;
const marksUnder = (mark: string): string => `class/graduation of ${mark}`;

/**
 * A class's centre as a value with its doubt: scatter over root of count, and rounding to a graduation,
 * which is the same for all where they all read the same mark (JCGM 100:2008, F.2.2.1).
 */
export const centreMeasured = (mark: string, { centre, u }: RobustCentre, step: number): Measured => ({
  value: centre,
  parts: [
    { unknown: { id: scatterOf(mark), u, shape: 'normal', origin: 'stated' }, slope: 1 },
    {
      unknown: { id: marksUnder(mark), u: step / Math.sqrt(12), shape: 'even', origin: 'stated' },
      slope: 1,
    },
  ],
});

export function classFigure(value: Measured, freedoms: Freedoms): ClassFigure {
  const u = standardUncertainty(value);
  const freedom = freedomOf(value, freedoms);
  const half = u * factorOf(freedom);
  return { value: value.value, u, freedom, from: value.value - half, to: value.value + half };
}

function freedomOf(value: Measured, freedoms: Freedoms): number | null {
  return effectiveFreedom(
    value.parts.map(({ unknown, slope }) => ({
      u: Math.abs(slope) * unknown.u,
      freedom: freedoms.get(unknown.id) ?? null,
    })),
  );
}

const factorOf = (freedom: number | null): number =>
  freedom === null ? 1.96 : quantileFrom((t) => studentShare(t, freedom), 0.975, 0, 2);

/**
 * How probable it is that a figure is below a limit, by t about its value.
 *
 * @example probabilityBelow({ value: 0.8, u: 0.1, freedom: 4, from: 0, to: 1 }, 1) // => 0.941942
 */
export function probabilityBelow(
  { value, u, freedom }: Omit<ClassFigure, 'from' | 'to'>,
  limit: number,
): number {
  if (u === 0) return value <= limit ? 1 : 0;
  const t = (limit - value) / u;
  return studentShare(t, freedom ?? MANY);
}

/** As good as the normal law. */
const MANY = 1e6;

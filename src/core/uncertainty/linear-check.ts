import type { Interval } from './coverage-interval.ts';

/** Whether a linear result may stand (JCGM 101:2008, clause 8). */
export interface LinearCheck {
  /** |low end of the linear interval - low end by trials|, and the same for the high ends. */
  readonly low: number;
  readonly high: number;
  /** Numerical tolerance: half a unit of the last digit that means something. */
  readonly tolerance: number;
  readonly holds: boolean;
}

/**
 * Numerical tolerance of a standard uncertainty of which so many digits mean something: u = c × 10^l with
 * c of that many digits, tolerance = 10^l / 2 (JCGM 101, 7.9.2).
 *
 * @example numericalTolerance(0.035, 2) // => 0.0005
 * @example numericalTolerance(2, 1) // => 0.5
 */
export function numericalTolerance(u: number, digits: number): number {
  if (!(u > 0)) return 0;
  // As printed: 0.0996 with two digits is 0.10, a decade higher than its first digit says.
  const [, power] = u.toExponential(digits - 1).split('e');
  return 0.5 * 10 ** (Number(power) - (digits - 1));
}

/**
 * Compares the ends of the linear interval with those by trials: the linear result holds where both lie
 * within the tolerance (JCGM 101, 8.2). The trials must be more exact than that by far; whoever calls says
 * how far they are.
 *
 * @example linearCheck({ from: 1.13, to: 1.34 }, { from: 1.08, to: 1.39 }, 0.005).holds // => false
 */
export function linearCheck(linear: Interval, trials: Interval, tolerance: number): LinearCheck {
  const low = Math.abs(linear.from - trials.from);
  const high = Math.abs(linear.to - trials.to);
  return { low, high, tolerance, holds: low <= tolerance && high <= tolerance };
}

import type { NotDefined } from '../description/not-defined.ts';
import type { WorkingLine } from '../description/working.ts';
import type { MetresPerSecondSquared, Newtons } from '../quantities/brands.ts';

/** `raise` is the direction that does the job; `lower` is letting it come back at a steady creep. */
export type Direction = 'raise' | 'lower';
/** Moving up slowly, creeping back, held still, or the peak just before it moves. */
export type WayOfReading = 'raise' | 'lower' | 'held' | 'start';

/** Which friction acts: while it moves, at the moment it starts, or none (the ideal machine). */
export type Grip = 'moving' | 'starting' | 'none';

/** What is asked of a machine: the force that holds this load at the limit of motion. */
export interface Asked {
  /** Force of the load on the machine (its weight, or the effort of the stage before). */
  readonly load: Newtons;
  readonly gravity: MetresPerSecondSquared;
  readonly direction: Direction;
  readonly grip: Grip;
}

/** A machine at the limit of motion. */
export interface Balance {
  readonly kind: 'balance';
  /**
   * Force between hook and machine, positive along the stated pull. Negative: the scale would have
   * to be on the other side (raise), or it does not come back (lower).
   */
  readonly effort: Newtons;
  /**
   * Force that the job is done against, where that is more than the load asked for: the cords that a
   * wedge parts. Advantage and textbook value are about this force.
   */
  readonly overcomes?: Newtons;
  /** Effort travel over load travel; not defined where no load is lifted. */
  readonly velocityRatio: number | NotDefined;
  /** Work given to the machine a metre of effort travel, in the direction asked; sums to 0. */
  readonly work: readonly WorkRate[];
  /** The lines that lead to `effort`, made only when asked for. */
  readonly working: () => readonly WorkingLine[];
}

/** Joules a metre of effort travel (so newtons): positive is given to the machine, negative is taken from it. */
export interface WorkRate {
  readonly by: 'effort' | 'load' | 'dead weight' | 'spring' | 'loss';
  /** Which part, as a sentence key: `lever.bar`, `lever.pivot-friction`. */
  readonly cause: string;
  readonly rate: number;
}

export const signOf = (direction: Direction): 1 | -1 => (direction === 'raise' ? 1 : -1);

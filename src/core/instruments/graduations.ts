/** The marks of an instrument: what one step is worth (SI) and the unit it is printed in. */
export interface Graduations {
  /** One step in SI: newtons for a scale, turns for a counter, metres for a ruler. */
  readonly step: number;
  /** The unit as marked on the instrument: `N`, `gf` (printed "g"), `ozf`, `turns`, `mm`. */
  readonly unit: string;
  /** One of that unit in SI. */
  readonly unitSi: number;
}

/**
 * The nearest graduation: how a person reads a pointer.
 *
 * @example nearestGraduation({ step: 0.1, unit: 'N', unitSi: 1 }, 2.44) // => 2.4000000000000004
 */
export const nearestGraduation = (marks: Graduations, value: number): number =>
  Math.round(value / marks.step) * marks.step;

/** A last bit of rounding must not push a range outward by a whole graduation. */
const SLACK = 1e-9;

/** Whole graduations outward: the range as printed never cuts what it has to hold. */
export const graduationsOutward = (
  marks: Graduations,
  from: number,
  to: number,
): { readonly from: number; readonly to: number } => ({
  from: Math.floor(from / marks.step + SLACK) * marks.step,
  to: Math.ceil(to / marks.step - SLACK) * marks.step,
});

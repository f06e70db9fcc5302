/**
 * How often each mistake is made that any machine can see, as a share of readings; those of a machine
 * stand in its folder. All are assumptions: common practice, no source. `rateFactor` of the assumptions
 * shows what hangs on them.
 */
export const BASE_RATES = {
  'zero-from-hook-down': 0.06,
  'zero-set-in-place': 0.03,
  carried: 0.02,
  'lowering-for-raising': 0.03,
  'start-for-moving': 0.03,
  'raising-for-lowering': 0.03,
  'moving-for-start': 0.03,
  'speeding-up': 0.03,
  /** All other weights of the kit together. */
  'other-weight': 0.02,
  /** All partners together. */
  swapped: 0.01,
  'in-grams': 0.03,
  'in-newtons': 0.03,
  'in-ounces': 0.01,
  'in-pounds': 0.005,
  'in-kilograms': 0.005,
  'in-millimetres': 0.01,
  'in-centimetres': 0.02,
  'in-inches': 0.01,
  'in-metres': 0.002,
  /** A scale with two columns: the unit of the other one. */
  'other-column': 0.04,
  'ten-times': 0.01,
  'a-tenth': 0.003,
  'a-hundred-times': 0.003,
  'digits-swapped': 0.005,
  'marks-of-half': 0.02,
  schoolbook: 0.01,
} as const;

export type BaseRate = keyof typeof BASE_RATES;

/** A unit that nobody thought of: as rare as the rarest. */
const RARE = 0.002;

export const rateNamed = (name: string): number =>
  Object.hasOwn(BASE_RATES, name) ? BASE_RATES[name as BaseRate] : RARE;

/** What is assumed of a class beyond the model: changed to see what hangs on it. */
export interface Assumptions {
  /** Every base rate times this: 3 and 1/3 bracket what nobody has counted. */
  readonly rateFactor?: number;
}

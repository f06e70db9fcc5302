/** More digits than any figure here has; fewer than the last bits that a sum leaves behind. */
const DIGITS = 12;

/**
 * JSON for people and scripts: two spaces, numbers without the last bits of binary sums.
 *
 * @example plainJson([0.1 + 0.2]) // => '[\n  0.3\n]'
 */
export const plainJson = (value: unknown): string =>
  JSON.stringify(
    value,
    (_key, each) => (typeof each === 'number' ? Number(each.toPrecision(DIGITS)) : each),
    2,
  );

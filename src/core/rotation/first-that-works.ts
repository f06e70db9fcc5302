/** What came of trying one number: found, or not, and then whether it is sure that there is nothing. */
export interface Tried<T> {
  readonly found: T | null;
  readonly isSure: boolean;
}

/**
 * The least number that works, where a greater one works too: tried upwards in steps that grow as long as it is not
 * sure that a number is too small, then in between. `isSure` where the number before it surely does not work.
 *
 * @example
 * leastThatWorks(3, 40, (n) => ({ found: n >= 11 ? n : null, isSure: true })) // => { found: 11, isSure: true }
 */
export function leastThatWorks<T>(least: number, most: number, trying: (n: number) => Tried<T>): Tried<T> {
  let below = least - 1;
  let isBelowSure = true;
  let step = 1;
  let best: T | null = null;
  let at = least;
  while (at <= most) {
    const { found, isSure } = trying(at);
    best = found;
    if (found !== null || at === most) {
      if (found === null) isBelowSure = isSure;
      break;
    }
    below = at;
    isBelowSure = isSure;
    step = isSure ? 1 : 2 * step;
    at = Math.min(most, at + step);
  }
  while (best !== null && at - below > 1) {
    const middle = Math.floor((below + at) / 2);
    const { found, isSure } = trying(middle);
    if (found === null) {
      below = middle;
      isBelowSure = isSure;
    } else {
      best = found;
      at = middle;
    }
  }
  return { found: best, isSure: isBelowSure };
}

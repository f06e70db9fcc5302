import { normalShare } from './probability.ts';

/** The table reaches so many deviations to either side; beyond it there is nothing left to say. */
const FAR = 6;
const STEPS = 256;
let table: Float64Array | null = null;

const shares = (): Float64Array => {
  table ??= Float64Array.from({ length: 2 * FAR * STEPS + 1 }, (_, n) => normalShare(n / STEPS - FAR));
  return table;
};

/**
 * Share of a normal law below a value, from a table with straight lines between its rows: within 5e-7, and
 * fast enough to be asked a million times.
 *
 * @example tabledNormalShare(1.96) // => 0.975002
 */
export function tabledNormalShare(z: number): number {
  const rows = shares();
  const place = (Math.min(Math.max(z, -FAR), FAR) + FAR) * STEPS;
  const n = Math.min(Math.floor(place), rows.length - 2);
  const [from, to] = [rows[n] ?? 0, rows[n + 1] ?? 1];
  return from + (place - n) * (to - from);
}

/**
 * The value that a share of a normal law lies below, from the same table.
 *
 * @example tabledNormalQuantile(0.975) // => 1.959967
 */
export function tabledNormalQuantile(share: number): number {
  const rows = shares();
  let [below, above] = [0, rows.length - 1];
  while (above - below > 1) {
    const middle = (below + above) >> 1;
    if ((rows[middle] ?? 0) < share) below = middle;
    else above = middle;
  }
  const [from, to] = [rows[below] ?? 0, rows[above] ?? 1];
  return (below + Math.min(Math.max((share - from) / (to - from), 0), 1)) / STEPS - FAR;
}

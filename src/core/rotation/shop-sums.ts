/** What whole tasks of some can add up to. */
export interface HoldSums {
  /** Of all sums of holds the greatest that is no greater than this. */
  readonly greatestUpTo: (room: number) => number;
}

/** Beyond so many sums every number counts as one. */
const MOST_SUMS = 200_000;

/** All sums of these holds, in steps of what divides them all. */
export function holdSums(holds: readonly number[]): HoldSums {
  const step = holds.reduce(greatestDivisor, 0);
  const all = holds.reduce((sum, hold) => sum + hold, 0);
  const limit = all / step;
  if (limit > MOST_SUMS) return { greatestUpTo: (room) => Math.min(all, room) };
  const isSum = new Uint8Array(limit + 1);
  isSum[0] = 1;
  let most = 0;
  for (const hold of holds) {
    const more = hold / step;
    most += more;
    for (let sum = most; sum >= more; sum -= 1) if (isSum[sum - more] === 1) isSum[sum] = 1;
  }
  const below = new Int32Array(limit + 1);
  for (let sum = 1; sum <= limit; sum += 1) below[sum] = isSum[sum] === 1 ? sum : (below[sum - 1] as number);
  return { greatestUpTo: (room) => (below[Math.min(limit, Math.floor(room / step))] as number) * step };
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}

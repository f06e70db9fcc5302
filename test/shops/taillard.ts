/**
 * Rows of lengths from two seeds, as Taillard (1993), section 2, makes his open shops: lengths evenly from 1 to 99 in
 * the order of work, then the machine of each by swaps.
 */
export function taillardRows(
  size: number,
  timeSeed: number,
  machineSeed: number,
): readonly (readonly number[])[] {
  const time = evenly(timeSeed);
  const machine = evenly(machineSeed);
  const each = Array.from({ length: size }, (_, n) => n);
  const lengths = each.map(() => each.map(() => time(1, 99)));
  return each.map((job) => {
    const order = [...each];
    for (const place of each) {
      const other = machine(place, size - 1);
      [order[place], order[other]] = [order[other] as number, order[place] as number];
    }
    return each.map((column) => (lengths[job] as number[])[order.indexOf(column)] as number);
  });
}

/** Lehmer's generator with 16807 and 2^31 - 1, without overflow. */
function evenly(seed: number): (low: number, high: number) => number {
  let state = seed;
  return (low, high) => {
    const k = Math.floor(state / 127773);
    state = 16807 * (state % 127773) - k * 2836;
    if (state < 0) state += 2147483647;
    return low + Math.floor((state / 2147483647) * (high - low + 1));
  };
}

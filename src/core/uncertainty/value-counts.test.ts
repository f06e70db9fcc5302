import { describe, expect, it } from 'vitest';
import { quantileOf, shortestInterval } from './coverage-interval.ts';
import { randomFrom } from './random.ts';
import { valueCounts } from './value-counts.ts';

/** A hundred thousand values in ten blocks: counted, and kept and sorted beside. */
function counted(law: (normal: number) => number, seed: number) {
  const random = randomFrom(seed);
  const blocks = Array.from({ length: 10 }, () =>
    Float64Array.from({ length: 10_000 }, () => law(random.normal())),
  );
  const counts = valueCounts((blocks[0] ?? new Float64Array()).slice().sort());
  for (const block of blocks) counts.add(block);
  const sorted = Float64Array.from(blocks.flatMap((block) => [...block])).sort();
  return { counts, sorted };
}

const laws = [
  ['normal', (x: number) => 5 + 2 * x, 2],
  ['skew', (x: number) => Math.exp(x), 2.16],
  ['of two heaps', (x: number) => (x > 0 ? 10 + x : x), 5],
  ['rounded', (x: number) => Math.round(x * 3) / 10, 0.3],
] as const;

describe('values counted in a fixed memory', () => {
  it.each(laws)(
    '%s: shares lie where those of all values kept do, to a thousandth of the spread',
    (_, law, u) => {
      const { counts, sorted } = counted(law, 1);
      expect(counts.count()).toBe(sorted.length);
      for (const share of [0.01, 0.025, 0.25, 0.5, 0.9, 0.975, 0.99])
        expect(Math.abs(counts.quantile(share) - quantileOf(sorted, share))).toBeLessThan(2e-3 * u);
    },
  );

  it.each(laws)('%s: the shortest interval is as short as that of all values kept', (_, law, u) => {
    const { counts, sorted } = counted(law, 2);
    const [found, kept] = [counts.shortest(0.95), shortestInterval(sorted, 0.95)];
    expect(Math.abs(found.to - found.from - (kept.to - kept.from))).toBeLessThan(4e-3 * u);
    const held = sorted.filter((each) => each >= found.from && each <= found.to).length / sorted.length;
    expect(held).toBeGreaterThan(0.949);
  });

  it('gives rounded values back to the last bit', () => {
    const { counts, sorted } = counted((x) => Math.round(x * 3) / 10, 3);
    const known = new Set(sorted);
    for (const share of [0.025, 0.3, 0.5, 0.975]) expect(known.has(counts.quantile(share))).toBe(true);
  });

  it('counts what lies beyond its grid', () => {
    const { counts } = counted((x) => x, 4);
    counts.add(Float64Array.from([-1e9, 1e9]));
    expect(counts.quantile(0)).toBe(-1e9);
    expect(counts.quantile(1)).toBe(1e9);
  });
});

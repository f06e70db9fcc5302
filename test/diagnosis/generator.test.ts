import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { atMost, fewest } from '../../bench/diagnosis/binomial.mjs';
import { drawClass } from '../../bench/diagnosis/classes.mjs';
import { chanceFrom } from '../../bench/diagnosis/mersenne.mjs';
import { askedOf, figureOf } from '../../bench/diagnosis/readings.mjs';
import { prepare } from '../../src/core/prepare.ts';
import { setupsOf } from '../../src/core/review.ts';

const bench = new URL('../../bench/diagnosis/', import.meta.url);
/** Both take the middle of the same stated numbers, so that only rounding in the files is left. */
const NEAR = 0.001;

describe('the generator of simulated classes', () => {
  it('shares no line with the program that it judges', () => {
    const files = readdirSync(bench, { recursive: true, encoding: 'utf8' }).filter((name) =>
      name.endsWith('.mjs'),
    );
    expect(files.length).toBeGreaterThan(10);
    for (const name of files) {
      const imports = [...readFileSync(new URL(name, bench), 'utf8').matchAll(/from '([^']+)'/g)];
      for (const [, from] of imports) expect(from).toMatch(/^\.{1,2}\/[a-z-]+(\/[a-z-]+)?\.mjs$/);
      for (const [, from] of imports) expect(from).not.toMatch(/src|build|dist/);
    }
  });

  it('draws from the Mersenne Twister: its ten thousandth number is the known one', () => {
    const { next } = chanceFrom(5489);
    for (let n = 1; n < 10_000; n += 1) next();
    expect(next()).toBe(4_123_659_995);
  });

  it('draws a normal law with mean 0 and standard deviation 1', () => {
    const chance = chanceFrom(7);
    const drawn = Array.from({ length: 20_000 }, () => chance.normal());
    const mean = drawn.reduce((sum, each) => sum + each, 0) / drawn.length;
    const square = drawn.reduce((sum, each) => sum + each ** 2, 0) / drawn.length;
    expect(Math.abs(mean)).toBeLessThan(4 / Math.sqrt(drawn.length));
    expect(Math.abs(square - 1)).toBeLessThan(4 * Math.sqrt(2 / drawn.length));
  });

  it('draws the same class from the same seed, and another from another', () => {
    const text = (seed: number) => JSON.stringify(drawClass(chanceFrom(seed)).readings);
    expect(text(3)).toBe(text(3));
    expect(text(3)).not.toBe(text(4));
  });

  // Machines whose middle figure the files state outright; friction of wood or of a sheave that is only
  // named has no stated middle, so those differ by choice and not by law.
  it.each(['lever', 'windlass', 'wedge', 'compound'])('reckons a %s as the program does', (machine) => {
    const seen = figuresOf(machine);
    expect(seen.length).toBeGreaterThan(10);
    for (const { ours, theirs } of seen) expect(Math.abs(ours / theirs - 1)).toBeLessThan(NEAR);
  });
});

describe('the limits of chance', () => {
  it('are those of the binomial law', () => {
    // 1 - 0.5^10, and the sum of the first two terms of (0.9 + 0.1)^10 (by hand).
    expect(atMost(9, 10, 0.5)).toBeCloseTo(1 - 0.5 ** 10, 12);
    expect(atMost(1, 10, 0.1)).toBeCloseTo(0.9 ** 10 + 10 * 0.1 * 0.9 ** 9, 12);
    const k = fewest(200, 0.9, 0.01);
    expect(atMost(k - 1, 200, 0.9)).toBeLessThanOrEqual(0.01);
    expect(atMost(k, 200, 0.9)).toBeGreaterThan(0.01);
  });
});

interface DrawnTable {
  readonly machine: string;
  readonly scale: { readonly nominal: object };
  readonly nominal: object;
  readonly setups: readonly { readonly mark: string; readonly way: string }[];
}

/** Expected figures of both, before anybody reads: the scale taken as its file says, its tube left out. */
function figuresOf(machine: string) {
  return Array.from({ length: 30 }, (_, seed) => drawClass(chanceFrom(500 + seed))).flatMap((drawn) => {
    const prepared = setupsOf(prepare(drawn.files));
    return (drawn.tables as readonly DrawnTable[])
      .filter((table) => table.machine === machine)
      .flatMap((table) =>
        table.setups.flatMap((setup) => {
          const theirs = prepared.find((each) => each.setup.mark === setup.mark)?.prediction.pull;
          if (setup.way !== 'raise' || theirs === null || theirs === undefined) return [];
          const still = { ...table.scale.nominal, shift: 0, gain: 1, offset: 0, tube: 0 };
          const asked = askedOf(table, setup);
          const { low } = figureOf(table, drawn.kit, asked, table.nominal, still);
          return [{ ours: low, theirs: theirs.value }];
        }),
      );
  });
}

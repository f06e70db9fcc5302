import { describe, expect, it } from 'vitest';
import { gaussian, rectangular, student } from './distribution.ts';
import { type BlockLaw, monteCarlo } from './monte-carlo.ts';

const sum: BlockLaw = (inputs, out) => {
  out.fill(0);
  for (const block of inputs)
    for (let n = 0; n < out.length; n += 1) out[n] = (out[n] ?? 0) + (block[n] ?? 0);
};
const each =
  (law: (x: number) => number): BlockLaw =>
  ([x], out) => {
    for (let n = 0; n < out.length; n += 1) out[n] = law(x?.[n] ?? 0);
  };
const run = (asked: Parameters<typeof monteCarlo>[0]) => {
  const found = monteCarlo(asked);
  if (found === null) throw new Error('no result');
  return found;
};

describe('distributions through a law', () => {
  it('come out the same for the same seed, and a little otherwise for another', () => {
    const asked = { inputs: [gaussian(1, 2)], law: sum, trials: 25_000 };
    expect(run({ ...asked, seed: 1 })).toEqual(run({ ...asked, seed: 1 }));
    expect(run({ ...asked, seed: 1 }).value).not.toBe(run({ ...asked, seed: 2 }).value);
  });

  it('run just as many trials as are asked for', () => {
    expect(run({ inputs: [gaussian(0, 1)], law: sum, seed: 1, trials: 12_345 }).trials).toBe(12_345);
  });

  it('run until the digits asked for stand still, and no further', () => {
    const asked = { inputs: [rectangular(0, 1)], law: each((x) => x * x), seed: 3 };
    const [rough, fine] = [1, 3].map((digits) => run({ ...asked, trials: { digits, atMost: 3_000_000 } }));
    expect(rough?.stable).toBe(true);
    expect(fine?.stable).toBe(true);
    expect(fine?.trials).toBeGreaterThan(rough?.trials ?? 0);
    // x² of an even x: mean 1/3, u = sqrt(4/45), quantiles are squares.
    expect(Math.abs((fine?.value ?? 0) - 1 / 3)).toBeLessThan(fine?.tolerance ?? 0);
    expect(Math.abs((fine?.u ?? 0) - Math.sqrt(4 / 45))).toBeLessThan(fine?.tolerance ?? 0);
    expect(Math.abs((fine?.symmetric.to ?? 0) - 0.975 ** 2)).toBeLessThan(fine?.tolerance ?? 0);
  });

  it('say so where the trials run out before the digits stand still', () => {
    const asked = { inputs: [gaussian(0, 1)], law: sum, seed: 4 };
    expect(run({ ...asked, trials: { digits: 5, atMost: 30_000 } }).stable).toBe(false);
  });

  it('keep the share of trials that give no number apart from the numbers', () => {
    const found = run({ inputs: [rectangular(-1, 3)], law: each(Math.sqrt), seed: 5, trials: 100_000 });
    expect(Math.abs(found.withoutNumber / 100_000 - 0.25)).toBeLessThan(0.01);
    expect(found.trials + found.withoutNumber).toBe(100_000);
    expect(found.symmetric.from).toBeGreaterThan(0);
  });

  it('that never give a number are none', () => {
    const none = { inputs: [gaussian(0, 1)], law: each(() => Number.NaN), seed: 6, trials: 20_000 };
    expect(monteCarlo(none)).toBeNull();
  });

  it('that are rounded to graduations have their ends on graduations, to the last bit', () => {
    const found = run({
      inputs: [gaussian(2, 0.13)],
      law: each((x) => Math.round(x / 0.1) * 0.1),
      seed: 7,
      trials: 100_000,
    });
    for (const end of [found.symmetric, found.shortest].flatMap(({ from, to }) => [from, to]))
      expect(end).toBe(Math.round(end / 0.1) * 0.1);
  });

  it('that are always the same value have no spread at all', () => {
    const found = run({ inputs: [gaussian(0, 1)], law: each(() => 4), seed: 8, trials: 20_000 });
    expect([found.value, found.u, found.symmetric]).toEqual([4, 0, { from: 4, to: 4 }]);
    expect(found.shortest).toEqual({ from: 4, to: 4 });
  });

  it('keep small spreads of large values', () => {
    const found = run({ inputs: [gaussian(1e9, 1e-3)], law: sum, seed: 9, trials: 50_000 });
    expect(Math.abs(found.u / 1e-3 - 1)).toBeLessThan(0.02);
  });

  it('with stray values far outside still have their ends right', () => {
    const found = run({ inputs: [student(0, 1, 1)], law: sum, seed: 10, trials: 400_000 });
    // t with one degree of freedom: 12.706 (JCGM 100, table G.2); five standard errors of the quantile.
    const error = (5 * Math.sqrt((0.025 * 0.975) / 400_000)) / (1 / (Math.PI * (1 + 12.706 ** 2)));
    expect(Math.abs(found.symmetric.to - 12.706)).toBeLessThan(error);
    expect(Math.abs(found.symmetric.from + 12.706)).toBeLessThan(error);
  });

  it('tell whoever waits how far they are', () => {
    const told: number[] = [];
    run({
      inputs: [gaussian(0, 1)],
      law: sum,
      seed: 11,
      trials: 25_000,
      progress: (trials) => told.push(trials),
    });
    expect(told).toEqual([10_000, 20_000, 25_000]);
  });
});

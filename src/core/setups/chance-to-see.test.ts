import { describe, expect, it } from 'vitest';
import { groupsByTrials } from '../../../test/advice/groups-by-trials.ts';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { isNotDefined } from '../description/not-defined.ts';
import { lever } from '../machines/lever/index.ts';
import { setupNamed } from '../review.ts';
import { type ChanceOptions, type ChanceToSee, chanceToSee } from './chance-to-see.ts';
import type { Setup } from './setup.ts';

const demo = demoPrepared();

const ofDemo = (mark: string): Setup => {
  const found = setupNamed(demo, mark);
  if (found === null) throw new Error(mark);
  return found.setup;
};

const chance = (first: Setup, second: Setup, options: ChanceOptions = {}): ChanceToSee => {
  const found = chanceToSee(first, second, options);
  if (isNotDefined(found)) throw new Error(found.because);
  return found;
};

/** A lever in which nothing rubs: 200 g (1.96133 N) at 0.2 m, pulled at `pull`; all known exactly. */
const plain = (mark: string, pull: number, said: Partial<Setup> = {}): Setup =>
  setupOf(lever, leverStation({ fulcrum: 0, load: 0.2, pull }), { mark, ...said });

const reader = { scatter: 0.03, handLimit: null };

describe('the chance that a group sees what partner setups show', () => {
  it('is certain where nothing scatters', () => {
    // 1.96133 x 0.2/0.4 = 0.980665 reads 1.0; 1.96133 x 0.2/0.2 = 1.96133 reads 2.0: both by hand.
    const seen = chance(plain('long', 0.4), plain('short', 0.2), { copies: 5, schoolbook: 0.5 });
    expect(seen).toMatchObject({ more: 'short', less: 'long', ratio: 2 });
    expect(seen.once).toEqual({ order: 1, ratio: 1, schoolbook: 1 });
    expect(seen.repeats).toEqual({ order: 1, ratio: 1 });
  });

  it('shows no order where both are read on the same graduation', () => {
    // 0.980665 and 0.957 N: both are read as 1.0 N, however often.
    const seen = chance(plain('a', 0.4), plain('b', 0.41), { copies: 5 });
    expect(seen.once.order).toBe(0);
    expect(seen.repeats.order).toMatchObject({ because: 'chance.apparatus-decides' });
  });

  it('is the sum over graduations that can be written down by hand', () => {
    // Shown 1.96133 and 1.634442 N, graduations of 1 N, scatter 0.1 of each. Shares from tables of the
    // normal law: P(first reads 2) = Phi(2.749) - Phi(-2.353) = 0.98770, P(1) = 0.00931, P(3) = 0.00299;
    // second P(2) = Phi(5.295) - Phi(-0.8226) = 0.79463, P(1) = 0.20537.
    // P(order) = P(3) x 1 + P(2) x P(second 1) = 0.00299 + 0.98770 x 0.20537 = 0.20583.
    const scale = scaleOf({ range: 10, graduation: 1 });
    const said = { scale, reader: { scatter: 0.1, handLimit: null } };
    expect(chance(plain('a', 0.2, said), plain('b', 0.24, said), { copies: 3 }).once.order).toBeCloseTo(
      0.20583,
      4,
    );
  });

  it.each([
    ['L1', 'L2'],
    ['S1', 'S2'],
    ['S3', 'S1'],
    ['T1', 'T2'],
    ['C1', 'C2'],
    ['D1', 'D2'],
  ])('is what groups one by one see at setups %s and %s', (first, second) => {
    const seen = chance(ofDemo(first), ofDemo(second));
    const trials = groupsByTrials(ofDemo(seen.more), ofDemo(seen.less), {
      ratio: seen.ratio,
      tolerance: seen.wanted.ratio,
      trials: 4000,
      seed: 11,
    });
    // Four standard deviations of a share of 4000 groups, and as much again for the copies.
    expect(Math.abs(seen.once.order - trials.order)).toBeLessThan(0.05);
    expect(Math.abs(seen.once.ratio - trials.ratio)).toBeLessThan(0.05);
  });

  it('tells how many readings each group needs, and trials of so many show it', () => {
    const [a, b] = [plain('a', 0.3, { reader }), plain('b', 0.33, { reader })];
    const seen = chance(a, b, { copies: 3 });
    const needed = seen.repeats.order;
    if (isNotDefined(needed)) throw new Error('no number');
    expect(needed).toBeGreaterThan(1);
    const by = (repeats: number) =>
      groupsByTrials(a, b, { ratio: seen.ratio, tolerance: 0.15, trials: 20_000, seed: 5, repeats }).order;
    expect(by(needed)).toBeGreaterThan(0.94);
    expect(by(needed - 1)).toBeLessThan(0.96);
  });

  it('is the same whichever of the two is named first, and for the same seed', () => {
    const one = chance(ofDemo('S1'), ofDemo('S3'), { copies: 60 });
    expect(chance(ofDemo('S3'), ofDemo('S1'), { copies: 60 })).toEqual(one);
    expect(chance(ofDemo('S1'), ofDemo('S3'), { copies: 60, seed: 2 })).not.toEqual(one);
  });

  it('grows with the tolerance and with finer marks', () => {
    const coarse = { reader, scale: scaleOf({ range: 5, graduation: 0.25 }) };
    const fine = { reader, scale: scaleOf({ range: 5, graduation: 0.05 }) };
    const at = (said: Partial<Setup>, ratio: number) =>
      chance(plain('a', 0.3, said), plain('b', 0.36, said), { copies: 3, wanted: { ratio, groups: 0.95 } })
        .once;
    expect(at(fine, 0.15).ratio).toBeGreaterThan(at(fine, 0.05).ratio);
    expect(at(fine, 0.15).order).toBeGreaterThan(at(coarse, 0.15).order);
  });

  it.each<[string, Partial<Setup>]>([
    ['chance.felt', { watched: 'ease' }],
    ['chance.no scale', { scale: null }],
    ['chance.on its stop', { scale: scaleOf({ stop: 3 }) }],
    ['chance.off the scale', { scale: scaleOf({ range: 0.5, graduation: 0.05 }) }],
    ['chance.moves under the scale', { hang: 'upside down', scale: scaleOf({ grams: 400 }) }],
  ])('is not defined, with the reason %s', (because, said) => {
    const seen = chanceToSee(plain('a', 0.4, said), plain('b', 0.2, said));
    expect(seen).toMatchObject({ kind: 'not-defined', because });
  });

  it('is not defined between a pull and a count, nor where both pulls are the same', () => {
    expect(chanceToSee(plain('a', 0.4), plain('b', 0.4))).toMatchObject({ because: 'chance.same' });
    expect(chanceToSee(plain('a', 0.4), ofDemo('P1'))).toMatchObject({ because: 'chance.unlike' });
  });
});

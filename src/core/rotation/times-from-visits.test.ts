import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { visitTimes } from '../../../test/reference/times-from-visits.ts';
import { time } from '../../../test/rotations.ts';
import { seconds } from '../quantities/brands.ts';
import { standardUncertainty } from '../uncertainty/measured.ts';
import { studentShare } from '../uncertainty/probability.ts';
import { type PastTime, timeFromVisits } from './times-from-visits.ts';

const past = (...stays: readonly (readonly [string, number])[]): readonly PastTime[] =>
  stays.map(([date, lasted]) => ({ date, lasted: seconds(lasted) }));

describe('the time of a table from past visits', () => {
  for (const each of visitTimes)
    it(`has the law that prior and likelihood give when summed by scipy: ${each.name}`, () => {
      const { law, setAside } = timeFromVisits(time(each.value, each.u), past(...each.past));
      expect(setAside).toEqual([]);
      for (const [n, share] of each.shares.entries()) {
        const z = ((each.quantiles[n] as number) - law.centre) / law.scale;
        // The grid of the script holds three digits beyond what a second is.
        expect(studentShare(z, law.freedom)).toBeCloseTo(share, 4);
      }
    });

  it('is the time of the activity where there were no visits', () => {
    const expected = time(360, 45);
    expect(timeFromVisits(expected, []).time).toBe(expected);
  });

  it('one visit moves it by less than a quarter of the way, sixty visits move it nearly there', () => {
    const one = timeFromVisits(time(360, 45), past(['a', 420])).time.value;
    expect(one).toBeGreaterThan(360);
    expect(one).toBeLessThan(375);
    const sixty = Array.from({ length: 60 }, (_, n) => [`${n}`, 420 + 40 * ((n % 3) - 1)] as const);
    expect(timeFromVisits(time(360, 45), past(...sixty)).time.value).toBeGreaterThan(412);
  });

  it('six groups of one day say less than six days', () => {
    const times = [400, 460, 380, 430, 450, 420];
    const oneDay = timeFromVisits(time(360, 60), past(...times.map((t) => ['a', t] as const)));
    const sixDays = timeFromVisits(time(360, 60), past(...times.map((t, n) => [`${n}`, t] as const)));
    expect(oneDay.time.value).toBeLessThan(sixDays.time.value);
  });

  it('a fire drill is set aside and told, and leaves the time as if it had not been', () => {
    const usual = past(['a', 350], ['a', 380], ['b', 340], ['c', 370], ['c', 400]);
    const drill = { date: 'b', lasted: seconds(1500) };
    const found = timeFromVisits(time(360, 45), [...usual.slice(0, 2), drill, ...usual.slice(2)]);
    expect(found.setAside).toEqual([2]);
    expect(found.used).toBe(5);
    expect(found.time).toEqual(timeFromVisits(time(360, 45), usual).time);
  });

  it('a whole day on which everything took twice as long is set aside where two others were as usual', () => {
    const day = (date: string, by: number) =>
      [350, 380, 340, 370].map((each): PastTime => ({ date, lasted: seconds(each * by) }));
    const found = timeFromVisits(time(360, 36), [
      ...day('a', 1),
      ...day('b', 2.4),
      ...day('c', 1.02),
      ...day('d', 0.97),
    ]);
    expect(found.setAside).toEqual([4, 5, 6, 7]);
    expect(found.time.value).toBeLessThan(370);
  });

  it('visits that agree with each other and not with the activity are believed, not set aside', () => {
    const twice = Array.from({ length: 8 }, (_, n) => [`${n}`, 700 + 20 * (n % 3)] as const);
    const found = timeFromVisits(time(360, 45), past(...twice));
    expect(found.setAside).toEqual([]);
    expect(found.time.value).toBeGreaterThan(500);
  });

  it('a time of nothing is no time', () => {
    expect(timeFromVisits(time(360, 45), past(['a', 0], ['a', 365])).setAside).toEqual([0]);
  });

  it('lies between the activity and the visits, and no outlier of any size moves it further than a minute', () => {
    const stays = fc.array(
      fc.tuple(fc.constantFrom('a', 'b', 'c', 'd'), fc.integer({ min: 300, max: 420 })),
      {
        minLength: 3,
        maxLength: 20,
      },
    );
    fc.assert(
      fc.property(stays, fc.integer({ min: 3000, max: 1e6 }), (some, drill) => {
        const expected = time(360, 45);
        const plain = timeFromVisits(expected, past(...some));
        const lasted = [360, ...some.map(([, t]) => t)];
        expect(plain.time.value).toBeGreaterThanOrEqual(Math.min(...lasted));
        expect(plain.time.value).toBeLessThanOrEqual(Math.max(...lasted));
        expect(standardUncertainty(plain.time)).toBeGreaterThan(0);
        const drilled = timeFromVisits(expected, past(...some, ['a', drill]));
        expect(drilled.setAside).toContain(some.length);
        expect(Math.abs(drilled.time.value - plain.time.value)).toBeLessThanOrEqual(60);
      }),
    );
  });
});

import { describe, expect, it } from 'vitest';
import { type PeriodChanceCase, periodChances } from '../../../test/reference/period-chance.ts';
import { groups, rotation, stay, table, time, timetable } from '../../../test/rotations.ts';
import { seconds } from '../quantities/brands.ts';
import { doneWithin, logNormalOf } from './chance-times.ts';
import { type ChanceAsked, chanceToFinish } from './chance-to-finish.ts';
import type { Rotation } from './rotation.ts';
import type { Timetable } from './timetable.ts';

const asked: ChanceAsked = { seed: 5 };
const alone = { table: 0, group: 0, rest: 1 };

function ofReference(each: PeriodChanceCase): [Rotation, Timetable, ChanceAsked] {
  const { adults, split, signal } = each;
  const stays = each.stays.map((one) => ({ ...one, from: seconds(one.from), to: seconds(one.to) }));
  return [
    rotation({
      groups: each.groups.map(({ label, arrives }) => ({ label, pupils: null, arrives: seconds(arrives) })),
      tables: each.tables.map(({ mark, run, runU, reset, resetU, copies }) =>
        table(mark, time(run, runU), { reset: time(reset, resetU), copies, needsAdult: mark in adults }),
      ),
      adults: [...new Set(Object.values(adults))].map((label) => ({ label, at: null })),
      walk: seconds(each.walk),
      begins: seconds(each.begins),
      bell: seconds(each.bell),
      breaks: each.breaks.map(([from, to]) => ({ from: seconds(from), to: seconds(to) })),
      way: each.way,
    }),
    timetable(stays, {
      way: each.way,
      rounds:
        each.way === 'free'
          ? null
          : each.rounds.map(([from, to]) => ({ from: seconds(from), to: seconds(to) })),
      stands: stays.flatMap(({ adult, table: mark, copy, from, to }) =>
        adult === null ? [] : [{ adult, table: mark, copy, from, to }],
      ),
    }),
    signal === null ? { seed: 77, split } : { seed: 77, split, signal },
  ];
}

/** Both simulations err; four standard errors of their difference are passed once in 16 000 figures. */
const within = (got: number, want: number, u: number): void =>
  expect(Math.abs(got - want)).toBeLessThanOrEqual(4 * u);
const shareU = (p: number, n: number, m: number): number => Math.sqrt(p * (1 - p) * (1 / n + 1 / m));

describe('a second simulation, by numpy, event by event', () => {
  for (const each of periodChances)
    it(`finds the same chance, ends, waits and idle tables for ${each.name}`, () => {
      const { expected } = each;
      const found = chanceToFinish(...ofReference(each));
      const [n, m] = [found.trials, expected.trials];
      within(found.allDone.share, expected.allDone, shareU(expected.allDone, n, m));
      for (const [k, share] of [0.025, 0.5, 0.975].entries()) {
        const got = [found.ends.from, found.ends.middle, found.ends.to][k] as number;
        const u = shareU(share, n, m) / (expected.endsDensity[k] as number);
        // Ours is rounded to the second.
        expect(Math.abs(got - (expected.ends[k] as number))).toBeLessThanOrEqual(4 * u + 0.5);
      }
      const more = Math.sqrt(1 + m / n);
      within(found.unfinished, expected.unfinished, expected.unfinishedU * more);
      for (const [k, { expected: wait }] of found.waits.entries())
        expect(Math.abs(wait - (expected.waits[k] as number))).toBeLessThanOrEqual(
          4 * (expected.waitsU[k] as number) * more + 0.5,
        );
      expect(found.idle.length).toBe(expected.idle.length);
      for (const [k, { expected: idle }] of found.idle.entries())
        expect(Math.abs(idle - (expected.idle[k] as number))).toBeLessThanOrEqual(
          4 * (expected.idleU[k] as number) * more + 0.5,
        );
      expect(found.signals.length).toBe(expected.signalsDone.length);
      for (const [k, { allDone }] of found.signals.entries()) {
        const want = expected.signalsDone[k] as number;
        within(allDone.share, want, shareU(want, n, m));
      }
    });
});

describe('chances that can be written down', () => {
  it('one group at one table is done by the bell as often as its log-normal time says', () => {
    for (const bell of [300, 340, 420]) {
      const run = time(360, 60);
      const found = chanceToFinish(
        rotation({ groups: groups('A'), tables: [table('1', run)], bell: seconds(bell) }),
        timetable([stay('A', '1', 0, 360)]),
        asked,
      );
      const exact = doneWithin(logNormalOf(run), bell);
      within(found.allDone.share, exact, Math.sqrt((exact * (1 - exact)) / found.trials));
    }
  });

  it('a signal finds all done with the product of the chances of each, where nothing makes times hang together', () => {
    const runs = [time(300, 40), time(320, 30), time(280, 60)];
    const found = chanceToFinish(
      rotation({
        way: 'signal',
        groups: groups('A', 'B', 'C'),
        tables: runs.map((run, n) => table(`${n + 1}`, run)),
      }),
      timetable(
        ['A', 'B', 'C'].map((group, n) => stay(group, `${n + 1}`, 0, 360, 1)),
        { way: 'signal', rounds: [{ from: seconds(0), to: seconds(360) }] },
      ),
      { seed: 5, split: alone },
    );
    const each = runs.map((run) => doneWithin(logNormalOf(run), 360));
    const product = each.reduce((a, b) => a * b, 1);
    const u = Math.sqrt((product * (1 - product)) / found.trials);
    within(found.signals[0]?.allDone.share ?? -1, product, u);
    within(found.allDone.share, product, u);
    within(found.unfinished, 3 - each.reduce((a, b) => a + b, 0), 0.8 / Math.sqrt(found.trials));
  });

  it('two groups one after the other at a table that is slow today are both slow: exact where nothing else differs', () => {
    const run = time(300, 60);
    const found = chanceToFinish(
      rotation({ groups: groups('A', 'B'), tables: [table('1', run)], bell: seconds(700) }),
      timetable([stay('A', '1', 0, 300), stay('B', '1', 300, 600)]),
      { seed: 5, split: { table: 1, group: 0, rest: 0 } },
    );
    const exact = doneWithin(logNormalOf(run), 350);
    within(found.allDone.share, exact, Math.sqrt((exact * (1 - exact)) / found.trials));
  });

  it('times without doubt give the plan back, round a break and after a late bus', () => {
    const found = chanceToFinish(
      rotation({
        groups: [
          { label: 'A', pupils: 4, arrives: seconds(0) },
          { label: 'B', pupils: 4, arrives: seconds(100) },
        ],
        tables: [table('1', time(300, 0), { reset: time(30, 0) }), table('2', time(200, 0))],
        walk: seconds(20),
        breaks: [{ from: seconds(500), to: seconds(600) }],
        bell: seconds(900),
      }),
      timetable([
        stay('A', '1', 0, 300),
        stay('B', '2', 100, 300),
        stay('A', '2', 600, 800),
        stay('B', '1', 600, 900),
      ]),
      asked,
    );
    expect(found.allDone.share).toBe(1);
    expect(found.ends).toEqual({ from: 900, middle: 900, to: 900 });
    expect(found.waits).toEqual([
      { group: 'A', expected: 180 },
      { group: 'B', expected: 180 },
    ]);
    expect(found.idle).toEqual([
      { table: '1', copy: 1, expected: 170 },
      { table: '2', copy: 1, expected: 300 },
    ]);
  });

  it('a group that has to leave and a table that is closed cut a stay off for good', () => {
    const ask = (wish: object) =>
      chanceToFinish(
        rotation({
          groups: groups('A'),
          tables: [table('1', time(300, 0))],
          wishes: [
            { id: 'w', path: null, from: seconds(200), to: null, ...wish } as Rotation['wishes'][number],
          ],
        }),
        timetable([stay('A', '1', 0, 300)]),
        asked,
      );
    for (const wish of [
      { kind: 'away', group: 'A' },
      { kind: 'closed', table: '1' },
    ]) {
      const found = ask(wish);
      expect(found.allDone.share).toBe(0);
      expect(found.unfinished).toBe(1);
      expect(found.ends.middle).toBe(200);
    }
    expect(ask({ kind: 'away', group: 'B' }).allDone.share).toBe(1);
  });

  it('groups that are to be apart wait for each other', () => {
    const two = {
      groups: groups('A', 'B'),
      tables: [table('1', time(300, 30), { beside: ['2'] }), table('2', time(300, 30))],
    };
    const plan = timetable([stay('A', '1', 0, 300), stay('B', '2', 300, 600)]);
    const wish = { id: 'w', path: null, kind: 'apart', groups: ['A', 'B'] } as const;
    expect(chanceToFinish(rotation({ ...two, wishes: [wish] }), plan, asked).ends.middle).toBeGreaterThan(
      590,
    );
    expect(chanceToFinish(rotation(two), plan, asked).ends.middle).toBeLessThan(350);
  });

  it('in the middle of the period what is over stays as it was, and who is at a table goes on from there', () => {
    const run = time(300, 60);
    const shown = (now: number) =>
      chanceToFinish(
        rotation({ groups: groups('A', 'B'), tables: [table('1', run)], bell: seconds(800) }),
        timetable([stay('A', '1', 0, 250), stay('B', '1', 300, 700)]),
        { seed: 5, split: alone, now: seconds(now) },
      );
    // B began at 300: it is done by 800 as often as a time of at most 500 comes up, whatever A's was.
    const exact = doneWithin(logNormalOf(run), 500);
    const inIt = shown(400);
    within(inIt.allDone.share, exact, Math.sqrt((exact * (1 - exact)) / inIt.trials));
    expect(inIt.ends.from).toBeGreaterThanOrEqual(400);
    expect(shown(690).ends.from).toBe(690);
    expect(shown(700).ends).toMatchObject({ from: 700, middle: 700, to: 700 });
    expect(shown(700).allDone.share).toBe(1);
    expect(shown(299).ends.from).toBeGreaterThanOrEqual(299);
  });

  it('a round whose signal was given goes on from there, and the next begins no sooner than now', () => {
    const run = time(300, 1);
    const shown = (now: number | null) =>
      chanceToFinish(
        rotation({
          way: 'signal',
          groups: groups('A', 'B'),
          tables: [table('1', run), table('2', run)],
          walk: seconds(0),
        }),
        timetable(
          [
            stay('A', '1', 0, 300, 1),
            stay('B', '2', 0, 300, 1),
            stay('A', '2', 300, 600, 2),
            stay('B', '1', 300, 600, 2),
          ],
          {
            way: 'signal',
            rounds: [
              { from: seconds(0), to: seconds(300) },
              { from: seconds(300), to: seconds(600) },
            ],
          },
        ),
        { seed: 5, split: alone, signal: 'slowest', ...(now === null ? {} : { now: seconds(now) }) },
      ).ends.middle;
    expect(shown(0)).toBe(shown(null));
    expect(Math.abs(shown(100) - shown(0))).toBeLessThanOrEqual(2);
    expect(shown(590)).toBeGreaterThanOrEqual(598);
  });
});

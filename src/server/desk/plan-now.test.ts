import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  asGroup,
  asTeacher,
  demoAtDesk,
  ofGroup,
  START,
  shownAfter,
  storedEntries,
  tableOf,
  teacher,
} from '../../../test/server/demo-desk.ts';
import { timetableOf } from '../../documents/text/period-words.ts';
import type { Happening, Seat } from '../../store/entry.ts';

const demo = demoAtDesk();
const timetable = demo.planner === null ? null : timetableOf(demo.planner.first);
const rounds = timetable?.rounds ?? [];
const GROUPS = [...'ABCDEF'];
const begun: readonly [number, Seat, Happening] = [0, teacher, { kind: 'begun' }];
const signal = (round: number, at = rounds[round - 1]?.to ?? 0): readonly [number, Seat, Happening] => [
  at,
  teacher,
  { kind: 'signal', round },
];
const routes = (entries: Parameters<typeof storedEntries>[0], now = START) => {
  const shown = shownAfter(demo, storedEntries(entries), now);
  return GROUPS.map((label) => asGroup(shown, label).route.stops);
};

test('before it begins nobody is anywhere, and everybody knows the whole way', () => {
  const all = routes([]);
  for (const stops of all) expect(stops.map(({ state }) => state)).toEqual(stops.map(() => 'next'));
  expect(all.map((stops) => stops.length)).toEqual(
    GROUPS.map(() => timetable?.stays.filter(({ group }) => group === 'A').length),
  );
});

test('a signal moves every group on by one table, and the next is due as long after it as planned', () => {
  const clockAfter = (entries: Parameters<typeof storedEntries>[0]) =>
    asTeacher(shownAfter(demo, storedEntries(entries))).clock;
  for (const stops of routes([begun])) expect(stops[0]?.state).toBe('here');
  expect(clockAfter([begun]).round).toEqual({
    number: 1,
    of: rounds.length,
    due: START + 1000 * (rounds[0]?.to ?? 0),
  });
  const late = (rounds[0]?.to ?? 0) + 45;
  const moved = [begun, signal(1, late)];
  for (const stops of routes(moved))
    expect(stops.map(({ state }) => state).slice(0, 2)).toEqual(['done', 'here']);
  const lasts = (rounds[1]?.to ?? 0) - (rounds[0]?.to ?? 0);
  expect(clockAfter(moved).round).toMatchObject({ number: 2, due: START + 1000 * (late + lasts) });
  const paused = [
    ...moved,
    [late + 10, teacher, { kind: 'paused' }],
    [late + 70, teacher, { kind: 'resumed' }],
  ] as const;
  expect(clockAfter(paused).round?.due).toBe(START + 1000 * (late + lasts + 60));
  expect(clockAfter(paused)).toMatchObject({ paused: 60_000, pausedSince: null });
});

test('after the last signal no round runs any more', () => {
  const all = [begun, ...rounds.map((_, n) => signal(n + 1))];
  expect(asTeacher(shownAfter(demo, storedEntries(all))).clock.round).toBeNull();
  for (const stops of routes(all)) expect(stops.map(({ state }) => state)).toEqual(stops.map(() => 'done'));
});

test('a group that says where it is is shown there, also off its way', () => {
  const entries = [begun, [400, ofGroup('A'), { kind: 'arrived', group: 'A', table: '3' }]] as const;
  const stops = routes(entries)[0] ?? [];
  expect(stops.filter(({ state }) => state === 'here').map(({ table }) => table)).toEqual(['3']);
  const shown = asTeacher(shownAfter(demo, storedEntries(entries)));
  expect(shown.groups[0]).toMatchObject({ label: 'A', table: '3', since: START + 400_000 });
});

test('a table closed in the middle is left out of every way ahead, what was done stays done, and it is said whose way is new', () => {
  const closed = '3';
  const at = (rounds[0]?.to ?? 0) + 60;
  const before = routes([begun, signal(1)]);
  const entries = [begun, signal(1), [at, teacher, { kind: 'closed', table: closed }]] as const;
  const after = routes(entries);
  for (const [n, stops] of after.entries()) {
    const tables = stops.map(({ table }) => table);
    expect(new Set(tables).size).toBe(tables.length);
    expect(stops[0]).toMatchObject({ table: before[n]?.[0]?.table, state: 'done' });
    expect(stops.filter(({ state }) => state === 'next').map(({ table }) => table)).not.toContain(closed);
    expect(stops.filter(({ state }) => state === 'here').length).toBe(
      before[n]?.[1]?.table === closed ? 0 : 1,
    );
  }
  // Nobody stands where another one stands.
  for (const one of after.flat())
    for (const other of after.flat())
      if (one !== other && one.table === other.table)
        expect(one.from < other.to && other.from < one.to).toBe(false);
  const shown = asTeacher(shownAfter(demo, storedEntries(entries)));
  expect(tableOf(shown, closed).isClosed).toBe(true);
  expect(shown.plan.remarks.some((each) => /^Group [A-F] now goes /.test(each))).toBe(true);
  expect(shown.plan.chart).toMatch(/^<svg /);
  const opened = [...entries, [at + 30, teacher, { kind: 'opened', table: closed }]] as const;
  expect(tableOf(asTeacher(shownAfter(demo, storedEntries(opened))), closed).isClosed).toBe(false);
}, 30_000);

test('a group that is late before it begins comes later, and the plan says so', () => {
  const entries = [[-60, teacher, { kind: 'late', group: 'C', minutes: 15 }], begun] as const;
  const stops = routes(entries)[2] ?? [];
  expect(stops[0]?.from).toBeGreaterThanOrEqual(15 * 60_000);
}, 30_000);

test('how long a group stays over its time is told in whole minutes', () => {
  const over = (rounds[0]?.to ?? 0) + 150;
  const shown = asTeacher(shownAfter(demo, storedEntries([begun]), START + 1000 * over));
  const behind = shown.groups.map((group) => group.behind);
  expect(Math.max(...behind)).toBeGreaterThanOrEqual(120_000);
  expect(behind.every((each) => each % 60_000 === 0)).toBe(true);
});

/** Each run plans the rest of a period several times. */
const RUNS = 5;

/** Whatever a teacher decides and groups say within the first half hour. */
const anything = fc.array(
  fc.tuple(
    fc.integer({ min: -30, max: 1800 }),
    fc.oneof(
      fc.constantFrom(...'1234567').map((table): Happening => ({ kind: 'closed', table })),
      fc.constantFrom(...'1234567').map((table): Happening => ({ kind: 'opened', table })),
      fc.record({
        kind: fc.constant('late' as const),
        group: fc.constantFrom(...GROUPS),
        minutes: fc.nat({ max: 25 }),
      }),
      fc.record({ kind: fc.constant('signal' as const), round: fc.integer({ min: 1, max: 7 }) }),
      fc.record({
        kind: fc.constantFrom('arrived' as const, 'done' as const),
        group: fc.constantFrom(...GROUPS),
        table: fc.constantFrom(...'1234567'),
      }),
      fc.constantFrom<Happening>({ kind: 'paused' }, { kind: 'resumed' }),
    ),
  ),
  { minLength: 2, maxLength: 6 },
);

test('whatever is decided and said, nobody is sent to a closed table or twice to one, and the plan is never at fault', () => {
  fc.assert(
    fc.property(anything, (told) => {
      const ordered = [...told].sort(([a], [b]) => a - b);
      const entries = storedEntries([begun, ...ordered.map(([at, what]) => [at, teacher, what] as const)]);
      const shown = shownAfter(demo, entries, START + 1_900_000);
      const seen = asTeacher(shown);
      expect(seen.trouble).toEqual([]);
      const closed = new Set<string>();
      for (const { entry } of entries)
        if (entry.what.kind === 'closed') closed.add(entry.what.table);
        else if (entry.what.kind === 'opened') closed.delete(entry.what.table);
      const isStuck = seen.plan.remarks.some((each) => each.startsWith('No new plan'));
      for (const label of GROUPS) {
        const ahead = asGroup(shown, label)
          .route.stops.filter(({ state }) => state !== 'done')
          .map(({ table }) => table);
        expect(new Set(ahead).size).toBe(ahead.length);
        const said = new Set(
          ordered.flatMap(([, what]) =>
            what.kind === 'arrived' && what.group === label ? [what.table] : [],
          ),
        );
        if (!isStuck) for (const table of ahead) expect(closed.has(table) && !said.has(table)).toBe(false);
      }
    }),
    { numRuns: RUNS, seed: 6 },
  );
}, 120_000);

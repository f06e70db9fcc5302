import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  asGroup,
  asHelper,
  asTeacher,
  demoAtDesk,
  expectedFigures,
  inGroups,
  ofGroup,
  reading,
  START,
  shownAfter,
  storedEntries,
  tableOf,
  teacher,
} from '../../../test/server/demo-desk.ts';
import { review } from '../../core/review.ts';
import { judgedRemarks } from '../../documents/text/review-table.ts';
import type { Happening, Seat, Stored } from '../../store/entry.ts';
import { partsOfVisit, type ShownParts } from './parts-of-visit.ts';

const demo = demoAtDesk();
const figures = expectedFigures(demo);
const plain = (shown: ShownParts): unknown => JSON.parse(JSON.stringify([...shown]));

/** Readings of the demo's six groups, some of them ten times too much, with corrections, voids and all else. */
const happenings = fc
  .array(
    fc.record({
      group: fc.constantFrom(...'ABCDEF'),
      at: fc.nat({ max: figures.length - 1 }),
      slip: fc.constantFrom(1, 1, 1, 10, 0.5),
      after: fc.constantFrom('nothing', 'correction', 'void', 'arrived', 'done'),
    }),
    { minLength: 1, maxLength: 16 },
  )
  .map((all) => {
    const told: (readonly [number, Seat, Happening])[] = [[0, teacher, { kind: 'begun' }]];
    for (const [n, { group, at, slip, after }] of all.entries()) {
      const figure = figures[at];
      if (figure === undefined) continue;
      const { setup, table, expected } = figure;
      const of = `e${told.length + 1}`;
      const seat = ofGroup(group);
      told.push([300 + 10 * n, seat, reading(group, setup, String(Number((expected * slip).toFixed(2))))]);
      if (after === 'correction')
        told.push([301 + 10 * n, seat, { kind: 'correction', of, written: expected.toFixed(1) }]);
      if (after === 'void') told.push([302 + 10 * n, teacher, { kind: 'void', of }]);
      if (after === 'arrived' || after === 'done')
        told.push([303 + 10 * n, seat, { kind: after, group, table }]);
    }
    return storedEntries(told);
  });

test('the same entries give the same parts, in whatever order and in however many pieces they came', () => {
  fc.assert(
    fc.property(
      happenings,
      fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })),
      (entries, chance) => {
        const order = entries.map((each) => ({ each, at: chance.next().value ?? 0 }));
        const mixed = order.sort((a, b) => a.at - b.at).map(({ each }) => each);
        const whole = plain(shownAfter(demo, entries));
        const bit = partsOfVisit(demo);
        for (let n = 1; n < mixed.length; n += 3) bit(mixed.slice(0, n), START);
        expect(plain(bit(mixed, START))).toEqual(whole);
      },
    ),
    { numRuns: 12, seed: 6 },
  );
});

test("no part of a group changes by what another group reads, whatever that does to the teacher's page", () => {
  fc.assert(
    fc.property(happenings, fc.constantFrom(...'ABCDEF'), (entries, label) => {
      const isOwn = ({ entry: { seat } }: Stored): boolean => seat.kind !== 'group' || seat.group === label;
      const ids = new Set(entries.filter(isOwn).map(({ entry }) => entry.id));
      const alone = entries.filter((each) => {
        const { what } = each.entry;
        return isOwn(each) && (what.kind !== 'void' || ids.has(what.of));
      });
      expect(asGroup(shownAfter(demo, alone), label)).toEqual(asGroup(shownAfter(demo, entries), label));
    }),
    { numRuns: 12, seed: 6 },
  );
});

test('the teacher reads the verdict, the causes and the words that a review of the same readings prints', () => {
  const rows = figures.flatMap(({ setup, expected }, n) =>
    [...'ABCDEF'].map(
      (group, g) => [group, setup, (expected * ((n + g) % 5 === 0 ? 10 : 1)).toFixed(2)] as const,
    ),
  );
  const shown = asTeacher(
    shownAfter(demo, storedEntries(rows.map(([g, s, w], n) => [n, ofGroup(g), reading(g, s, w), 'one']))),
  );
  const csv = ['group,setup,reading', ...rows.map((row) => row.join(','))].join('\n');
  const found = review(demo.prepared, { name: 'r.csv', text: csv });
  const setups = found.judged.map(({ at }) => at);
  const words: Readonly<Record<string, string>> = {
    good: 'good',
    'a little off': 'little-off',
    'look again': 'look-again',
  };
  const expected = found.judged.map((judged) => [
    judged.judgement.reading.group,
    judged.at.setup.mark,
    words[judged.judgement.verdict],
    judgedRemarks('en', judged, setups),
  ]);
  expect(expected.some(([, , verdict]) => verdict === 'look-again')).toBe(true);
  const told = rows.map(([group, setup]) => {
    const at = figures.find((each) => each.setup === setup);
    const own = tableOf(shown, at?.table ?? '').setups.find(({ mark }) => mark === setup);
    const each = own?.readings.find((one) => one.group === group);
    return [group, setup, each?.verdict, each?.remarks];
  });
  expect(told).toEqual(expected);
});

const [first] = figures;
const wrong = String(Number(((first?.expected ?? 0) * 10).toFixed(1)));
const setup = first?.setup ?? '';
const table = first?.table ?? '';

test('how much a group is told is what the teacher sets: nothing, to read again, or also what to try', () => {
  const written: readonly [number, Seat, Happening] = [9, ofGroup('A'), reading('A', setup, wrong)];
  const told = (much: 'nothing' | 'again' | 'try') =>
    asGroup(shownAfter(demo, storedEntries([written, [10, teacher, { kind: 'telling', much }]])), 'A')
      .readings[0]?.again;
  expect(told('nothing')).toBeNull();
  expect(told('again')).toEqual({ say: 'Read it once more.', tryThis: null });
  expect(told('try')?.tryThis).toMatch(/\.$/);
});

test('what was read again since is asked for no more, and a void reading leaves no trace in any verdict', () => {
  const entries = storedEntries([
    [1, ofGroup('A'), reading('A', setup, wrong)],
    [2, ofGroup('A'), reading('A', setup, (first?.expected ?? 0).toFixed(1))],
    [3, ofGroup('B'), reading('B', setup, wrong)],
    [4, teacher, { kind: 'void', of: 'e3' }],
  ]);
  const shown = shownAfter(demo, entries);
  expect(asGroup(shown, 'A').readings.map(({ again }) => again)).toEqual([null, null]);
  const verdicts = (of: ShownParts) =>
    tableOf(asTeacher(of), table)
      .setups.flatMap(({ readings }) => readings)
      .filter(({ isVoid }) => !isVoid)
      .map(({ verdict, remarks }) => ({ verdict, remarks }));
  expect(verdicts(shown)).toEqual(verdicts(shownAfter(demo, entries.slice(0, 2))));
  const [struck] = asGroup(shown, 'B').readings;
  expect(struck).toMatchObject({ written: wrong, isVoid: true, again: null });
});

test('a group that reads another language has its card and its sentences in that language', () => {
  const shown = shownAfter(demo, storedEntries([[1, ofGroup('F'), reading('F', setup, wrong)]]));
  const parts = asGroup(shown, 'F');
  expect(parts.group.language).toBe('es');
  expect(parts.readings[0]?.again?.say).toBe('Léanlo una vez más.');
  expect(parts.cards[table]?.html).not.toBe(asGroup(shown, 'A').cards[table]?.html);
});

test('an arrival reading within its range moves the key of its table and of no other; one outside says what to do and moves nothing', () => {
  const before = asTeacher(shownAfter(demo, []));
  const row = before.arrival.find((each) => each.table === table);
  const at = figures.find((each) => each.setup === row?.setup);
  const unit = at?.graduations.unitSi ?? 1;
  const after = (si: number) => {
    const what = { kind: 'arrival', setup: row?.setup ?? '', written: (si / unit).toFixed(2) } as const;
    return asTeacher(shownAfter(demo, storedEntries([[1, teacher, what]])));
  };
  const inside = after(at?.good.to ?? 0);
  expect(inside.arrival.find((each) => each.table === table)).toMatchObject({
    isInside: true,
    range: row?.range,
  });
  expect(tableOf(inside, table).setups).not.toEqual(tableOf(before, table).setups);
  const other = figures.find((each) => each.table !== table)?.table ?? '';
  expect(tableOf(inside, other)).toEqual(tableOf(before, other));
  const outside = after(3 * (at?.good.to ?? 0));
  const found = outside.arrival.find((each) => each.table === table);
  expect(found).toMatchObject({ isInside: false, range: row?.range });
  expect(found?.doThis).toContain('Check holes, load and parts against the card.');
  expect(tableOf(outside, table)).toEqual(tableOf(before, table));
});

test('a helper sees the table as the teacher does, and who comes to it', () => {
  const shown = shownAfter(demo, storedEntries([[0, teacher, { kind: 'begun' }]]));
  const parts = asHelper(shown, table);
  expect(parts.table).toEqual(tableOf(asTeacher(shown), table));
  expect(parts.coming).toHaveLength(6);
  expect(parts.coming.filter(({ isHere }) => isHere)).toHaveLength(1);
});

test('eight groups that read every setup twice are judged and shown within the time that one asks for', () => {
  const eight = demoAtDesk(inGroups(8));
  expect(eight.groups).toHaveLength(8);
  const told = [0, 1].flatMap((round) =>
    [...'ABCDEFGH'].flatMap((group) =>
      figures.map(({ setup: mark, expected }, n): readonly [number, Seat, Happening] => [
        100 * round + n,
        ofGroup(group),
        reading(group, mark, (expected * (n === 3 && group === 'C' ? 10 : 1)).toFixed(2)),
      ]),
    ),
  );
  const entries = storedEntries(told);
  const bit = partsOfVisit(eight);
  bit(entries.slice(0, -8), START);
  const before = performance.now();
  const shown = bit(entries, START);
  const took = performance.now() - before;
  const all = Object.keys(asTeacher(shown)).filter((name) => name.startsWith('table/'));
  const readings = all.flatMap((name) =>
    tableOf(asTeacher(shown), name.slice(6)).setups.flatMap((each) => each.readings),
  );
  expect(readings).toHaveLength(entries.length);
  expect(took).toBeLessThan(900);
});

test('a setup that is read without end leaves the last six readings of each group on the pages', () => {
  const told = Array.from({ length: 40 }, (_, n): readonly [number, Seat, Happening] => [
    n,
    ofGroup(n % 2 === 0 ? 'A' : 'B'),
    reading(n % 2 === 0 ? 'A' : 'B', setup, `${n}`),
  ]);
  const shown = shownAfter(demo, storedEntries(told));
  expect(asGroup(shown, 'A').readings.map(({ written }) => written)).toEqual([
    '28',
    '30',
    '32',
    '34',
    '36',
    '38',
  ]);
  const own = tableOf(asTeacher(shown), table).setups.find(({ mark }) => mark === setup);
  expect(own?.readings).toHaveLength(12);
});

import { expect, test } from 'vitest';
import {
  demoAtDesk,
  demoOpened,
  expectedFigures,
  ofGroup,
  reading,
  START,
  storedEntries,
  teacher,
} from '../../../test/server/demo-desk.ts';
import type { GroupParts, TeacherParts } from '../../store/wire.ts';
import type { Audience, Desk, SeatParts } from './desk.ts';
import { type InlineDeskOptions, inlineDesk } from './inline-desk.ts';
import { partsOfVisit } from './parts-of-visit.ts';

const demo = demoAtDesk();
const [figure] = expectedFigures(demo);
const setup = figure?.setup ?? '';
const written = (figure?.expected ?? 0).toFixed(1);
const prepared = () => ({ visit: demo, parts: partsOfVisit(demo) });
const entries = storedEntries([
  [0, teacher, { kind: 'begun' }],
  [400, ofGroup('A'), reading('A', setup, written)],
  [410, ofGroup('A'), reading('A', setup, written)],
]);
const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });

async function withDesk(
  options: InlineDeskOptions,
  work: (desk: Desk, told: (readonly [Audience, SeatParts])[]) => Promise<void>,
): Promise<void> {
  const desk = inlineDesk({ prepare: prepared, clock: () => START, ...options });
  const told: (readonly [Audience, SeatParts])[] = [];
  desk.onChange((_, audience, parts) => told.push([audience, parts]));
  try {
    await desk.open(demoOpened());
    await work(desk, told);
  } finally {
    await desk.close();
  }
}

test('what comes within a fifth of a second is told at once, and only what it changes', () =>
  withDesk({ gather: 40 }, async (desk, told) => {
    desk.take('demo', entries.slice(0, 1));
    await pause(80);
    told.length = 0;
    desk.take('demo', entries.slice(1, 2));
    desk.take('demo', entries.slice(2));
    expect(told).toEqual([]);
    await pause(120);
    expect(told.map(([audience]) => audience).sort()).toEqual([
      'group:A',
      `helper:${figure?.table}`,
      'teacher',
    ]);
    const parts = new Map(told);
    expect(Object.keys(parts.get('group:A') ?? {})).toEqual(['readings']);
    expect(Object.keys(parts.get('teacher') ?? {}).sort()).toEqual(['groups', `table/${figure?.table}`]);
  }));

test('what has been told already is told no more, however often it comes again', () =>
  withDesk({ gather: 5 }, async (desk, told) => {
    desk.take('demo', entries);
    await pause(60);
    told.length = 0;
    desk.take('demo', entries);
    desk.take('demo', [...entries].reverse());
    await pause(60);
    expect(told).toEqual([]);
  }));

test('a page that asks sees what was taken just before, and everything of its seat', () =>
  withDesk({ gather: 60_000 }, async (desk) => {
    desk.take('demo', entries);
    const parts = (await desk.parts('demo', ofGroup('A'))) as GroupParts;
    expect(parts.readings.map((each) => each.written)).toEqual([written, written]);
    expect(Object.keys(parts).sort()).toEqual(['cards', 'clock', 'group', 'readings', 'route', 'writes']);
    expect(await desk.parts('demo', { kind: 'helper', table: null })).toEqual({});
    await expect(desk.parts('elsewhere', teacher)).rejects.toThrow('elsewhere');
  }));

test('entries that come before their visit is open wait for it', async () => {
  const desk = inlineDesk({ prepare: prepared });
  desk.take('demo', entries);
  await desk.open(demoOpened());
  const parts = (await desk.parts('demo', ofGroup('A'))) as GroupParts;
  expect(parts.readings).toHaveLength(2);
  await desk.close();
});

test('a fault in one visit is told to its teacher; its groups keep their page, and another visit goes on', async () => {
  let isFaulty = false;
  const desk = inlineDesk({
    gather: 5,
    prepare: (opened) => {
      const parts = partsOfVisit(demo);
      return {
        visit: demo,
        parts: (all, now) => {
          if (isFaulty && opened.visit === 'demo') throw new Error('no such lever');
          return parts(all, now);
        },
      };
    },
  });
  await desk.open(demoOpened());
  await desk.open({ ...demoOpened(), visit: 'other' });
  isFaulty = true;
  desk.take('demo', entries);
  desk.take('other', entries);
  await pause(100);
  const seen = (await desk.parts('demo', teacher)) as TeacherParts;
  expect(seen.trouble.at(-1)).toContain('no such lever');
  expect((await desk.parts('demo', ofGroup('A'))) as GroupParts).toMatchObject({ readings: [] });
  expect(((await desk.parts('other', ofGroup('A'))) as GroupParts).readings).toHaveLength(2);
  isFaulty = false;
  desk.take('demo', entries);
  expect(((await desk.parts('demo', ofGroup('A'))) as GroupParts).readings).toHaveLength(2);
  expect(((await desk.parts('demo', teacher)) as TeacherParts).trouble).toEqual([]);
  await desk.close();
});

test('readings are shown to their group and to the teacher also where they can’t be judged', () => {
  const spoilt = { ...demo, prepared: { ...demo.prepared, tables: demo.prepared.tables.map(withoutLaws) } };
  const bit = partsOfVisit(spoilt);
  bit([], START);
  hasLaws = false;
  const shown = bit(entries, START);
  hasLaws = true;
  expect((shown.get('group:A') as GroupParts).readings).toHaveLength(2);
  expect((shown.get('teacher') as TeacherParts).trouble.join()).toContain('no laws today');
});

let hasLaws = true;

/** A table whose model fails as soon as a reading is weighed. */
function withoutLaws(table: (typeof demo.prepared.tables)[number]) {
  return {
    ...table,
    setups: table.setups.map((at) => ({
      ...at,
      setup: new Proxy(at.setup, {
        get: (of, name) => {
          if (!hasLaws && name !== 'mark' && name !== 'table') throw new Error('no laws today');
          return Reflect.get(of, name);
        },
      }),
    })),
  };
}

test('a visit whose files have faults is open all the same and says what is wrong with them', async () => {
  const desk = inlineDesk();
  await desk.open(
    demoOpened((text, file) =>
      file === 'activity' ? text.replace('handspike: activity 1', 'handspike: activity 1\ntables: 7') : text,
    ),
  );
  const parts = (await desk.parts('demo', teacher)) as TeacherParts;
  expect(parts.trouble.length).toBeGreaterThan(0);
  expect(parts.trouble[0]).toContain('harbour-day.activity.yaml');
  await desk.close();
});

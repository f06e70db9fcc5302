import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stay, table, time, timetable } from '../../../test/rotations.ts';
import { seconds } from '../quantities/brands.ts';
import { extraTasks } from './extra-tasks.ts';
import type { RotationTable } from './rotation.ts';
import type { Stand, Stay } from './timetable.ts';
import type { Wish } from './wish.ts';

const wait = (group: string, from: number, to: number) => ({ group, from: seconds(from), to: seconds(to) });
const paper = (text: string) => ({ text, texts: {} });
const extra = {
  least: seconds(120),
  setups: [
    { table: '1', setup: 'L3' },
    { table: '1', setup: 'L4' },
  ],
  papers: [paper('draw'), paper('write')],
};
const one: RotationTable = table('1', time(300, 0), { reset: time(60, 0) });
const tasks = (
  stays: readonly Stay[],
  waits: readonly ReturnType<typeof wait>[],
  more: {
    readonly table?: RotationTable;
    readonly wishes?: readonly Wish[];
    readonly stands?: readonly Stand[];
  } = {},
) =>
  extraTasks(
    { tables: [more.table ?? one], wishes: more.wishes ?? [] },
    timetable(stays, { waits, stands: more.stands ?? [] }),
    extra,
  );

const l3 = { kind: 'setup', table: '1', setup: 'L3' };
const draw = { kind: 'paper', ...paper('draw') };

describe('what a group does that waits', () => {
  it('finds more at the table it just left, where nobody comes', () => {
    expect(tasks([stay('A', '1', 0, 300)], [wait('A', 300, 600)])).toEqual([
      { ...wait('A', 300, 600), task: l3 },
    ]);
  });

  it('leaves in time for the table to be put back, and takes paper for the rest of the wait', () => {
    const found = tasks([stay('A', '1', 0, 300), stay('B', '1', 600, 900)], [wait('A', 300, 800)]);
    expect(found).toEqual([
      { ...wait('A', 300, 540), task: l3 },
      { ...wait('A', 540, 800), task: draw },
    ]);
  });

  it('takes paper where the table is needed too soon, shares a part that is, is closed, or has lost its adult', () => {
    const left = stay('A', '1', 0, 300);
    const waits = [wait('A', 300, 600)];
    const asPaper = [{ ...wait('A', 300, 600), task: draw }];
    expect(tasks([left, stay('B', '1', 450, 750)], waits)).toEqual(asPaper);
    const shared: Wish = { kind: 'shared part', part: 'sand', tables: ['1', '4'], id: 's', path: null };
    const next = stay('B', '4', 450, 750);
    expect(tasks([left, next], waits)).toEqual([{ ...wait('A', 300, 600), task: l3 }]);
    expect(tasks([left, next], waits, { wishes: [shared] })).toEqual(asPaper);
    const closed: Wish = { kind: 'closed', table: '1', from: seconds(310), to: null, id: 'c', path: null };
    expect(tasks([left], waits, { wishes: [closed] })).toEqual(asPaper);
    const attended = { ...one, needsAdult: true };
    const stand = (to: number) => [{ adult: '1', table: '1', copy: 1, from: seconds(0), to: seconds(to) }];
    expect(tasks([left], waits, { table: attended, stands: stand(360) })).toEqual(asPaper);
    expect(tasks([left], waits, { table: attended, stands: stand(700) })[0]?.task).toEqual(l3);
  });

  it('takes paper before the first table, gives nothing twice, and nothing where the list is at its end', () => {
    const found = tasks(
      [stay('A', '1', 400, 700)],
      [
        wait('A', 0, 400),
        wait('A', 700, 900),
        wait('A', 1000, 1200),
        wait('A', 1300, 1500),
        wait('A', 1600, 1800),
      ],
    );
    expect(found.map(({ task }) => task)).toEqual([
      draw,
      l3,
      { kind: 'setup', table: '1', setup: 'L4' },
      { kind: 'paper', ...paper('write') },
      null,
    ]);
  });

  it('a short wait stays a wait', () => {
    expect(tasks([stay('A', '1', 0, 300)], [wait('A', 300, 400)])).toEqual([]);
  });

  it('never holds up a table that somebody needs, nor lasts longer than the wait', () => {
    const starts = fc.array(fc.integer({ min: 0, max: 1500 }), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(starts, fc.integer({ min: 0, max: 900 }), (gaps, long) => {
        let at = 0;
        const stays = gaps.map((gap, n) => {
          const from = at + gap;
          at = from + 360;
          return stay(`G${n}`, '1', from, from + 300);
        });
        const waits = stays.map(({ group, to }) => wait(group, to, to + long));
        for (const { group, from, to, task } of tasks(stays, waits)) {
          const own = waits.find((each) => each.group === group);
          expect(from).toBeGreaterThanOrEqual(own?.from ?? Infinity);
          expect(to).toBeLessThanOrEqual(own?.to ?? 0);
          expect(to - from).toBeGreaterThanOrEqual(120);
          if (task?.kind === 'setup')
            for (const other of stays)
              expect(other.group === group || to + 60 <= other.from || from >= other.to).toBe(true);
        }
      }),
    );
  });
});

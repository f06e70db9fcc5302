import { expect, test } from 'vitest';
import { crowdedPrepared } from '../../../test/documents/crowded.ts';
import { crowdedPeriod, demoPeriod, smallPeriod } from '../../../test/documents/made-period.ts';
import { seconds } from '../../core/quantities/brands.ts';
import type { ClassPeriod } from '../../core/rotation/class-period.ts';
import { periodWords } from '../text/period-words.ts';
import { rotationPicture } from './rotation-picture.ts';
import { type ChartLines, rotationChart } from './rotation-rows.ts';

const prepared = crowdedPrepared();
const A4 = { name: 'chart', width: 269, height: 150, least: 2.6 };

function drawn(period: ClassPeriod, lines: ChartLines = 'groups', own = {}) {
  const words = periodWords('en', prepared, period);
  const chart = rotationChart(words, lines);
  if (chart === null) throw new Error('no timetable');
  return { chart, svg: rotationPicture(chart, words, { ...A4, ...own }) };
}

/** Outlines of the blocks: left and right edges, millimetres. */
const blocksOf = (svg: string): readonly (readonly [number, number])[] =>
  [...svg.matchAll(/<path d="M([-\d. L]+)Z" stroke-width="0.5"/g)].map(([, outline = '']) => {
    const xs = outline.split('L').map((point) => Number(point.split(' ')[0]));
    return [Math.min(...xs), Math.max(...xs)] as const;
  });

const sizeOf = (svg: string): readonly [number, number] => {
  const [, , width = 0, height = 0] = (/viewBox="([^"]+)"/.exec(svg)?.[1] ?? '').split(' ').map(Number);
  return [width, height];
};

test('a block is as wide as it lasts, from two groups to twelve', () => {
  for (const period of [smallPeriod(), demoPeriod(), crowdedPeriod()]) {
    const { chart, svg } = drawn(period);
    const stays = chart.rows.flatMap(({ parts }) => parts.filter(({ kind }) => kind === 'stay'));
    const blocks = blocksOf(svg);
    expect(blocks).toHaveLength(stays.length);
    const [first] = stays;
    const [block] = blocks;
    if (first === undefined || block === undefined) throw new Error('no block');
    const perSecond = (block[1] - block[0]) / (first.to - first.from);
    blocks.forEach(([left, right], n) => {
      const stay = stays[n];
      expect(right - left).toBeCloseTo(((stay?.to ?? 0) - (stay?.from ?? 0)) * perSecond, 0);
      expect(left - block[0]).toBeCloseTo(((stay?.from ?? 0) - first.from) * perSecond, 0);
    });
  }
});

test('a chart keeps to the room that it is given', () => {
  for (const period of [smallPeriod(), demoPeriod(), crowdedPeriod()])
    for (const lines of ['groups', 'tables', 'adults'] as const)
      for (const room of [
        { width: 269, height: 150, least: 2.6 },
        { width: 251, height: 160, least: 2.6 },
        { width: 392, height: 230, least: 5 },
      ]) {
        const [width, height] = sizeOf(drawn(period, lines, room).svg);
        expect([lines, width <= room.width, height <= room.height]).toEqual([lines, true, true]);
      }
});

test('the description says every visit, every signal and the bell', () => {
  const { chart, svg } = drawn(demoPeriod());
  const [, words = ''] = /<desc[^>]*>([^<]*)</.exec(svg) ?? [];
  expect(words.match(/table \d, |table \d from/g)).toHaveLength(42);
  expect(words).toContain('The bell: 9:45.');
  expect(chart.signals).toHaveLength(7);
  expect(words).toContain('The signal: 9:10:17, 9:16:04');
});

test('titles stand under all marks of a chart or under none', () => {
  const titles = (svg: string): number => (svg.match(/>The oar that</g) ?? []).length;
  const demo = demoPeriod();
  const wide = drawn(demo, 'groups', { width: 400, height: 260 }).svg;
  const narrow = drawn(demo, 'groups', { width: 150, height: 90 }).svg;
  expect(titles(wide) + (wide.match(/>The long oar/g) ?? []).length).toBe(6);
  expect(narrow).not.toMatch(/>The long/);
});

test('a break lies across all lines, and a late group says when it comes', () => {
  const demo = demoPeriod();
  const rotation = {
    ...demo.rotation,
    breaks: [{ from: seconds(1200), to: seconds(1500) }],
    groups: demo.rotation.groups.map((group) =>
      group.label === 'C' ? { ...group, arrives: seconds(900) } : group,
    ),
  };
  const stays = demo.outcome.kind === 'timetable' ? demo.outcome.timetable.stays : [];
  const later = {
    ...demo,
    rotation,
    outcome:
      demo.outcome.kind === 'timetable'
        ? {
            ...demo.outcome,
            timetable: {
              ...demo.outcome.timetable,
              stays: stays.filter(({ group, from }) => group !== 'C' || from >= 900),
            },
          }
        : demo.outcome,
  };
  const { svg } = drawn(later);
  expect(svg).toContain('>break<');
  expect(svg).toContain('Break from 9:20 to 9:25.');
  expect(svg).toContain('>comes at 9:15<');
});

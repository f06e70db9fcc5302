import { describe, expect, it } from 'vitest';
import type { ChartPart, RotationChart } from '../drawing/rotation-rows.ts';
import { rotationGrid } from './rotation-grid.ts';

const MINUTE = 60;
const part = (what: string, from: number, to: number, more: Partial<ChartPart> = {}): ChartPart => ({
  kind: 'stay',
  what,
  short: null,
  title: null,
  from: from * MINUTE,
  to: to * MINUTE,
  resetTo: to * MINUTE,
  hasAdult: false,
  ...more,
});
const wait = (from: number, to: number): ChartPart => part('waits', from, to, { kind: 'wait' });

/** One group in an hour, a letter a minute: the bell rings after 60 minutes. */
function gridOf(...parts: readonly ChartPart[]) {
  const chart: RotationChart = {
    lines: 'groups',
    rows: [{ label: 'A', name: 'Group A', about: null, late: null, parts }],
    lasts: 60 * MINUTE,
    begins: 0,
    bell: 60 * MINUTE,
    breaks: [],
    signals: [],
    now: null,
    clock: { date: null, starts: null },
  };
  const grid = rotationGrid(chart, 66);
  if (grid === null) throw new Error('an hour has room in 66 columns');
  return { row: grid.lines[1]?.slice(3) ?? '', signs: grid.signs };
}

describe('a chart in letters', () => {
  it('has room for a letter a minute', () => {
    expect(gridOf(part('4', 0, 60)).row).toHaveLength(61);
  });

  it.each([
    [10, '|   4*    |'],
    [3, '|4*|'],
    [2, '*4|'],
    [1, '*4'],
  ])('keeps the sign of an adult in a block %i letters wide', (width, drawn) => {
    const { row, signs } = gridOf(part('4', 0, width, { hasAdult: true }));
    expect(row).toBe(drawn);
    expect(signs.has('adult')).toBe(true);
  });

  it('has a sign in the legend only where it is drawn', () => {
    expect([...gridOf(part('4', 0, 10)).signs]).toEqual(['bell']);
  });

  it('draws the resets of all tables, or of none where one has no room', () => {
    const reset = (what: string, from: number, to: number): ChartPart =>
      part(what, from, to, { resetTo: (to + 1) * MINUTE });
    const roomy = gridOf(reset('1', 0, 6), reset('2', 8, 14));
    expect(roomy.row).toBe('|  1  |/|  2  |/');
    expect(roomy.signs.has('reset')).toBe(true);
    const tight = gridOf(reset('1', 0, 6), reset('2', 8, 14), reset('3', 15, 21));
    expect(tight.row).toBe('|  1  | |  2  ||  3  |');
    expect(tight.signs.has('reset')).toBe(false);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])(
    'a mark in a block %i letters wide never runs into the wait after it, nor that into the next block',
    (width) => {
      for (let length = 1; length <= 14; length += 1) {
        const { row } = gridOf(
          part('tackle', 0, width),
          wait(width, width + length),
          part('lever', width + length, width + length + 8),
        );
        expect(row).not.toMatch(/[a-z]waits|waits[a-z|]/);
        expect(row.includes('waits')).toBe(length >= 8);
      }
    },
  );

  it('cuts a mark that is wider than its block, and leaves both bars', () => {
    expect(gridOf(part('tackle', 0, 6), wait(6, 16)).row).toBe('|tackl|..waits..');
  });
});

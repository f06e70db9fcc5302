import { describe, expect, test } from 'vitest';
import { seconds } from '../quantities/brands.ts';
import { exactly } from '../uncertainty/measured.ts';
import { randomFrom } from '../uncertainty/random.ts';
import { hallLimits } from './hall-limits.ts';
import type { Adult, RotationTable } from './rotation.ts';

const table = (mark: string, copies: number, needsAdult: boolean): RotationTable => ({
  mark,
  run: exactly(seconds(300)),
  reset: exactly(seconds(0)),
  copies,
  needsAdult,
  mayDo: false,
  beside: [],
});

/** Whether each of these tables can have an adult of its own, by trying all. */
function canStand(needing: readonly string[], adults: readonly Adult[]): boolean {
  const [mark, ...rest] = needing;
  if (mark === undefined) return true;
  return adults.some(
    (adult, n) =>
      (adult.at === null || adult.at.includes(mark)) &&
      canStand(
        rest,
        adults.filter((_, other) => other !== n),
      ),
  );
}

describe('limits of the adults', () => {
  test('any use of the tables keeps them just where every table that needs one can have an adult', () => {
    const random = randomFrom(5);
    const marks = ['1', '2', '3', '4'];
    const found = { kept: 0, broken: 0 };
    for (let trial = 0; trial < 60; trial += 1) {
      const tables = marks.map((mark) => table(mark, random.even() < 0.3 ? 2 : 1, random.even() < 0.7));
      const adults = Array.from({ length: Math.floor(random.even() * 4) }, (_, n): Adult => {
        const at = random.even() < 0.3 ? null : marks.filter(() => random.even() < 0.5);
        return { label: String(n), at };
      });
      const copies = tables.map((each) => each.copies);
      const limits = hallLimits(tables, adults, copies);
      for (let use = 0; use < 3 ** marks.length; use += 1) {
        const counts = marks.map((_, n) => Math.floor(use / 3 ** n) % 3);
        if (counts.some((count, n) => count > (copies[n] as number))) continue;
        const isKept = limits.every(
          (limit) => limit.tables.reduce((sum, n) => sum + (counts[n] as number), 0) <= limit.capacity,
        );
        const needing = marks.flatMap((mark, n) =>
          tables[n]?.needsAdult ? Array.from({ length: counts[n] as number }, () => mark) : [],
        );
        found[isKept ? 'kept' : 'broken'] += 1;
        expect([trial, counts, isKept]).toEqual([trial, counts, canStand(needing, adults)]);
      }
    }
    expect(Math.min(found.kept, found.broken)).toBeGreaterThan(300);
  });

  test('there is none where there are enough adults for all copies', () => {
    const adults = ['P', 'Q', 'R'].map((label): Adult => ({ label, at: null }));
    expect(
      hallLimits([table('1', 2, true), table('2', 1, true), table('3', 1, false)], adults, [2, 1, 1]),
    ).toEqual([]);
  });
});

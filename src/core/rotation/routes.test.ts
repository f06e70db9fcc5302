import { describe, expect, test } from 'vitest';
import { routeChanges, routesWith } from './routes.ts';

function ordersOf(all: readonly number[]): readonly (readonly number[])[] {
  if (all.length === 0) return [[]];
  return all.flatMap((each) =>
    ordersOf(all.filter((other) => other !== each)).map((rest) => [each, ...rest]),
  );
}

describe("a group's way round the tables", () => {
  test('has changed in one place where one table was moved, however far', () => {
    expect(routeChanges([1, 2, 3, 4], [2, 3, 4, 1])).toBe(1);
    expect(routeChanges([1, 2, 3, 4], [4, 3, 2, 1])).toBe(3);
  });

  test('has changed in one place for a table that is gone, and in one for a table that is new', () => {
    expect(routeChanges([1, 2, 3], [1, 3])).toBe(1);
    expect(routeChanges([1, 2, 3], [1, 5, 3])).toBe(2);
  });

  test.each([
    [
      [1, 2, 3, 4],
      [1, 2, 3, 4],
    ],
    [
      [1, 2, 3, 4],
      [2, 4, 7],
    ],
    [
      [3, 1],
      [1, 3, 5, 6],
    ],
  ])('from %j to the tables %j, every way is listed with just one number of moves', (stood, tables) => {
    const kept = stood.filter((table) => tables.includes(table)).length;
    const least = stood.length + tables.length - 2 * kept;
    const all = ordersOf(tables);
    for (let moved = 0; moved <= tables.length; moved += 1) {
      const listed = routesWith(stood, tables, moved, 1000)
        .map((route) => route.join())
        .sort();
      const wanted = all.filter((route) => routeChanges(stood, route) === least + moved);
      expect([moved, listed]).toEqual([moved, wanted.map((route) => route.join()).sort()]);
    }
  });
});

import { type Seconds, seconds } from '../quantities/brands.ts';
import type { Rotation } from './rotation.ts';
import type { Stay, Wait } from './timetable.ts';

/**
 * When a group that is there has nothing to do, from its arrival to the bell: neither at a table nor on its
 * way to the next, and no break. Group by group, in the order of time.
 *
 * @example
 * const group = { label: 'A', pupils: 4, arrives: seconds(0) };
 * const stay = (table, from, to) => ({ group: 'A', table, copy: 1, from, to, round: null });
 * waitsBetween(
 *   { groups: [group], begins: 0, bell: 1000, breaks: [{ from: 700, to: 800 }], walk: 30, wishes: [] },
 *   [stay('1', 0, 300), stay('2', 400, 700)],
 * ) // => [{ group: 'A', from: 300, to: 370 }, { group: 'A', from: 800, to: 1000 }]
 */
export function waitsBetween(
  rotation: Pick<Rotation, 'groups' | 'begins' | 'bell' | 'breaks' | 'walk' | 'wishes'>,
  stays: readonly Stay[],
): readonly Wait[] {
  return rotation.groups.flatMap(({ label, arrives }) => {
    const own = stays.filter(({ group }) => group === label).sort((a, b) => a.from - b.from);
    const ends = [Math.max(rotation.begins, arrives), ...own.map(({ to }) => to)];
    const gaps = ends.map((from, n): Span => {
      const next = own[n];
      if (next === undefined) return { from, to: rotation.bell };
      return { from, to: n === 0 ? next.from : next.from - rotation.walk };
    });
    const gone = rotation.wishes.flatMap((wish): readonly Span[] =>
      wish.kind === 'away' && wish.group === label ? [{ from: wish.from, to: wish.to ?? Infinity }] : [],
    );
    return [...rotation.breaks, ...gone]
      .reduce(without, gaps)
      .filter(({ from, to }) => to > from)
      .map(({ from, to }): Wait => ({ group: label, from: whole(from), to: whole(to) }));
  });
}

interface Span {
  readonly from: number;
  readonly to: number;
}

const whole = (time: number): Seconds => seconds(time);

const without = (spans: readonly Span[], cut: Span): readonly Span[] =>
  spans.flatMap(({ from, to }) =>
    cut.to <= from || cut.from >= to
      ? [{ from, to }]
      : [
          { from, to: cut.from },
          { from: cut.to, to },
        ].filter((part) => part.to > part.from),
  );

import { seconds } from '../quantities/brands.ts';
import type { BetweenClasses, ClassPeriod } from './class-period.ts';

/**
 * From each class to the next: how long there is, and how long it takes to put every table back. The adults share
 * the tables, the longest reset first (the rule of longest processing time, which is at most a third over the best:
 * Graham, 1969; from memory); where there is none, the teacher does it alone.
 */
export function betweenClasses(
  classes: readonly Pick<ClassPeriod, 'label' | 'clock' | 'lasts' | 'rotation'>[],
): readonly BetweenClasses[] {
  return classes.flatMap((before, n): readonly BetweenClasses[] => {
    const after = classes[n + 1];
    if (after === undefined || before.clock.starts === null || after.clock.starts === null) return [];
    return [
      {
        before: before.label ?? '',
        after: after.label ?? '',
        has: seconds(after.clock.starts - before.clock.starts - before.lasts),
        needs: seconds(resetOf(before.rotation)),
      },
    ];
  });
}

function resetOf({ tables, adults }: ClassPeriod['rotation']): number {
  const hands = Array.from({ length: Math.max(1, adults.length) }, () => 0);
  const resets = tables.flatMap(({ reset, copies }) => Array.from({ length: copies }, () => reset.value));
  for (const reset of resets.sort((a, b) => b - a)) {
    const first = hands.indexOf(Math.min(...hands));
    hands[first] = (hands[first] ?? 0) + reset;
  }
  return Math.max(...hands);
}

import type { Happening } from './entry.ts';
import type { Dated } from './sane-order.ts';

/** What a teacher takes back as if it had not been; what has an opposite (pause, close, strike) is undone by that. */
const CAN_BE_RECALLED: ReadonlySet<Happening['kind']> = new Set([
  'begun',
  'signal',
  'late',
  'arrival',
  'freed',
]);

/** What still holds: without what was recalled, whichever of the two came first. Both stay in the journal. */
export function withoutRecalled(dated: readonly Dated[]): readonly Dated[] {
  const recalled = new Set(
    dated.flatMap(({ stored: { entry } }) => (entry.what.kind === 'recalled' ? [entry.what.of] : [])),
  );
  return recalled.size === 0
    ? dated
    : dated.filter(
        ({ stored: { entry } }) => !recalled.has(entry.id) || !CAN_BE_RECALLED.has(entry.what.kind),
      );
}

import { nearestName } from '../core/diagnostics/nearest-name.ts';
import type { Prepared } from '../core/prepare.ts';
import { setupsOf } from '../core/review.ts';
import { UsageFault } from './command.ts';

/** A mark that no setup of these files has, or that can't be built today: said with those there are. */
export function unknownSetup(prepared: Prepared, mark: string): UsageFault {
  const known = setupsOf(prepared).map(({ setup }) => setup.mark);
  const nearest = nearestName(mark, known);
  return new UsageFault(
    `there is no setup "${mark}" that can be prepared${nearest === undefined ? '' : `; did you mean "${nearest}"?`}\n` +
      `there are ${known.join(', ')}`,
  );
}

import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { angleFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import { leanOf } from '../../statics/guided-pull.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import type { Drag } from './station.ts';

/** A pull so steep tips or lifts the front before it drags: common practice, no source. */
const LEANS_MUCH = (45 * Math.PI) / 180;

/** Where the law is a poor guide: a string that lifts nearly as much as it drags. */
export function limits(
  drag: Drag,
  at: At,
  _balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const d = leanOf(drag, at);
  return Math.abs(d) <= LEANS_MUCH
    ? []
    : [
        {
          code: 'drag.leans-much',
          severity: 'warning',
          at: place(drag.string === 'leans' ? 'string leans' : 'read at'),
          facts: { angle: angleFact(d), limit: angleFact(LEANS_MUCH) },
        },
      ];
}

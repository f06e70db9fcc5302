import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact, ratioFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import type { Windlass } from './station.ts';
import { arms } from './windlass.ts';

/** A line bent closer than this many of its thicknesses is too stiff to be left out; common practice. */
const BEND = 4;

/** Where the windlass's law is a poor guide: a line too stiff for its axle, a wheel smaller than the axle. */
export function limits(
  windlass: Windlass,
  at: At,
  _balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const { a, c } = arms(windlass, at);
  const axle = 2 * at(windlass.inputs.axleRadius);
  const line = at(windlass.inputs.axleLine);
  return [
    ...(axle < BEND * line
      ? [
          {
            code: 'windlass.stiff-line',
            severity: 'warning',
            at: place(null),
            facts: { axle: lengthFact(axle), line: lengthFact(line), times: BEND },
          } as const,
        ]
      : []),
    ...(c < a
      ? [
          {
            code: 'windlass.costs-force',
            severity: 'note',
            at: place(null),
            facts: { pull: lengthFact(c), load: lengthFact(a), ratio: ratioFact(c / a) },
          } as const,
        ]
      : []),
  ];
}

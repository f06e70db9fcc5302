import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { angleFact, ratioFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import type { Tackle } from './station.ts';

/** Past this lean the count of parts is off by more than three parts in a hundred. */
const LEAN = (15 * Math.PI) / 180;

/** Where the tackle's law is a poor guide: parts that lean so far that the lean has to be measured. */
export function limits(
  tackle: Tackle,
  at: At,
  _balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const lean = at(tackle.inputs.lean);
  if (lean <= LEAN) return [];
  return [
    {
      code: 'tackle.leaning-parts',
      severity: 'warning',
      at: place('parts lean'),
      facts: { lean: angleFact(lean), most: angleFact(LEAN), more: ratioFact(1 / Math.cos(lean) - 1) },
    },
  ];
}

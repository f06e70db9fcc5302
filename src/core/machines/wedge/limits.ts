import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { angleFact, forceFact, lengthFact, ratioFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { faceAngle, opening, type Wedge } from './station.ts';

/** From here on a degree of friction changes the push by a twentieth and more: own bound, see the law. */
const NEAR_JAM = Math.PI / 3;

/** Where the wedge's law is a poor guide or the setup a poor lesson, with the number that shows it. */
export function limits(
  wedge: Wedge,
  at: At,
  balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const { faceFriction, stopFriction, mostOpening } = wedge.inputs;
  const lean = faceAngle(wedge, at) + Math.atan(at(faceFriction)) + Math.atan(at(stopFriction));
  if (lean > NEAR_JAM)
    found.push({
      code: 'wedge.near-jam',
      severity: 'warning',
      at: place(null),
      facts: { lean: angleFact(lean), most: angleFact(NEAR_JAM) },
    });
  if (mostOpening !== undefined && opening(wedge, at) > at(mostOpening))
    found.push({
      code: 'wedge.cords-over-limit',
      severity: 'error',
      at: place('pushed in'),
      facts: { opening: lengthFact(opening(wedge, at)), most: lengthFact(at(mostOpening)) },
    });
  if (balance.overcomes !== undefined && balance.effort > balance.overcomes)
    found.push({
      code: 'wedge.hands-do-better',
      severity: 'note',
      at: place(null),
      facts: {
        push: forceFact(balance.effort),
        side: forceFact(balance.overcomes),
        gain: ratioFact(balance.overcomes / balance.effort),
      },
    });
  return found;
}

import { isNotDefined } from '../../description/not-defined.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { angleFact, ratioFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { lead, type Screw } from './station.ts';

/** Beyond this lead angle the flank's tilt and the lead are no longer apart: own bound, see the law. */
const STEEP = Math.PI / 12;
/** Below this efficiency the pull is mostly friction, whose tables differ by a factor of two. */
const MOSTLY_FRICTION = 0.3;

/** Where the screw's law is a poor guide: steep threads, and pulls that are nearly all friction. */
export function limits(
  screw: Screw,
  at: At,
  balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const leadAngle = Math.atan(lead(screw, at) / (Math.PI * at(screw.inputs.meanDiameter)));
  if (leadAngle > STEEP && at(screw.inputs.flank) > 0)
    found.push({
      code: 'screw.steep',
      severity: 'warning',
      at: place(null),
      facts: { lead: angleFact(leadAngle), most: angleFact(STEEP) },
    });
  const efficiency = shareOfLoad(balance);
  if (efficiency !== null && efficiency < MOSTLY_FRICTION)
    found.push({
      code: 'screw.mostly-friction',
      severity: 'note',
      at: place(null),
      facts: { share: ratioFact(efficiency), least: ratioFact(MOSTLY_FRICTION) },
    });
  return found;
}

/** What arrives at the load, of what the pull gives; only where the pull raises. */
function shareOfLoad(balance: Balance): number | null {
  if (isNotDefined(balance.velocityRatio)) return null;
  const given = balance.work.find((term) => term.by === 'effort')?.rate ?? 0;
  const load = balance.work.find((term) => term.by === 'load')?.rate ?? 0;
  return given > 0 && load < 0 ? -load / given : null;
}

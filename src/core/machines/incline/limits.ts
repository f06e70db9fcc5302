import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { angleFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import { leanOf } from '../../statics/guided-pull.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { angleOf, type InclinedPlane } from './station.ts';

/** At 6 degrees one degree more or less is a sixth of the pull without friction: cot a times the error. */
const FLAT = (6 * Math.PI) / 180;
/** Beyond this loads tip or tumble before they slide: common practice, no source. */
const STEEP = (60 * Math.PI) / 180;
/** From here on half the distance to the pulley costs a tenth more pull: 1/cos d, with tan d doubled. */
const LEANS_MUCH = (15 * Math.PI) / 180;

/** Where the law is a poor guide: nearly level, very steep, or read close to a pulley that stands high. */
export function limits(
  plane: InclinedPlane,
  at: At,
  _balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const a = angleOf(plane, at);
  const d = leanOf(plane, at);
  const warn = (code: string, field: string | null, si: number, limit: number): Diagnostic => ({
    code,
    severity: 'warning',
    at: place(field),
    facts: { angle: angleFact(si), limit: angleFact(limit) },
  });
  return [
    ...(a < FLAT ? [warn('incline.nearly-level', slopeField(plane), a, FLAT)] : []),
    ...(a > STEEP ? [warn('incline.steep', slopeField(plane), a, STEEP)] : []),
    ...(plane.string === 'comes from the pulley' && Math.abs(d) > LEANS_MUCH
      ? [warn('incline.read-too-near', 'read at', d, LEANS_MUCH)]
      : []),
  ];
}

/** The field that the slope was written in. */
function slopeField(plane: InclinedPlane): string {
  if (plane.steep === 'measured') return 'angle';
  return plane.propped ? 'propped at' : 'rise';
}

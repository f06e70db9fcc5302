import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import { faceAngle, opening, type Wedge } from './station.ts';

/** What the faces press with at the limit of sliding. */
export interface SplittingForces {
  readonly h: number;
  readonly phi: number;
  readonly face: number;
  readonly base: number;
  readonly weight: number;
  readonly opening: number;
  /** Side force of the cords, and with what else presses. */
  readonly cords: number;
  readonly side: number;
  readonly faceNormal: number;
  readonly tableRubbing: number;
  readonly push: number;
}

/** `null` where slope and friction are so steep together that no push opens anything. */
export function splittingForces(wedge: Wedge, at: At, asked: Asked): SplittingForces | null {
  const sense = signOf(asked.direction);
  const { face, base } = frictions(wedge, at, asked.grip);
  const h = faceAngle(wedge, at);
  const aside = Math.cos(h) - sense * face * Math.sin(h);
  if (aside <= 0) return null;
  const open = opening(wedge, at);
  const cords = at(wedge.inputs.preTension) + at(wedge.inputs.stiffness) * open;
  const side = cords + asked.load;
  const faceNormal = side / aside;
  const weight = at(wedge.inputs.mass) * asked.gravity;
  const tableRubbing = wedge.pushed === 'level' ? base * weight : 0;
  const helped = wedge.pushed === 'down' ? weight : 0;
  return {
    h,
    phi: Math.atan(face),
    face,
    base,
    weight,
    opening: open,
    cords,
    side,
    faceNormal,
    tableRubbing,
    push: 2 * faceNormal * (Math.sin(h) + sense * face * Math.cos(h)) + sense * tableRubbing - helped,
  };
}

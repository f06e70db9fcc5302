import type { Asked } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Wedge } from './station.ts';

/** Friction at faces, base and stop: none, while it moves, or at the start. */
export function frictions(wedge: Wedge, at: At, grip: Asked['grip']) {
  const { faceFriction, faceStarting, baseFriction, baseStarting, stopFriction, stopStarting } = wedge.inputs;
  switch (grip) {
    case 'none':
      return { face: 0, base: 0, stop: 0 };
    case 'moving':
      return { face: at(faceFriction), base: at(baseFriction), stop: at(stopFriction) };
    case 'starting':
      return { face: at(faceStarting), base: at(baseStarting), stop: at(stopStarting) };
  }
}

import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { lead, type Screw } from './station.ts';

/** What acts between the threads and at the collar, a turn in the direction asked. */
export interface ThreadForces {
  readonly head: number;
  readonly thrust: number;
  readonly meanRadius: number;
  readonly leadAngle: number;
  readonly frictionAngle: number;
  /** Turning force at the mean radius, in the sense of raising. */
  readonly tangential: number;
  /** Friction force along the thread. */
  readonly rubbing: number;
  /** Length of thread that slides in one turn. */
  readonly slide: number;
  readonly collarMoment: number;
}

/** `null` where thread and friction are so steep together that no turning force lifts anything. */
export function threadForces(screw: Screw, at: At, asked: Asked): ThreadForces | null {
  const { meanDiameter, flank, headMass, collarDiameter } = screw.inputs;
  const d2 = at(meanDiameter);
  const head = at(headMass) * asked.gravity;
  const thrust = asked.load + head;
  const leadAngle = Math.atan(lead(screw, at) / (Math.PI * d2));
  const { thread, collar } = frictions(screw, at, asked.grip);
  const mu = thread / Math.cos(at(flank));
  const push = signOf(asked.direction) * mu;
  const along = Math.cos(leadAngle) - push * Math.sin(leadAngle);
  if (along <= 0) return null;
  // The flank's force in the plane of axis and turning; along the axis it carries the thrust.
  const pressed = thrust / along;
  return {
    head,
    thrust,
    meanRadius: d2 / 2,
    leadAngle,
    frictionAngle: Math.atan(mu),
    tangential: pressed * (Math.sin(leadAngle) + push * Math.cos(leadAngle)),
    rubbing: mu * pressed,
    slide: (Math.PI * d2) / Math.cos(leadAngle),
    collarMoment: (collar * thrust * at(collarDiameter)) / 2,
  };
}

export function frictions(screw: Screw, at: At, grip: Asked['grip']) {
  const { threadFriction, threadStarting, collarFriction, collarStarting } = screw.inputs;
  switch (grip) {
    case 'none':
      return { thread: 0, collar: 0 };
    case 'moving':
      return { thread: at(threadFriction), collar: at(collarFriction) };
    case 'starting':
      return { thread: at(threadStarting), collar: at(collarStarting) };
  }
}

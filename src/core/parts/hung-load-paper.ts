import type { Step } from '../description/step.ts';
import type { WayOfReading } from '../statics/balance.ts';

const step = (name: string): Step => ({ key: `hung-load.step.${name}`, facts: {} });

/** Held still, the pointer comes to rest before it is read. */
export const readAtRest: Step = step('read-rest');

/** Pulled until it goes: the highest value counts. */
export const readAtPeak: readonly Step[] = [step('harder'), step('read-peak')];

/** How a scale is read that lifts a hung load: what the load does meanwhile. */
export const readingOfHungLoad: Readonly<Record<WayOfReading, readonly Step[]>> = {
  raise: [step('read-rising')],
  lower: [step('creep'), step('read-sinking')],
  held: [step('hold'), readAtRest],
  start: readAtPeak,
};

/** Read in passing one place: on the way up, or on the way back. */
export const readInPassing = (read: Step, creep: Step, way: 'raise' | 'lower'): readonly Step[] =>
  way === 'raise' ? [read] : [creep, read];

/** The load is let back down. */
export const loadCreepsBack: Step = step('creep');

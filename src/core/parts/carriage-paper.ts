import type { Step } from '../description/step.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import { angleFact, lengthFact, massFact, ratioFact } from '../diagnostics/facts.ts';
import type { Metres } from '../quantities/brands.ts';
import type { WayOfReading } from '../statics/balance.ts';
import { keyOf, type Ride, resistance } from '../statics/carriage.ts';
import { leanOf, type StringPull } from '../statics/guided-pull.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';
import { readAtPeak, readAtRest, readInPassing } from './hung-load-paper.ts';

/** A string that leans less than this pulls along the plane, as far as anybody can see. */
const STRAIGHT = 0.005;

type Pulled = Ride & StringPull;

/** How the carriage is set where the machine says, loaded, and its string led to the scale or the hand. */
export function carriageSteps(
  station: Pulled,
  machine: 'incline' | 'drag',
  isFelt: boolean,
): readonly Step[] {
  const key = keyOf(station);
  const hand = isFelt ? '-hand' : '';
  const step = (name: string): Step => ({ key: name, facts: {} });
  return [
    ...(station.rides === 'rollers'
      ? [step(`${machine}.step.lay-rollers`), step('carriage.step.rollers')]
      : [step(`${machine}.step.set-${key}`)]),
    step(`carriage.step.load-${key}`),
    ...(station.guide === null
      ? [step(`string.step.hook-${key}${hand}`)]
      : [step('string.step.over-the-pulley'), step(`string.step.hook-end${hand}`)]),
  ];
}

/** How the hand pulls: along the surface, at an angle above it or beyond the guide pulley; felt, as far as it goes. */
export function pullSteps(station: Pulled, along: string, isFelt: boolean): readonly Step[] {
  const hand = isFelt ? '-hand' : '';
  const { guide } = station;
  const pull = (name: string, facts: Facts = {}): Step => ({ key: `${name}${hand}`, facts });
  const lean = station.string === 'leans' ? station.inputs.lean.value : 0;
  const direct =
    Math.abs(lean) < STRAIGHT ? pull(along) : pull('string.step.pull-leaning', { lean: angleFact(lean) });
  return [
    guide === null ? direct : pull(`string.step.pull-${guide.leaves}`),
    ...(station.string === 'leans' || !isFelt ? [] : [atPlace('pull-until', station, station.inputs.readAt)]),
  ];
}

/** Read in one place only, where the string comes from a pulley and its angle changes on the way. */
export function carriageReading(station: Pulled, way: WayOfReading): readonly Step[] | null {
  if (station.string === 'leans') return null;
  const { readAt } = station.inputs;
  if (way === 'held') return [atPlace('hold-at', station, readAt), readAtRest];
  if (way === 'start') return [atPlace('hold-at', station, readAt), ...readAtPeak];
  const creep: Step = { key: `carriage.step.creep-${keyOf(station)}`, facts: {} };
  return readInPassing(atPlace('read-at', station, readAt), creep, way);
}

/** Its load comes off. */
export const unloaded = (ride: Ride): Step => ({ key: `carriage.step.unload-${keyOf(ride)}`, facts: {} });

/** Where the carriage is when something is done. */
const atPlace = (name: string, station: Pulled, { value }: Measured<Metres>): Step => ({
  key: `string.step.${name}-${keyOf(station)}`,
  facts: { at: lengthFact(value) },
});

/** What carriage and string have and the schoolbook leaves out. */
export function carriageDifferences(
  station: Ride & StringPull,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const mass = at(station.inputs.deadMass);
  const { coefficient } = resistance(station, at, 'moving');
  const lean = leanOf(station, at);
  const drags = at(station.inputs.guideShare) > 0 || at(station.inputs.guideConstant) > 0;
  const key = keyOf(station);
  return [
    ...(mass === 0 ? [] : [{ key: `carriage.difference.${key}-mass`, facts: { mass: massFact(mass) } }]),
    ...(coefficient === 0
      ? []
      : [{ key: `carriage.difference.${key}`, facts: { drag: ratioFact(coefficient) } }]),
    ...(Math.abs(lean) < STRAIGHT
      ? []
      : [{ key: 'string.difference.leans', facts: { lean: angleFact(lean) } }]),
    ...(station.guide !== null && drags ? [{ key: 'string.difference.guide-pulley', facts: {} }] : []),
  ];
}

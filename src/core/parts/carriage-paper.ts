import type { Step } from '../description/step.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import { angleFact, lengthFact, massFact, ratioFact } from '../diagnostics/facts.ts';
import { keyOf, type Ride, resistance } from '../statics/carriage.ts';
import { leanOf, type StringPull } from '../statics/guided-pull.ts';
import type { At } from '../uncertainty/propagate.ts';

/** A string that leans less than this pulls along the plane, as far as anybody can see. */
const STRAIGHT = 0.005;

/** How the carriage is set and the string led, one action a step. */
export function carriageSteps(station: Ride & StringPull): readonly Step[] {
  return [
    { key: `carriage.step.${keyOf(station)}`, facts: {} },
    { key: 'carriage.step.load', facts: {} },
    station.guide === null
      ? { key: 'string.step.hook', facts: {} }
      : { key: 'string.step.over-the-pulley', facts: {} },
    ...(station.string === 'leans'
      ? []
      : [{ key: 'string.step.read-at', facts: { at: lengthFact(station.inputs.readAt.value) } }]),
  ];
}

/** How the hand pulls: along the surface, at an angle above it, or beyond the guide pulley. */
export function pullStep(pull: StringPull, along: Step, beyondThePulley: Step): Step {
  if (pull.guide !== null) return beyondThePulley;
  const lean = pull.string === 'leans' ? pull.inputs.lean.value : 0;
  if (Math.abs(lean) < STRAIGHT) return along;
  return { key: 'string.step.pull-leaning', facts: { lean: angleFact(lean) } };
}

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

import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import type { WayOfReading } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { MachineFor } from './compound.ts';
import type { Compound } from './station.ts';

/**
 * How the stages are built and linked. Inside the row a link stands for scale and load, so the steps
 * about them are left out; where they name a place, the link is tied there. It is tied before a hand
 * pulls at anything.
 */
export function steps(compound: Compound, machineFor: MachineFor, isFelt = false): readonly Step[] {
  const last = compound.stages.length - 1;
  return compound.stages.flatMap((station, k): readonly Step[] => {
    const machine = machineFor(station);
    const own = machine.steps(station, isFelt && k === last);
    const isHand = (step: Step): boolean => isAboutTheHand(nameOf(step));
    const building = own
      .filter((step) => !isHand(step))
      .flatMap((step) => (k > 0 && nameOf(step).startsWith('load') ? [tied('from', k, step)] : [step]));
    const pulling = own
      .filter((step) => isHand(step) && (k === last || isHooking(step)))
      .map((step) => (k < last ? tied('to', k + 2, step) : step));
    return [
      { key: 'compound.step.stage', facts: { stage: k + 1, machine: machine.name } },
      ...building,
      ...(k === 0 ? [] : [{ key: 'compound.step.link', facts: { from: k, to: k + 1 } }]),
      ...pulling,
    ];
  });
}

const nameOf = ({ key }: Step): string => key.split('.')[2] ?? '';
const isAboutTheHand = (name: string): boolean => /^(pull|hook|read|square|lift)/.test(name);

/** A step that joins the scale to the machine: by its name, or by the place that it names. */
const isHooking = (step: Step): boolean =>
  nameOf(step).startsWith('hook') || (nameOf(step).startsWith('pull') && placeOf(step) !== undefined);
const placeOf = ({ facts }: Step) => facts.hole ?? facts.at ?? facts.arm;

/** The end of the line that goes to another stage: at a place that has a name, or where load or scale would be. */
function tied(end: 'from' | 'to', stage: number, step: Step): Step {
  const { hole } = step.facts;
  if (hole !== undefined) return { key: `compound.step.tie-${end}-at-hole`, facts: { hole, stage } };
  const at = placeOf(step);
  return at === undefined
    ? { key: `compound.step.tie-${end}`, facts: { stage } }
    : { key: `compound.step.tie-${end}-at`, facts: { at, stage } };
}

/** The hand is at the last stage, so that one says how it is read. */
export function reading(
  { stages }: Compound,
  way: WayOfReading,
  machineFor: MachineFor,
): readonly Step[] | null {
  const last = stages.at(-1);
  return last === undefined ? null : (machineFor(last).reading?.(last, way) ?? null);
}

/** The load comes down first, then the hand's end and the links come off. */
export const reset = (compound: Compound, isFelt = false): readonly Step[] => [
  { key: 'compound.reset.load', facts: {} },
  { key: `compound.reset.${isFelt ? 'hand' : 'scale'}`, facts: { stage: compound.stages.length } },
  { key: 'compound.reset.links', facts: {} },
];

export function cautions(compound: Compound, machineFor: MachineFor, isFelt = false): readonly Caution[] {
  const all = compound.stages.flatMap((station) => machineFor(station).cautions(station, isFelt));
  return all.filter((each, n) => all.findIndex(({ key }) => key === each.key) === n);
}

export const differences = (
  compound: Compound,
  at: At,
  machineFor: MachineFor,
): readonly { readonly key: string; readonly facts: Facts }[] =>
  compound.stages.flatMap((station) => machineFor(station).differences(station, at));

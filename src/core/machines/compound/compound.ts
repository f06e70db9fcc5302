import { isNotDefined, type NotDefined, notDefined } from '../../description/not-defined.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf, type WorkRate } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal, Machine, Station } from '../machine.ts';
import type { Compound } from './station.ts';
import { idealWorking, stagesWorking } from './working.ts';

/** A balance of the whole with the balances that it is made of. */
export interface CompoundBalance extends Balance {
  readonly stages: readonly Balance[];
}

export type MachineFor = (station: Station) => Machine;

/** A load that a stage does not take up: more than rounding of the largest term. */
const CLOSE = 1e-9;

/**
 * Machines in a row at the limit of motion.
 *
 *     W(k+1) = F(k),   F = F(last),   velocity ratio = product of those of the stages
 *
 * Forces are passed on stage by stage, so each stage has the friction that its own load makes it
 * have; no rated efficiencies are multiplied. The account is for a metre of the last pull: what one
 * stage gives and the next takes cancels.
 *
 * Source: OpenStax Physics (high school), 9.3, compound machines. Holds where each stage pulls on
 * the next through a taut link without weight. A stage that would have to be pushed leaves its link
 * slack: raising, nothing is defined; letting back, the whole does not come back, and the effort is
 * the negative pull that is missing, passed on without the friction of stages that do not move.
 */
export function balanceCompound(
  compound: Compound,
  at: At,
  asked: Asked,
  machineFor: MachineFor,
): CompoundBalance | NotDefined {
  const stages: Balance[] = [];
  const askedOf: Asked[] = [];
  let load = asked.load;
  for (const [k, station] of compound.stages.entries()) {
    const stageAsked = { ...asked, load };
    const balance = machineFor(station).balance(station, at, stageAsked);
    if (isNotDefined(balance)) return balance;
    const faulty = k === 0 ? null : brokenChain(balance, stageAsked, k);
    if (faulty !== null) return faulty;
    stages.push(balance);
    askedOf.push(stageAsked);
    if (k === compound.stages.length - 1) break;
    if (balance.effort <= 0) {
      if (asked.direction === 'raise') return notDefined('compound.slack', { stage: k + 1 });
      return stuckAt(compound, at, asked, machineFor, stages);
    }
    load = balance.effort;
  }
  const last = stages.at(-1);
  if (last === undefined) return notDefined('compound.no-stages');
  return {
    kind: 'balance',
    effort: last.effort,
    velocityRatio: productOf(stages.map(({ velocityRatio }) => velocityRatio)),
    work: workOf(stages),
    stages,
    working: () => stagesWorking(stages, askedOf),
  };
}

/** Product of the ideal advantages: the schoolbook's compound machine. */
export function idealAdvantage(compound: Compound, at: At, machineFor: MachineFor): Ideal | NotDefined {
  const ideals: Ideal[] = [];
  for (const station of compound.stages) {
    const ideal = machineFor(station).idealAdvantage(station, at);
    if (isNotDefined(ideal)) return ideal;
    ideals.push(ideal);
  }
  const advantage = ideals.reduce((product, ideal) => product * ideal.advantage, 1);
  return { advantage, working: idealWorking(ideals, advantage) };
}

/** Letting back, a stage stays where it is: the pull missing there, seen from the hand. */
function stuckAt(
  compound: Compound,
  at: At,
  asked: Asked,
  machineFor: MachineFor,
  moving: readonly Balance[],
): CompoundBalance | NotDefined {
  const stuck = moving.at(-1);
  if (stuck === undefined) return notDefined('compound.no-stages');
  // The stages behind it stand still without load; only their ratios are asked for.
  const behind: (number | NotDefined)[] = [];
  for (const station of compound.stages.slice(moving.length)) {
    const still = machineFor(station).balance(station, at, { ...asked, load: newtons(1), grip: 'none' });
    if (isNotDefined(still)) return still;
    behind.push(still.velocityRatio);
  }
  const ratio = productOf(behind);
  if (isNotDefined(ratio)) return ratio;
  const askedOf = moving.map((_, k): Asked => ({ ...asked, load: moving[k - 1]?.effort ?? asked.load }));
  return {
    kind: 'balance',
    effort: newtons(stuck.effort / ratio),
    velocityRatio: productOf([...moving.map(({ velocityRatio }) => velocityRatio), ratio]),
    work: workOf(moving).map((term) => ({ ...term, rate: term.rate / ratio })),
    stages: moving,
    working: () => [
      ...stagesWorking(moving, askedOf),
      {
        heading: 'compound.heading-stuck',
        what: 'compound.missing-pull',
        symbol: 'F',
        formula: 'E/v',
        values: { E: stuck.effort, v: ratio },
        value: stuck.effort / ratio,
        unit: 'N',
        source: 'forces passed on without friction, as these stages stand still',
      },
    ],
  };
}

/** A stage behind the first has to take up the pull before it, or nothing is passed on. */
export function brokenChain(balance: Balance, { load, direction }: Asked, k: number): NotDefined | null {
  const { velocityRatio } = balance;
  if (isNotDefined(velocityRatio)) return velocityRatio;
  const taken = balance.work
    .filter(({ by }) => by === 'load')
    .reduce((sum, { rate }) => sum - signOf(direction) * rate, 0);
  const passed = load / velocityRatio;
  return Math.abs(taken - passed) <= CLOSE * Math.abs(passed)
    ? null
    : notDefined('compound.takes-no-load', { stage: k + 1 });
}

/** Work terms for a metre of the last pull; inside, load and effort cancel and are left out. */
function workOf(stages: readonly Balance[]): readonly WorkRate[] {
  const found: WorkRate[] = [];
  for (const [k, stage] of stages.entries()) {
    const ratio = productOf(stages.slice(k + 1).map(({ velocityRatio }) => velocityRatio));
    const travel = isNotDefined(ratio) ? 0 : 1 / ratio;
    for (const { by, cause, rate } of stage.work) {
      const isInside = (by === 'load' && k > 0) || (by === 'effort' && k < stages.length - 1);
      if (!isInside) found.push({ by, cause, rate: rate * travel });
    }
  }
  return found;
}

const productOf = (ratios: readonly (number | NotDefined)[]): number | NotDefined =>
  ratios.reduce<number | NotDefined>((product, ratio) => {
    if (isNotDefined(product)) return product;
    return isNotDefined(ratio) ? ratio : product * ratio;
  }, 1);

import { isNotDefined, type NotDefined, notDefined } from '../../description/not-defined.ts';
import { type Newtons, newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, type Direction, signOf } from '../../statics/balance.ts';
import { easeOver, haulOver, sheaveDrag } from '../../statics/sheave.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import { blocksAlongTheLine, type Tackle } from './station.ts';
import { tackleWorking } from './working.ts';

/**
 * The tackle at the limit of motion, from the tension in each part of line.
 *
 *     T(k+1) = [T(k) (1 ± s/2) ± c] / (1 ∓ s/2)     from the dead end, over each sheave, to the hand
 *     W + B  = [T(1) + ... + T(n)] cos(x)            balance of the moving block
 *
 * with s and c the drag of the sheave passed, x the lean of the parts and B the weight of the moving
 * block; upper signs raise. Every tension is a line in T(1), so T(1) follows without iteration. The
 * hauled part belongs to the sum where the fall leaves the moving block. Guide pulleys follow last.
 *
 * Source: balance of the moving block, OpenStax College Physics 2e, 9.5; drag of a sheave:
 * `statics/sheave.ts`. Holds for taut parts that all lean alike. Neglects the line's own weight,
 * its rubbing on the cheeks, and a block that hangs askew.
 */
export function balanceTackle(tackle: Tackle, at: At, asked: Asked): Balance | NotDefined {
  const found = tensions(tackle, at, asked);
  if (isNotDefined(found)) return found;
  const { passed, parts, hauled, block, lean } = found;
  const n = tackle.parts;
  const sense = signOf(asked.direction);
  const ratio = n * Math.cos(lean);
  const along = [...parts, ...found.fall];
  const lossAt = (where: Where): number =>
    passed.reduce((sum, sheave, k) => {
      const near = along[k];
      const far = along[k + 1];
      if (sheave.where !== where || near === undefined || far === undefined) return sum;
      // k parts lie behind this sheave, each shortening alike: so much line runs over it.
      const runs = Math.min(k + 1, n) / n;
      return sum - sheaveDrag(near, far, sheave.share, sheave.constant) * runs;
    }, 0);
  const losses = (['fixed', 'moving', 'guide'] as const)
    .filter((where) => passed.some((sheave) => sheave.where === where))
    .map((where) => ({ by: 'loss', cause: `tackle.loss-${where}`, rate: lossAt(where) }) as const);
  return {
    kind: 'balance',
    effort: hauled,
    velocityRatio: ratio,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * hauled },
      { by: 'load', cause: 'load', rate: (-sense * asked.load) / ratio },
      { by: 'dead weight', cause: 'tackle.moving-block', rate: (-sense * block) / ratio },
      ...losses,
    ],
    working: () => tackleWorking(tackle, at, asked, found),
  };
}

/** Parts of line that pull on the moving block: the schoolbook's tackle, all parts upright. */
export function idealAdvantage(tackle: Tackle): Ideal {
  return {
    advantage: tackle.parts,
    working: [
      {
        what: 'tackle.ideal-advantage',
        symbol: 'A',
        formula: 'n',
        values: { n: tackle.parts },
        value: tackle.parts,
        unit: '1',
        source: 'OpenStax College Physics 2e, 9.5',
      },
    ],
  };
}

type Where = 'fixed' | 'moving' | 'guide';

/** A sheave that the line passes, with its letter in the working. */
export interface Passed {
  readonly where: Where;
  readonly letter: string;
  readonly share: number;
  readonly constant: Newtons;
}

export interface Tensions {
  readonly passed: readonly Passed[];
  /** Tension in the parts on the moving block, from the dead end. */
  readonly parts: readonly Newtons[];
  /** Tension behind each further sheave; the last one is hauled. */
  readonly fall: readonly Newtons[];
  readonly hauled: Newtons;
  readonly block: Newtons;
  readonly lean: number;
}

export function tensions(tackle: Tackle, at: At, asked: Asked): Tensions | NotDefined {
  const passed = sheavesPassed(tackle, at, asked);
  const block = newtons(at(tackle.inputs.blockMass) * asked.gravity);
  const lean = at(tackle.inputs.lean);
  // T(k) = slope(k) T(1) + rest(k)
  let slope = newtons(1);
  let rest = newtons(0);
  let slopes = 1;
  let rests = 0;
  for (const sheave of passed.slice(0, tackle.parts - 1)) {
    slope = newtons(slope * gain(asked.direction, sheave));
    rest = over(asked.direction, rest, sheave);
    slopes += slope;
    rests += rest;
  }
  const first = newtons(((asked.load + block) / Math.cos(lean) - rests) / slopes);
  if (asked.direction === 'raise' && first < 0)
    return notDefined('tackle.slack', {
      load: { si: asked.load, dimension: 'force' },
      drag: { si: rests, dimension: 'force' },
    });
  const along = [first];
  for (const sheave of passed) along.push(over(asked.direction, along.at(-1) ?? first, sheave));
  return {
    passed,
    parts: along.slice(0, tackle.parts),
    fall: along.slice(tackle.parts),
    hauled: along.at(-1) ?? first,
    block,
    lean,
  };
}

/** The sheaves from the dead end to the hand. */
function sheavesPassed(tackle: Tackle, at: At, { grip }: Asked): readonly Passed[] {
  const { inputs } = tackle;
  const drag = (share: typeof inputs.fixedShare, constant: typeof inputs.fixedConstant) =>
    grip === 'none' ? { share: 0, constant: newtons(0) } : { share: at(share), constant: at(constant) };
  const guides: readonly Passed[] = [
    { where: 'guide', letter: 'g', ...drag(inputs.guideShare, inputs.guideConstant) },
    { where: 'guide', letter: 'h', ...drag(inputs.secondGuideShare, inputs.secondGuideConstant) },
  ];
  return [
    ...blocksAlongTheLine(tackle.parts, tackle.fallLeaves).map(
      (block): Passed =>
        block === 'fixed block'
          ? { where: 'fixed', letter: 'f', ...drag(inputs.fixedShare, inputs.fixedConstant) }
          : { where: 'moving', letter: 'm', ...drag(inputs.movingShare, inputs.movingConstant) },
    ),
    ...guides.slice(0, tackle.guides),
  ];
}

const over = (direction: Direction, near: Newtons, { share, constant }: Passed): Newtons =>
  (direction === 'raise' ? haulOver : easeOver)(near, share, constant);

const gain = (direction: Direction, { share }: Passed): number =>
  over(direction, newtons(1), { share, constant: newtons(0) } as Passed);

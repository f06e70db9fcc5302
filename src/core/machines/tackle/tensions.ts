import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { type Newtons, newtons } from '../../quantities/brands.ts';
import type { Asked, Direction } from '../../statics/balance.ts';
import { easeOver, haulOver } from '../../statics/sheave.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { blocksAlongTheLine, type Tackle } from './station.ts';

/** Where a sheave sits: its losses are told apart by that. */
export type Where = 'fixed' | 'moving' | 'guide';

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

/** The tension in every part of the line, from the dead end to the hand. */
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

import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { angleFact, forceFact, massFact } from '../../diagnostics/facts.ts';
import { readingOfHungLoad } from '../../parts/hung-load-paper.ts';
import type { WayOfReading } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { blocksAlongTheLine, deadEnd, sheavesNeeded, type Tackle } from './station.ts';

export { drawing } from './drawing.ts';

const step = (name: string, facts: Facts = {}): Step => ({ key: `tackle.step.${name}`, facts });
/** A block by its mark where it has one, as the block that it is here. */
const blockStep = (name: string, mark: string | undefined): Step =>
  mark === undefined ? step(name) : step(`${name}-named`, { mark });

/** How the tackle is rove and hung, one action a step. */
export function steps(tackle: Tackle, isFelt = false): readonly Step[] {
  const single = tackle.parts === 1;
  const hand = isFelt ? '-hand' : '';
  return [
    ...(single ? overOnePulley(tackle) : reeving(tackle)),
    ...(tackle.guides === 0 ? [] : [step(tackle.guides === 1 ? 'guide' : 'guides')]),
    step(single ? 'load-line' : 'load-block'),
    step(`hook${hand}`),
    step(`pull-${tackle.pull}${hand}`),
  ];
}

const overOnePulley = (tackle: Tackle): readonly Step[] => [
  blockStep('hang-pulley', tackle.blocks?.fixed),
  step('lay-over'),
  ...(tackle.sheaves.fixed > 1 ? [step('empty-pulley', { above: tackle.sheaves.fixed - 1 })] : []),
];

/** From the dead end to the free one: the first two sheaves tell how it goes on. */
function reeving(tackle: Tackle): readonly Step[] {
  const { parts, fallLeaves, blocks } = tackle;
  const along = blocksAlongTheLine(parts, fallLeaves);
  const { moving } = blocks ?? {};
  return [
    ...(along.includes('fixed block') ? [blockStep('hang-fixed', blocks?.fixed)] : []),
    ...(moving === undefined ? [] : [step('lay-moving-named', { mark: moving })]),
    step(deadEnd(tackle) === 'fixed block' ? 'tie-above' : 'tie-below'),
    ...along.slice(0, 2).map((block) => step(block === 'fixed block' ? 'lead-over' : 'lead-under')),
    ...(along.length > 2 ? [step('lead-on')] : []),
    ...leftEmpty(tackle),
    step('count', { parts }),
  ];
}

/** Sheaves that the line passes by: nobody need wonder what they are for. */
function leftEmpty({ parts, fallLeaves, sheaves }: Tackle): readonly Step[] {
  const needed = sheavesNeeded(parts, fallLeaves);
  const above = needed.fixed === 0 ? 0 : sheaves.fixed - needed.fixed;
  const below = needed.moving === 0 ? 0 : sheaves.moving - needed.moving;
  if (above > 0 && below > 0) return [step('empty', { above, below })];
  if (above > 0) return [step('empty-above', { above })];
  return below > 0 ? [step('empty-below', { below })] : [];
}

export const reading = (_: Tackle, way: WayOfReading): readonly Step[] => readingOfHungLoad[way];

const isRoveAlike = (a: Tackle, b: Tackle): boolean =>
  a.parts === b.parts &&
  a.fallLeaves === b.fallLeaves &&
  a.blocks?.fixed === b.blocks?.fixed &&
  a.blocks?.moving === b.blocks?.moving;

/** The load comes down first; where the line is rove otherwise, it comes out as far as it has to. */
export function between(from: Tackle, to: Tackle): readonly Step[] {
  const load: Step = { key: 'tackle.reset.load', facts: {} };
  if (isRoveAlike(from, to)) return [load];
  const same = { ...to, parts: from.parts };
  const goesOn = isRoveAlike(from, same) && deadEnd(from) === deadEnd(to);
  const out = !goesOn
    ? [step('take-out')]
    : to.parts < from.parts
      ? [step('pull-back', { parts: to.parts })]
      : [];
  return [load, { key: 'tackle.reset.scale', facts: {} }, ...out];
}

/** The load comes down before the scale comes off, so that nothing falls; the line stays rove. */
export const reset = (tackle: Tackle, isFelt = false): readonly Step[] => [
  { key: 'tackle.reset.load', facts: {} },
  { key: isFelt ? 'tackle.reset.hand' : 'tackle.reset.scale', facts: {} },
  tackle.parts === 1
    ? { key: 'tackle.reset.single-line', facts: {} }
    : { key: 'tackle.reset.line', facts: { parts: tackle.parts } },
];

export const cautions = (): readonly Caution[] => [
  { key: 'caution.falling-loads', facts: {}, source: 'falling loads' },
  { key: 'caution.fingers', facts: {}, source: 'fingers' },
];

/** What the tackle on the table has and the count of parts leaves out. */
export function differences(
  tackle: Tackle,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const { inputs } = tackle;
  const needed = sheavesNeeded(tackle.parts, tackle.fallLeaves);
  const count = needed.fixed + needed.moving + tackle.guides;
  const shares = [inputs.fixedShare, inputs.movingShare, inputs.guideShare, inputs.secondGuideShare];
  const constant = Math.max(
    ...[inputs.fixedConstant, inputs.movingConstant, inputs.guideConstant, inputs.secondGuideConstant].map(
      at,
    ),
  );
  return [
    ...(at(inputs.blockMass) === 0
      ? []
      : [{ key: 'tackle.difference.block', facts: { mass: massFact(at(inputs.blockMass)) } }]),
    ...(shares.every((share) => at(share) === 0)
      ? []
      : [{ key: 'tackle.difference.sheaves', facts: { sheaves: count } }]),
    ...(constant === 0
      ? []
      : [{ key: 'tackle.difference.constant-drag', facts: { drag: forceFact(constant) } }]),
    ...(at(inputs.lean) === 0
      ? []
      : [{ key: 'tackle.difference.lean', facts: { lean: angleFact(at(inputs.lean)) } }]),
  ];
}

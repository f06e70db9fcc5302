import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { angleFact, forceFact, massFact } from '../../diagnostics/facts.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { sheavesNeeded, type Tackle } from './station.ts';

export { drawing } from './drawing.ts';

/** How the tackle is rove and hung, one action a step. */
export function steps(tackle: Tackle): readonly Step[] {
  const single = tackle.parts === 1;
  const needed = sheavesNeeded(tackle.parts, tackle.fallLeaves);
  const step = (name: string, facts: Facts = {}): Step => ({ key: `tackle.step.${name}`, facts });
  return [
    ...(needed.fixed === 0 ? [step('tie')] : [step(single ? 'hang-pulley' : 'hang-fixed')]),
    ...(single
      ? [step('lay-over')]
      : [
          step(tackle.fallLeaves === 'fixed block' ? 'reeve-fixed' : 'reeve-moving', { parts: tackle.parts }),
          step('count', { parts: tackle.parts }),
        ]),
    ...(tackle.guides === 0 ? [] : [step('guide')]),
    step(single ? 'load-line' : 'load-block'),
    step('hook'),
    step(`pull-${tackle.pull}`),
  ];
}

/** The load comes down before the scale comes off, so that nothing falls; the line stays rove. */
export const reset = (tackle: Tackle): readonly Step[] => [
  { key: 'tackle.reset.load', facts: {} },
  { key: 'tackle.reset.scale', facts: {} },
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

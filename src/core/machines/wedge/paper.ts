import { isNotDefined } from '../../description/not-defined.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { forceFact, lengthFact } from '../../diagnostics/facts.ts';
import { readAtPeak, readAtRest, readInPassing } from '../../parts/hung-load-paper.ts';
import { newtons } from '../../quantities/brands.ts';
import type { WayOfReading } from '../../statics/balance.ts';
import { type At, atBest } from '../../uncertainty/propagate.ts';
import { blowOn } from './blow.ts';
import { driveOf, opening, type Wedge } from './station.ts';
import { isSelfHolding } from './wedge.ts';

/** How the wedge is set up and driven, one action a step. */
export function steps(wedge: Wedge, isFelt = false): readonly Step[] {
  const step = (name: string, facts: Facts = {}): Step => ({ key: `wedge.step.${name}`, facts });
  return [
    ...(wantsGlasses(wedge) ? [step('glasses')] : []),
    ...(wedge.form === 'lifting'
      ? [step('load-against-stop'), step('edge-under-load')]
      : [step('blocks'), ...(wedge.hasCords ? [step('cords-on')] : []), step('edge-in-gap')]),
    ...drivenSteps(wedge, isFelt),
  ];
}

/** How the hand drives it: with the wedge itself, or with a scale on a string from its edge. */
function drivenSteps(wedge: Wedge, isFelt: boolean): readonly Step[] {
  const step = (name: string, facts: Facts = {}): Step => ({ key: `wedge.step.${name}`, facts });
  const mark = wedge.hasMark ? { advance: lengthFact(atBest(wedge.inputs.advance)) } : null;
  const { malletFalls } = wedge.inputs;
  switch (driveOf(wedge, isFelt)) {
    case 'struck':
      return [
        step('hold'),
        malletFalls === undefined
          ? step('strike-lightly')
          : step('strike', { falls: lengthFact(atBest(malletFalls)) }),
        ...(mark === null ? [] : [step('strike-on', mark)]),
      ];
    case 'pushed':
      return [mark === null ? step('push-in') : step('push-to-mark', mark)];
    case 'pulled':
      return [
        step(wedge.form === 'lifting' ? 'string-under-load' : 'string-through-gap'),
        step('hook'),
        step(`pull-${wedge.pushed}`),
      ];
  }
}

/** Read in one place only, where the setup says how far the wedge is in. */
export function reading(wedge: Wedge, way: WayOfReading): readonly Step[] | null {
  if (!wedge.hasMark) return null;
  const facts = { advance: lengthFact(atBest(wedge.inputs.advance)) };
  const step = (name: string): Step => ({ key: `wedge.step.${name}`, facts });
  if (way === 'held') return [step('hold-at-mark'), readAtRest];
  if (way === 'start') return [step('stop-at-mark'), ...readAtPeak];
  return readInPassing(step('read-at-mark'), { key: 'wedge.step.creep', facts: {} }, way);
}

/** What can fly: cords that are stretched, splinters under a mallet. */
const wantsGlasses = (wedge: Wedge): boolean => wedge.hasCords || wedge.inputs.malletMass !== undefined;

/** The one wedge comes out before another goes in. */
export const between = (from: Wedge): readonly Step[] => [outOf(from)];

const outOf = ({ form }: Wedge): Step => ({
  key: form === 'lifting' ? 'wedge.reset.out-from-under' : 'wedge.reset.out-of-gap',
  facts: {},
});

/** The wedge comes out before the cords come off; cords are never left stretched. */
export function reset(wedge: Wedge): readonly Step[] {
  const tray: Step = {
    key: wantsGlasses(wedge) ? 'wedge.reset.tray-glasses' : 'wedge.reset.tray',
    facts: {},
  };
  if (wedge.form === 'lifting')
    return [outOf(wedge), { key: 'wedge.reset.load-against-stop', facts: {} }, tray];
  return [
    outOf(wedge),
    wedge.hasCords
      ? { key: 'wedge.reset.cords-off', facts: {} }
      : { key: 'wedge.reset.close-gap', facts: {} },
    tray,
  ];
}

/** A mallet is no tool for pupils alone: its caution, which asks for an adult, stands only where there is one. */
export const cautions = (wedge: Wedge): readonly Caution[] => [
  { key: 'caution.fingers', facts: {}, source: 'fingers' },
  ...(wedge.hasCords ? [{ key: 'caution.elastic-cords', facts: {}, source: 'elastic cords' }] : []),
  ...(wantsGlasses(wedge) ? [{ key: 'caution.eye-protection', facts: {}, source: 'eye protection' }] : []),
  ...(wedge.inputs.malletMass === undefined
    ? []
    : [{ key: 'caution.hammers-and-mallets', facts: {}, source: 'hammers and mallets' }]),
];

/** What the wedge on the table has and the schoolbook's wedge leaves out. */
export function differences(
  wedge: Wedge,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const { faceFriction, baseFriction, stopFriction, mass } = wedge.inputs;
  const weighs = at(mass) > 0;
  const baseRubs = at(baseFriction) > 0 && (wedge.form === 'lifting' || weighs);
  const blow = wedge.hasCords ? blowOn(wedge, at, newtons(0)) : null;
  return [
    ...(at(faceFriction) === 0
      ? []
      : [{ key: `wedge.difference.${wedge.form}-faces`, facts: { friction: at(faceFriction) } }]),
    ...(baseRubs && wedge.pushed === 'level'
      ? [{ key: 'wedge.difference.base', facts: { friction: at(baseFriction) } }]
      : []),
    ...(at(stopFriction) > 0 && wedge.form === 'lifting'
      ? [{ key: 'wedge.difference.stop', facts: { friction: at(stopFriction) } }]
      : []),
    ...(weighs && wedge.pushed === 'down'
      ? [
          {
            key: 'wedge.difference.own-weight',
            facts: { mass: { si: at(mass), dimension: 'mass' } },
          } as const,
        ]
      : []),
    ...(wedge.hasCords
      ? [{ key: 'wedge.difference.cords', facts: { opening: lengthFact(opening(wedge, at)) } }]
      : []),
    ...(isSelfHolding(wedge, at) ? [{ key: 'wedge.difference.stays', facts: {} }] : []),
    ...(blow === null || isNotDefined(blow)
      ? []
      : [
          {
            key: 'wedge.difference.blow',
            facts: { advance: lengthFact(blow.advance), force: forceFact(blow.meanForce) },
          },
        ]),
  ];
}

import { isNotDefined } from '../../description/not-defined.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { forceFact, lengthFact } from '../../diagnostics/facts.ts';
import { newtons } from '../../quantities/brands.ts';
import { type At, atBest } from '../../uncertainty/propagate.ts';
import { blowOn } from './blow.ts';
import { opening, type Wedge } from './station.ts';
import { isSelfHolding } from './wedge.ts';

/** How the wedge is set up and pushed, one action a step. */
export function steps(wedge: Wedge, isFelt = false): readonly Step[] {
  const start: Step[] =
    wedge.form === 'lifting'
      ? [
          { key: 'wedge.step.load-against-stop', facts: {} },
          { key: 'wedge.step.edge-under-load', facts: {} },
        ]
      : [
          ...(wedge.hasCords ? [{ key: 'wedge.step.cords-on', facts: {} }] : []),
          { key: 'wedge.step.edge-in-gap', facts: {} },
        ];
  const advance = lengthFact(atBest(wedge.inputs.advance));
  if (isFelt)
    return [
      ...start,
      wedge.hasMark
        ? { key: 'wedge.step.push-to-mark', facts: { advance } }
        : { key: 'wedge.step.push-in', facts: {} },
    ];
  return [
    ...start,
    { key: wedge.pushed === 'down' ? 'wedge.step.pull-down' : 'wedge.step.pull-level', facts: {} },
    wedge.hasMark
      ? { key: 'wedge.step.read-at-mark', facts: { advance } }
      : { key: 'wedge.step.pull-on', facts: {} },
  ];
}

/** The wedge comes out before the cords come off; cords are never left stretched. */
export function reset(wedge: Wedge): readonly Step[] {
  const tray: Step = { key: 'wedge.reset.tray', facts: {} };
  if (wedge.form === 'lifting')
    return [
      { key: 'wedge.reset.out-from-under', facts: {} },
      { key: 'wedge.reset.load-against-stop', facts: {} },
      tray,
    ];
  return [
    { key: 'wedge.reset.out-of-gap', facts: {} },
    wedge.hasCords
      ? { key: 'wedge.reset.cords-off', facts: {} }
      : { key: 'wedge.reset.close-gap', facts: {} },
    tray,
  ];
}

export const cautions = (wedge: Wedge): readonly Caution[] => [
  { key: 'caution.fingers', facts: {}, source: 'fingers' },
  ...(wedge.hasCords
    ? [
        { key: 'caution.elastic-cords', facts: {}, source: 'elastic cords' },
        { key: 'caution.eye-protection', facts: {}, source: 'eye protection' },
      ]
    : []),
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

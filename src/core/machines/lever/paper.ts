import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { angleFact } from '../../diagnostics/facts.ts';
import { readAtPeak, readAtRest, readInPassing } from '../../parts/hung-load-paper.ts';
import type { Metres } from '../../quantities/brands.ts';
import type { WayOfReading } from '../../statics/balance.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import { type At, atBest } from '../../uncertainty/propagate.ts';
import { arms } from './lever.ts';
import { classOf, type Lever } from './station.ts';

/** Where a hook goes, as the apparatus names it: a hole number, or a distance from the left end. */
const placeFacts = (at: Measured<Metres>, hole: number | undefined): Facts =>
  hole === undefined ? { at: { si: at.value, dimension: 'length' } } : { hole };
const suffix = (hole: number | undefined): string => (hole === undefined ? 'distance' : 'hole');

/** How the station is set up, one action a step. */
export function steps(lever: Lever, isFelt = false): readonly Step[] {
  const { fulcrum, load, pull } = lever.inputs;
  const { holes } = lever;
  const down = classOf(lever, atBest) === 'first';
  const hand = isFelt ? '-hand' : '';
  return [
    ...([holes.fulcrum, holes.load, holes.pull].includes(undefined)
      ? [{ key: 'lever.step.measure', facts: {} }]
      : []),
    {
      key: `lever.step.fulcrum-${suffix(holes.fulcrum)}`,
      facts: placeFacts(fulcrum, holes.fulcrum),
    },
    {
      key: `lever.step.load-${suffix(holes.load)}`,
      facts: placeFacts(load, holes.load),
    },
    {
      key: `lever.step.pull-${suffix(holes.pull)}${hand}`,
      facts: placeFacts(pull, holes.pull),
    },
    { key: `lever.step.pull-${down ? 'down' : 'up'}${hand}`, facts: {} },
  ];
}

/** Read in one place only: at the tilt that the figures hold for. */
export function reading({ inputs }: Lever, way: WayOfReading): readonly Step[] {
  const tilt = inputs.tilt.value;
  const place = tilt === 0 ? 'level' : tilt > 0 ? 'load-up' : 'load-down';
  const facts: Facts = tilt === 0 ? {} : { angle: angleFact(Math.abs(tilt)) };
  const step = (name: string): Step => ({ key: `lever.step.${name}-${place}`, facts });
  if (way === 'held') return [step('hold'), readAtRest];
  if (way === 'start') return [step('prop'), ...readAtPeak];
  return readInPassing(step('read'), { key: 'lever.step.creep', facts: {} }, way);
}

/** Load and scale come off; the pin stays where the next group needs it. */
export const reset = ({ holes, inputs }: Lever, isFelt = false): readonly Step[] => [
  { key: 'lever.reset.load', facts: {} },
  { key: isFelt ? 'lever.reset.hand' : 'lever.reset.scale', facts: {} },
  {
    key: `lever.reset.fulcrum-${suffix(holes.fulcrum)}`,
    facts: placeFacts(inputs.fulcrum, holes.fulcrum),
  },
];

export const cautions = (): readonly Caution[] => [
  { key: 'caution.fingers', facts: {}, source: 'fingers' },
  { key: 'caution.falling-loads', facts: {}, source: 'falling loads' },
];

/** What the bar on the table has and the schoolbook's lever leaves out. */
export function differences(
  lever: Lever,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const { b } = arms(lever, at);
  return [
    ...(at(lever.inputs.barMass) === 0 || Math.abs(b) < 1e-6
      ? []
      : [
          {
            key: b > 0 ? 'lever.difference.bar-against' : 'lever.difference.bar-helps',
            facts: {
              mass: { si: at(lever.inputs.barMass), dimension: 'mass' },
              arm: { si: Math.abs(b), dimension: 'length' },
            },
          } as const,
        ]),
    ...(at(lever.inputs.pinFriction) * at(lever.inputs.pinRadius) === 0
      ? []
      : [
          {
            key: 'lever.difference.pin',
            facts: { friction: at(lever.inputs.pinFriction) },
          },
        ]),
  ];
}

/** The bar to scale with its numbered holes, the pin at the origin of the drawing. */
export function drawing(lever: Lever, at: At): Drawing {
  const zero = at(lever.inputs.fulcrum);
  const tilt = arms(lever, at).raises * at(lever.inputs.tilt);
  const above = at(lever.inputs.holesAbove);
  const turned = (along: number, up: number): Point => [
    (along - zero) * Math.cos(tilt) - up * Math.sin(tilt),
    (along - zero) * Math.sin(tilt) + up * Math.cos(tilt),
  ];
  const length = at(lever.inputs.barLength);
  const thickness = Math.max(0.012, length / 40);
  const load = turned(at(lever.inputs.load), above);
  const pull = turned(at(lever.inputs.pull), above);
  const down = classOf(lever, at) === 'first';
  const used = new Set(Object.values(lever.holes));
  const bar: Shape = {
    shape: 'body',
    role: 'bar',
    outline: [
      turned(0, -thickness / 2),
      turned(length, -thickness / 2),
      turned(length, thickness / 2),
      turned(0, thickness / 2),
    ],
  };
  const holes = lever.holePositions.map(
    (position, n): Shape => ({
      shape: 'hole',
      centre: turned(at(position), above),
      radius: thickness / 6,
      number: n + 1,
      ...(used.has(n + 1) ? { used: true } : {}),
    }),
  );
  return {
    shapes: [
      bar,
      ...holes,
      { shape: 'pivot', at: [0, 0], stand: down ? 'below' : 'above' },
      { shape: 'load', hook: load, label: 'load' },
      {
        shape: 'effort',
        from: pull,
        direction: down ? -Math.PI / 2 : Math.PI / 2,
        newtons: 0,
        scale: down ? 'upside down' : 'hook down',
      },
      {
        shape: 'measure',
        from: [0, 0],
        to: [load[0], 0],
        offset: -1,
        metres: Math.abs(load[0]),
      },
      {
        shape: 'measure',
        from: [0, 0],
        to: [pull[0], 0],
        offset: -2,
        metres: Math.abs(pull[0]),
      },
    ],
  };
}

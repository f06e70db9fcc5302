import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import { lengthFact, massFact, ratioFact } from '../../diagnostics/facts.ts';
import {
  loadCreepsBack,
  readAtPeak,
  readAtRest,
  readInPassing,
  readingOfHungLoad,
} from '../../parts/hung-load-paper.ts';
import type { WayOfReading } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Windlass } from './station.ts';
import { arms, directionOf } from './windlass.ts';

/** A pull that leans less than this from straight down, level or up is that, as far as a hand can tell. */
const PLAIN = 0.05;
const step = (name: string, facts: Facts = {}): Step => ({ key: `windlass.step.${name}`, facts });
/** A line by its mark where it has one, as the line that it is here. */
const lineStep = (name: string, mark: string | undefined): Step =>
  mark === undefined ? step(name) : step(`${name}-named`, { mark });

/**
 * How the station is set up, one action a step: the load down, the axle line unwound but for a turn, the
 * wheel line wound full, so that the one winds up what the other gives off.
 */
export function steps(windlass: Windlass, isFelt = false): readonly Step[] {
  const { layers, turnedBy, pull, lines } = windlass;
  const isPlain = Math.abs(windlass.inputs.lean.value) < PLAIN;
  const hand = isFelt ? '-hand' : '';
  return [
    lineStep('tie-axle', lines?.axle),
    ...(layers === 0 ? [step('wind-once')] : [step('wind-layers', { layers }), step('wind-on-top')]),
    ...(turnedBy === 'crank' ? [] : [lineStep('tie-wheel', lines?.wheel), step('wind-wheel')]),
    step('load'),
    step(`hook-${turnedBy}${hand}`),
    step('side-by-side'),
    step(isPlain ? `pull-${pull}${hand}` : `pull-leaning${hand}`),
  ];
}

/** By the wheel the pull is the same all round; by the crank it is read in one place. */
export function reading({ turnedBy }: Windlass, way: WayOfReading): readonly Step[] {
  if (turnedBy === 'wheel') return readingOfHungLoad[way];
  if (way === 'held') return [step('hold-square'), readAtRest];
  if (way === 'start') return [step('set-square'), ...readAtPeak];
  return readInPassing(step('read-square'), loadCreepsBack, way);
}

/** Another load, or the line wound otherwise: the load comes down first. */
export const between = (): readonly Step[] => [{ key: 'windlass.reset.load', facts: {} }];

/** The load comes down before the scale comes off, so that nothing runs away. */
export const reset = (windlass: Windlass, isFelt = false): readonly Step[] => [
  { key: 'windlass.reset.load', facts: {} },
  { key: `windlass.reset.${isFelt ? 'hand' : 'scale'}-${windlass.turnedBy}`, facts: {} },
  { key: `windlass.reset.lines-${windlass.turnedBy}`, facts: {} },
];

export const cautions = (): readonly Caution[] => [
  { key: 'caution.falling-loads', facts: {}, source: 'falling loads' },
  { key: 'caution.fingers', facts: {}, source: 'fingers' },
];

/** What the windlass on the table has and the schoolbook's wheel and axle leaves out. */
export function differences(
  windlass: Windlass,
  at: At,
): readonly { readonly key: string; readonly facts: Facts }[] {
  const { inputs, layers } = windlass;
  const thickness = at(inputs.axleLine);
  const rubs = at(inputs.bearingFriction) * at(inputs.bearingRadius) !== 0;
  return [
    ...(thickness === 0
      ? []
      : [{ key: 'windlass.difference.line', facts: { thickness: lengthFact(thickness) } }]),
    ...(layers === 0 || thickness === 0 ? [] : [{ key: 'windlass.difference.layers', facts: { layers } }]),
    ...(rubs
      ? [{ key: 'windlass.difference.bearing', facts: { friction: ratioFact(at(inputs.bearingFriction)) } }]
      : []),
    ...(rubs && at(inputs.drumMass) !== 0
      ? [{ key: 'windlass.difference.drum', facts: { mass: massFact(at(inputs.drumMass)) } }]
      : []),
  ];
}

/** The drum to scale, seen along its axle; the load hangs on the left of it. */
export function drawing(windlass: Windlass, at: At): Drawing {
  const { inputs, turnedBy } = windlass;
  const { a, c } = arms(windlass, at);
  const R = at(inputs.wheelRadius);
  const r = at(inputs.axleRadius);
  const reach = Math.max(R, r);
  const low = -1.6 * reach;
  const direction = directionOf(windlass, at);
  // Square to the pull, on the side where it turns the drum against the load on the left.
  const square = direction + Math.PI / 2;
  const rim: Point = [c * Math.cos(square), c * Math.sin(square)];
  const hook: Point =
    turnedBy === 'crank'
      ? rim
      : [rim[0] + 0.8 * reach * Math.cos(direction), rim[1] + 0.8 * reach * Math.sin(direction)];
  const wheel: Shape =
    turnedBy === 'crank'
      ? { shape: 'body', role: 'bar', outline: crank(rim, r) }
      : { shape: 'wheel', centre: [0, 0], radius: R, role: 'wheel' };
  return {
    shapes: [
      wheel,
      { shape: 'wheel', centre: [0, 0], radius: r, role: 'axle' },
      { shape: 'pivot', at: [0, 0], stand: 'below' },
      {
        shape: 'line',
        path: [
          [-a, 0],
          [-a, low],
        ],
        key: 'windlass.drawing.axle-line',
      },
      beside([-a, 0.85 * low], [-1, 0], 'axle-line', reach),
      { shape: 'load', hook: [-a, low], label: 'load' },
      ...(turnedBy === 'crank' ? [] : wheelLine(rim, hook, square, reach)),
      {
        shape: 'effort',
        from: hook,
        direction,
        newtons: 0,
        scale: ({ down: 'upside down', level: 'level', up: 'hook down' } as const)[windlass.pull],
      },
      { shape: 'measure', from: [0, 0], to: [-a, 0], offset: 1, metres: a },
      { shape: 'measure', from: [0, 0], to: rim, offset: 2, metres: c },
    ],
  };
}

/** Dashed, so that nobody takes one line for the other. */
function wheelLine(rim: Point, hook: Point, square: number, reach: number): readonly Shape[] {
  const middle: Point = [(rim[0] + hook[0]) / 2, (rim[1] + hook[1]) / 2];
  return [
    { shape: 'line', path: [rim, hook], dashed: true, key: 'windlass.drawing.wheel-line' },
    beside(middle, [Math.cos(square), Math.sin(square)], 'wheel-line', reach),
  ];
}

/** The name of a line on the side of it that is free. */
function beside([x, y]: Point, [dx, dy]: Point, name: string, reach: number): Shape {
  const anchor = Math.abs(dx) < 0.4 ? {} : ({ anchor: dx < 0 ? 'end' : 'start' } as const);
  const off = 0.12 * reach;
  return {
    shape: 'label',
    at: [x + off * dx, y + off * dy],
    key: `windlass.label.${name}`,
    facts: {},
    ...anchor,
  };
}

/** A flat arm from the axle to where the hand pulls. */
function crank([x, y]: Point, r: number): readonly Point[] {
  const length = Math.hypot(x, y);
  const [sx, sy] = [(-y / length) * r * 0.4, (x / length) * r * 0.4];
  return [
    [sx, sy],
    [x + sx, y + sy],
    [x - sx, y - sy],
    [-sx, -sy],
  ];
}

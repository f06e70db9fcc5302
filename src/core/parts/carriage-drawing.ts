import type { Point, Shape } from '../description/drawing.ts';
import type { Ride } from '../statics/carriage.ts';
import type { At } from '../uncertainty/propagate.ts';

/** Sizes that only the picture needs, where the kit does not say: metres, no claim about the part. */
export const CARRIAGE_LENGTH = 0.12;
const HEIGHT = 0.03;
/** Room between the load and the word above it. */
const ABOVE = 0.02;

export interface DrawnCarriage {
  readonly shapes: readonly Shape[];
  /** What it carries, with its name. */
  readonly load: readonly Shape[];
  /** Where the string is tied: middle of the front face. */
  readonly hook: Point;
}

/**
 * A carriage with its load on top, its middle at `along` metres up a line from the origin that rises by
 * `angle`. The pull is towards the upper end.
 */
export function drawCarriage(ride: Ride, at: At, along: number, angle: number): DrawnCarriage {
  const turned = (x: number, y: number): Point => [
    (along + x) * Math.cos(angle) - y * Math.sin(angle),
    (along + x) * Math.sin(angle) + y * Math.cos(angle),
  ];
  const box = (from: number, to: number, low: number, high: number): readonly Point[] => [
    turned(from, low),
    turned(to, low),
    turned(to, high),
    turned(from, high),
  ];
  const half = CARRIAGE_LENGTH / 2;
  const under = undersideOf(ride, at);
  const floor = ride.rides === 'bare base' ? 0 : under.clearance;
  const height = ride.rides === 'bare base' ? HEIGHT : HEIGHT / 3;
  return {
    hook: turned(half, floor + height / 2),
    shapes: [
      ...under.centres.map(
        (x): Shape => ({
          shape: 'wheel',
          centre: turned(x * half, under.radius),
          radius: under.radius,
          role: ride.rides === 'rollers' ? 'roller' : 'wheel',
        }),
      ),
      {
        shape: 'body',
        role: ride.rides === 'wheels' ? 'cart' : 'block',
        outline: box(-half, half, floor, floor + height),
      },
    ],
    load: [
      {
        shape: 'body',
        role: 'block',
        outline: box(-half / 2, half / 2, floor + height, floor + height + HEIGHT),
      },
      {
        shape: 'label',
        at: turned(0, floor + height + HEIGHT + ABOVE),
        key: 'carriage.label.load',
        facts: {},
      },
    ],
  };
}

/** Wheels or rollers below, with the height at which the bed lies on them. */
function undersideOf(ride: Ride, at: At) {
  switch (ride.rides) {
    case 'bare base':
      return { centres: [], radius: 0, clearance: 0 };
    case 'rollers': {
      const radius = at(ride.inputs.rollerDiameter) / 2;
      return { centres: [-0.7, 0, 0.7], radius, clearance: 2 * radius };
    }
    case 'wheels': {
      const radius = at(ride.inputs.wheelDiameter) / 2;
      return { centres: [-0.6, 0.6], radius, clearance: 1.2 * radius };
    }
  }
}

import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import { metres } from '../../quantities/brands.ts';
import { exactly } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { driveOf, faceAngle, opening, type Wedge } from './station.ts';

/** The wedge to scale where it now stands: under its load, or between its faces. Edge toward +x. */
export const drawing = (wedge: Wedge, at: At, isFelt = false): Drawing =>
  wedge.form === 'lifting' ? liftingDrawing(wedge, at, isFelt) : splittingDrawing(wedge, at, isFelt);

/** As it is left: the wedge out in front, what it parted or lifted closed up again, no cord and no string. */
export function start(wedge: Wedge, at: At): readonly Drawing[] {
  const out = { ...wedge, hasMark: true, inputs: { ...wedge.inputs, advance: exactly(metres(0)) } };
  const { shapes } = drawing({ ...out, hasCords: false }, at);
  return [{ shapes: shapes.filter(({ shape }) => shape !== 'line') }];
}

/** The edge points to the stop, and the string runs out below it; the load has the slope's angle below. */
function liftingDrawing(wedge: Wedge, at: At, isFelt: boolean): Drawing {
  const l = at(wedge.inputs.length);
  const t = at(wedge.inputs.thickness);
  const x = wedge.hasMark ? at(wedge.inputs.advance) : l / 2;
  const slope = Math.tan(faceAngle(wedge, at));
  const left = l - x;
  const right = Math.max(l, left + l / 2);
  const top = Math.max(t, x * slope) + l / 3;
  const edge = right + l / 8;
  const under = (along: number): number => (l - along) * slope;
  return {
    shapes: [
      { shape: 'ground', from: [-l / 4, 0], to: [edge, 0] },
      {
        shape: 'body',
        role: 'wedge',
        outline: [
          [0, 0],
          [l, 0],
          [0, t],
        ],
      },
      {
        shape: 'body',
        role: 'block',
        outline: [
          [left, under(left)],
          [l, 0],
          ...(right > l ? [[right, 0] as const] : []),
          [right, top],
          [left, top],
        ],
      },
      {
        shape: 'body',
        role: 'frame',
        outline: [
          [right, l / 12],
          [right + l / 12, l / 12],
          [right + l / 12, top],
          [right, top],
        ],
      },
      {
        shape: 'label',
        at: [(left + right) / 2, (under(left) + top) / 2],
        key: 'wedge.label.load',
        facts: {},
      },
      ...driven(wedge, isFelt, { back: [0, t / 2], edge: [l, t / 20], end: [edge, t / 20] }),
      { shape: 'angle', at: [l, 0], from: Math.PI - faceAngle(wedge, at), to: Math.PI, radius: l / 4 },
      { shape: 'measure', from: [0, 0], to: [l, 0], offset: -1, metres: l },
      { shape: 'measure', from: [0, 0], to: [0, t], offset: -1, metres: t },
    ],
  };
}

/** A scale on a string from the edge; or the hand at the back, where none is there. */
function driven(
  wedge: Wedge,
  isFelt: boolean,
  { back, edge, end }: { readonly back: Point; readonly edge: Point; readonly end: Point },
): readonly Shape[] {
  const down = wedge.pushed === 'down';
  const effort = {
    shape: 'effort',
    direction: down ? -Math.PI / 2 : 0,
    newtons: 0,
    scale: down ? 'upside down' : 'level',
  } as const;
  return driveOf(wedge, isFelt) === 'pulled'
    ? [
        { shape: 'line', path: [edge, end] },
        { ...effort, from: end },
      ]
    : [{ ...effort, from: back, pushes: true }];
}

/** Two blocks parted by the wedge, cords round both, a string from its edge through the gap; turned to point down where it is pushed down. */
function splittingDrawing(wedge: Wedge, at: At, isFelt: boolean): Drawing {
  const down = wedge.pushed === 'down';
  const turned = ([x, y]: Point): Point => (down ? [y, -x] : [x, y]);
  const l = at(wedge.inputs.length);
  const t = at(wedge.inputs.thickness);
  const x = at(wedge.inputs.advance);
  const half = opening(wedge, at) / 2;
  const mouth = l - x;
  const end = mouth + 1.1 * l;
  const face = (side: 1 | -1): Shape => ({
    shape: 'body',
    role: 'block',
    outline: [
      turned([mouth, side * half]),
      turned([mouth + l, side * half]),
      turned([mouth + l, side * (half + l / 4)]),
      turned([mouth, side * (half + l / 4)]),
    ],
  });
  const cord = (along: number): Shape => ({
    shape: 'line',
    path: [turned([along, -half - l / 4]), turned([along, half + l / 4])],
  });
  return {
    shapes: [
      face(1),
      face(-1),
      {
        shape: 'body',
        role: 'wedge',
        outline: [turned([0, -t / 2]), turned([l, 0]), turned([0, t / 2])],
      },
      ...(wedge.hasCords ? [cord(mouth + l / 3), cord(mouth + (2 * l) / 3)] : []),
      {
        shape: 'label',
        at: turned(down ? [mouth + 1.2 * l, -half - l / 8] : [mouth + l / 2, -half - 0.45 * l]),
        // Pushed level, all of it lies on the table; pushed down, it is seen from the front.
        key: `wedge.label.${wedge.hasCords ? 'blocks-and-cords' : 'blocks'}${down ? '' : '-from-above'}`,
        facts: {},
      },
      ...driven(wedge, isFelt, { back: turned([0, 0]), edge: turned([l, 0]), end: turned([end, 0]) }),
      ...(x > 0
        ? [
            {
              shape: 'measure',
              from: turned([mouth, half + l / 4]),
              to: turned([l, half + l / 4]),
              offset: 1,
              metres: x,
            } as const,
          ]
        : []),
      { shape: 'measure', from: turned([0, -t / 2]), to: turned([0, t / 2]), offset: -1, metres: t },
    ],
  };
}

import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { blocksAlongTheLine, type Tackle } from './station.ts';

/** Sizes of the sketch, metres: blocks have no stated size, so this drawing shows the reeving only. */
const BETWEEN_PARTS = 0.04;
const RADIUS = BETWEEN_PARTS / 2;
const HEIGHT = 0.24;
const GUIDE_OFF = 0.1;

/**
 * The tackle with its sheaves side by side, so that every part of line can be counted. The moving
 * block hangs at the height 0, its middle at the origin.
 */
export function drawing(tackle: Tackle, at: At): Drawing {
  const n = tackle.parts;
  const blocks = blocksAlongTheLine(n, tackle.fallLeaves);
  const spread = Math.tan(at(tackle.inputs.lean)) * HEIGHT;
  const column = (k: number): number => (k - (n - 1) / 2) * BETWEEN_PARTS;
  const foot = (k: number): Point => [column(k), 0];
  const head = (k: number): Point => [column(k) + Math.sign(column(Math.min(k, n - 1))) * spread, HEIGHT];
  // Part k runs up where the sheave at its far end is in the fixed block.
  const upwards = (k: number): boolean =>
    (blocks[k] ?? (tackle.fallLeaves === 'moving block' ? 'fixed block' : undefined)) === 'fixed block';

  const line: Point[] = [];
  for (let k = 0; k < n; k += 1) line.push(...(upwards(k) ? [foot(k), head(k)] : [head(k), foot(k)]));
  const end: Point = tackle.fallLeaves === 'fixed block' ? head(n) : head(n - 1);
  const { path, from, wheels } = ledTo(tackle, end);
  const sheaves = blocks.map((block, k): Shape => {
    const [left, right] = block === 'fixed block' ? [head(k), head(k + 1)] : [foot(k), foot(k + 1)];
    return {
      shape: 'wheel',
      centre: [(left[0] + right[0]) / 2, left[1]],
      radius: RADIUS,
      role: 'sheave',
    };
  });
  const width = (n * BETWEEN_PARTS) / 2 + RADIUS;
  return {
    shapes: [
      {
        shape: 'ground',
        from: [-width - spread, HEIGHT + 2 * RADIUS],
        to: [width + spread, HEIGHT + 2 * RADIUS],
      },
      ...(blocks.includes('moving block')
        ? [frame(-width + RADIUS, width - RADIUS, -1.4 * RADIUS, -RADIUS)]
        : []),
      ...(blocks.includes('fixed block')
        ? [frame(-width - spread, width + spread, HEIGHT + 1.2 * RADIUS, HEIGHT + 2 * RADIUS)]
        : []),
      ...sheaves,
      ...wheels,
      { shape: 'line', path: [...line, ...path] },
      { shape: 'load', hook: n === 1 ? foot(0) : [0, -1.4 * RADIUS], label: 'load' },
      {
        shape: 'effort',
        from,
        direction: { down: -Math.PI / 2, level: 0, up: Math.PI / 2 }[tackle.pull],
        newtons: 0,
        scale: ({ down: 'upside down', level: 'level', up: 'hook down' } as const)[tackle.pull],
      },
    ],
  };
}

/** The fall from the last sheave to the hook, over the guide pulleys where there are any. */
function ledTo(tackle: Tackle, end: Point): { path: Point[]; from: Point; wheels: Shape[] } {
  const [x, y] = end;
  if (tackle.guides === 0) {
    if (tackle.pull === 'level') return { path: [end], from: [x + GUIDE_OFF, y], wheels: [] };
    const from: Point = tackle.pull === 'up' ? [x, y + RADIUS] : [x, y / 2];
    return { path: [end, from], from, wheels: [] };
  }
  const first: Point = [x + RADIUS, tackle.fallLeaves === 'fixed block' ? 0 : y];
  const centres: Point[] = Array.from({ length: tackle.guides }, (_, k) => [
    first[0] + k * GUIDE_OFF,
    first[1],
  ]);
  const [lastX, lastY] = centres.at(-1) ?? first;
  const from: Point =
    tackle.pull === 'level'
      ? [lastX + GUIDE_OFF, lastY]
      : [lastX + RADIUS, lastY + (tackle.pull === 'up' ? 1 : -1) * (HEIGHT / 2)];
  return {
    path: [end, [x, first[1]], ...centres.slice(1).map(([cx, cy]): Point => [cx - RADIUS, cy]), from],
    from,
    wheels: centres.map((centre): Shape => ({ shape: 'wheel', centre, radius: RADIUS, role: 'sheave' })),
  };
}

const frame = (left: number, right: number, bottom: number, top: number): Shape => ({
  shape: 'body',
  role: 'frame',
  outline: [
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ],
});

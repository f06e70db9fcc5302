import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { blocksAlongTheLine, type Tackle } from './station.ts';

/**
 * Sizes of the sketch, metres: blocks have no stated size, so this drawing shows the reeving only. Wide
 * enough that the fall comes down in a column of its own, clear of the moving block and its load.
 */
const BETWEEN_PARTS = 0.08;
const RADIUS = BETWEEN_PARTS / 2;
const HEIGHT = 0.3;
/** How far the moving block stays within the whole: it just holds its sheaves, clear of a scale on the fall. */
const FLANGE = 1.8 * RADIUS;
const GUIDE_OFF = 0.16;
/** Between a name and what it names. */
const CLEAR = 0.012;
/** Height of the hook on a fall that is hauled down, as a share of the whole. */
const HOOKED_AT = 0.85;

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
  const ceiling = HEIGHT + 2 * RADIUS;
  // A pull straight up has to pass beside the support.
  const reach = tackle.pull === 'up' && tackle.guides === 0 ? end[0] - RADIUS / 2 : width + spread;
  const tied: Point = upwards(0) ? [column(0), n === 1 ? 0 : -RADIUS] : [head(0)[0], ceiling];
  return {
    isSketch: true,
    shapes: [
      {
        shape: 'ground',
        from: [-width - spread, ceiling],
        to: [reach, ceiling],
      },
      ...(blocks.includes('moving block')
        ? [frame(-width + FLANGE, width - FLANGE, -1.4 * RADIUS, -RADIUS)]
        : []),
      ...(blocks.includes('fixed block')
        ? [frame(-width - spread, reach, HEIGHT + 1.2 * RADIUS, ceiling)]
        : []),
      ...sheaves,
      ...wheels,
      { shape: 'line', path: [tied, ...line, ...path] },
      ...names(tackle, {
        left: -width - spread,
        from,
        tied: between(foot(0), head(0), upwards(0) ? 1 / 4 : 3 / 4),
      }),
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

/** The fall from the last sheave to the hook, round the guide pulleys where there are any. */
function ledTo(tackle: Tackle, end: Point): { path: Point[]; from: Point; wheels: Shape[] } {
  const [x, y] = end;
  if (tackle.guides === 0) {
    if (tackle.pull === 'level') {
      const from: Point = [x + GUIDE_OFF, y + RADIUS];
      return { path: [[x - RADIUS, y + RADIUS], from], from, wheels: [] };
    }
    const from: Point = tackle.pull === 'up' ? [x, y + RADIUS] : [x, HOOKED_AT * y];
    return { path: [end, from], from, wheels: [] };
  }
  // Coming down it turns under the guide pulley, coming up it turns over it.
  const [height, turn] = tackle.fallLeaves === 'fixed block' ? [0, -RADIUS] : [y, RADIUS];
  const centres = Array.from(
    { length: tackle.guides },
    (_, k): Point => [x + RADIUS + k * GUIDE_OFF, height],
  );
  const lastX = x + RADIUS + (tackle.guides - 1) * GUIDE_OFF;
  const from: Point =
    tackle.pull === 'level'
      ? [lastX + GUIDE_OFF, height + turn]
      : [lastX + RADIUS, height + (tackle.pull === 'up' ? 1 : -1) * (HEIGHT / 2)];
  const round: readonly Point[] =
    tackle.pull === 'level'
      ? [[lastX, height + turn]]
      : [...(tackle.guides === 2 ? ([[lastX, height + turn]] as const) : []), [lastX + RADIUS, height]];
  return {
    path: [
      end,
      [x, height],
      ...(tackle.guides === 2 ? ([[x + RADIUS, height + turn]] as const) : []),
      ...round,
      from,
    ],
    from,
    wheels: centres.map((centre): Shape => ({ shape: 'wheel', centre, radius: RADIUS, role: 'sheave' })),
  };
}

const between = ([x, y]: Point, [toX, toY]: Point, share: number): Point => [
  x + share * (toX - x),
  y + share * (toY - y),
];

/** Which block is which and which end is which, clear of the line: on the left, and at the hand. */
function names(
  { parts, fallLeaves, pull }: Tackle,
  at: { readonly left: number; readonly tied: Point; readonly from: Point },
): readonly Shape[] {
  const label = (name: string, [x, y]: Point, anchor: 'start' | 'end'): Shape => ({
    shape: 'label',
    at: [x + (anchor === 'end' ? -CLEAR : CLEAR), y],
    anchor,
    key: `tackle.label.${name}`,
    facts: {},
  });
  const [x, y] = at.from;
  const free = {
    down: label('free-end', [x + CLEAR, y + CLEAR], 'start'),
    up: label('free-end', [x, y - 3 * CLEAR], 'start'),
    level: label('free-end', [x, y - 6 * CLEAR], 'start'),
  }[pull];
  if (parts === 1) return [free];
  return [
    ...(blocksAlongTheLine(parts, fallLeaves).includes('fixed block')
      ? [label('upper', [at.left, HEIGHT + RADIUS], 'end')]
      : []),
    label('lower', [at.left, -RADIUS], 'end'),
    label('dead-end', at.tied, 'end'),
    free,
  ];
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

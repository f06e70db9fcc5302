import type { Drawing, Point, Shape } from '../../core/description/drawing.ts';
import type { Language } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';

/** The load as a drawing names it: kilograms or newtons, as it was written. */
export interface DrawnLoad {
  readonly label: string;
  readonly mass: number | null;
  readonly weight: number | null;
}

/** What stands on the block: what the machine itself knows of its mass comes first. */
export function loadText(language: Language, load: DrawnLoad | null, known: number | undefined): string {
  const mass = known ?? load?.mass ?? null;
  if (mass !== null) return factText(language, { si: mass, dimension: 'mass' });
  if (load === null || load.weight === null) return '';
  return factText(language, { si: load.weight, dimension: 'force' });
}

export interface Described {
  readonly language: Language;
  readonly load: DrawnLoad | null;
  /** `null` where no scale is hooked on: then a hand pulls or pushes. */
  readonly scaleEnds?: readonly [string, string] | null;
  /** What will be read there, said last; only where the key is shown. */
  readonly reads?: string;
}

/** A drawing in words, for someone who hears the page: which bodies, where the load hangs, where the pull goes. */
export function describeDrawing(drawing: Drawing, options: Described): string {
  const { language } = options;
  const pivot = drawing.shapes.find((each) => each.shape === 'pivot');
  const place = placesIn(language, drawing, pivot?.shape === 'pivot' ? pivot.at : null);
  return [
    bodiesText(drawing, language),
    ...drawing.shapes.flatMap((shape) => shapeText(shape, place, options)),
    options.reads ?? '',
  ]
    .filter((each) => each !== '')
    .join(' ');
}

function bodiesText(drawing: Drawing, language: Language): string {
  const counts = new Map<string, number>();
  for (const shape of drawing.shapes) {
    if (shape.shape !== 'body' && shape.shape !== 'wheel') continue;
    const length = shape.shape === 'body' ? longestSide(shape.outline) : shape.radius * 2;
    const what = sentence(language, `drawing.desc.role.${shape.role}`, {
      length: { si: length, dimension: 'length' },
    });
    counts.set(what, (counts.get(what) ?? 0) + 1);
  }
  if (counts.size === 0) return '';
  const named = [...counts].map(([what, count]) =>
    count === 1 ? what : sentence(language, 'drawing.desc.several', { count, what }),
  );
  return sentence(language, 'drawing.desc.bodies', { what: factText(language, named) });
}

function shapeText(
  shape: Shape,
  place: (at: Point) => string,
  { language, load, scaleEnds }: Described,
): readonly string[] {
  switch (shape.shape) {
    case 'load': {
      const written = loadText(language, load, shape.mass);
      const name = load?.label ?? sentence(language, 'drawing.load');
      const weighed = written === '' ? name : `${name} (${written})`;
      return [
        sentence(language, 'drawing.desc.load', {
          load: weighed,
          place: place(shape.hook),
        }),
      ];
    }
    case 'effort':
      return [
        sentence(language, effortKey(shape, scaleEnds ?? null), {
          direction: directionText(language, shape.direction),
          place: place(shape.from),
          hangs: sentence(language, `hangs.${shape.scale}`),
        }),
      ];
    case 'link':
      return [
        sentence(language, 'drawing.desc.link', {
          place: place(shape.from),
          what: sentence(language, shape.key, shape.facts),
        }),
      ];
    case 'angle':
      return [
        sentence(language, 'drawing.desc.angle', {
          angle: { si: Math.abs(shape.to - shape.from), dimension: 'angle' },
        }),
      ];
    case 'line':
      return [sentence(language, shape.key ?? 'drawing.desc.line')];
    default:
      return [];
  }
}

const effortKey = (
  { pushes }: Extract<Shape, { shape: 'effort' }>,
  scaleEnds: readonly [string, string] | null,
): string =>
  pushes === true
    ? 'drawing.desc.effort.push'
    : scaleEnds === null
      ? 'drawing.desc.effort.pull'
      : 'drawing.desc.effort';

/** Nearer than this, in metres, something hangs in a hole, or on the pivot's own line. */
const SAME = 5e-4;

/** Where something is: in holes from the pivot's hole where both are in one, as they are counted at the table. */
function placesIn(language: Language, { shapes }: Drawing, origin: Point | null): (at: Point) => string {
  const holes = shapes.flatMap((each) =>
    each.shape === 'hole' && each.number !== undefined ? [{ x: each.centre[0], number: each.number }] : [],
  );
  const holeAt = ([x]: Point): number | null =>
    holes.find((hole) => Math.abs(hole.x - x) < SAME)?.number ?? null;
  return (at) => {
    if (origin === null) return sentence(language, 'drawing.desc.place.free');
    const distance = at[0] - origin[0];
    if (Math.abs(distance) < SAME) return sentence(language, 'drawing.desc.place.at');
    const side = distance < 0 ? 'left' : 'right';
    const length = { si: Math.abs(distance), dimension: 'length' } as const;
    const [hole, from] = [holeAt(at), holeAt(origin)];
    if (hole === null || from === null)
      return sentence(language, `drawing.desc.place.${side}`, { distance: length });
    const count = Math.abs(hole - from);
    const key = `drawing.desc.place.${side}.hole${count === 1 ? '' : 's'}`;
    return sentence(language, key, { count, hole, distance: length });
  };
}

/** Within a degree of one of the four plain directions it is called by its name. */
function directionText(language: Language, direction: number): string {
  const [x, y] = [Math.cos(direction), Math.sin(direction)];
  const nearly = Math.cos(Math.PI / 180);
  const plain = y > nearly ? 'up' : y < -nearly ? 'down' : x > nearly ? 'right' : x < -nearly ? 'left' : null;
  if (plain !== null) return sentence(language, `drawing.desc.direction.${plain}`);
  return sentence(language, `drawing.desc.direction.${y < 0 ? 'slant-down' : 'slant'}`, {
    angle: { si: Math.abs(Math.asin(y)), dimension: 'angle' },
  });
}

const longestSide = (outline: readonly Point[]): number =>
  Math.max(
    0,
    ...outline.map(([x, y], n) => {
      const [nextX, nextY] = outline[(n + 1) % outline.length] ?? [x, y];
      return Math.hypot(nextX - x, nextY - y);
    }),
  );

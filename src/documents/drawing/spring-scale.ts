import type { Point } from '../../core/description/drawing.ts';
import { circle, curve, type Ink, mm, moved, path, together, turned, words } from './ink.ts';

/** The scale in its own frame: hook at the origin, ring up the page, so that upside down *is* upside down. */
const ROD = 5;
const TUBE = 21;
const TUBE_HALF = 3.1;
const RING = 1.8;
const ARROW_GAP = 1.2;
/** Baseline of the word under an arrow that lies. */
const UNDER_ARROW = 6.4;
/** Letters beside the tube that take one line, and from one line to the next. */
const WIDE = 18;
const LINE = 3;
/** Length of the arrow where no force is to be shown: on a pupil's page it must tell nothing. */
export const PLAIN_ARROW = 11;

export interface ScaleWords {
  readonly pull: string;
  readonly hangs: string;
  readonly hook: string;
  readonly ring: string;
}

/** Hook to tip of the arrow, for a given arrow. */
export const scaleReach = (arrow: number): number => ROD + TUBE + 2 * RING + ARROW_GAP + arrow;

/**
 * A spring scale in the line of pull with the hand's pull as an open arrow beyond its ring. `pull` is
 * the direction on paper, radians clockwise from straight up. `ends` are the numbers at its first and
 * last mark, turned with the scale.
 */
export function scaleInk(
  hook: Point,
  pull: number,
  arrow: number,
  ends: readonly [string, string],
  text: ScaleWords,
): Ink {
  const at = (point: Point): Point => moved(turned(point, pull), hook);
  const turn = (pull * 180) / Math.PI;
  const tubeTop = -(ROD + TUBE);
  const ring = tubeTop - RING;
  const tail = ring - RING - ARROW_GAP;
  const tip = tail - arrow;
  const marks = Array.from({ length: 11 }, (_, n): Ink => {
    const y = tubeTop + 3 + (n * (TUBE - 7)) / 10;
    return path([at([-TUBE_HALF, y]), at([-TUBE_HALF + (n % 5 === 0 ? 2.6 : 1.5), y])], 'thin');
  });
  return together([
    hookInk(at, hook),
    path([at([0, -2.4]), at([0, -ROD])], 'cord'),
    path(
      [at([-TUBE_HALF, -ROD]), at([TUBE_HALF, -ROD]), at([TUBE_HALF, tubeTop]), at([-TUBE_HALF, tubeTop])],
      'outline',
      true,
      'paper',
    ),
    ...marks,
    path([at([-TUBE_HALF + 0.2, tubeTop + 3]), at([TUBE_HALF - 0.2, tubeTop + 3])], 'outline'),
    circle(at([0, ring]), RING, 'cord', 'paper'),
    words(at([1.1, tubeTop + 6.2]), ends[0], { size: 'small', turn }),
    words(at([ends[1].length > 2 ? 0 : 1.1, -ROD - 0.9]), ends[1], { size: 'small', turn }),
    arrowInk(at, tail, tip),
    ...captions(at, pull, { tubeTop, ring, tip, tail }, text),
  ]);
}

/** A hand that pulls or pushes without a scale: the arrow alone, away from what is pulled or up to what is pushed. */
export function handInk(
  from: Point,
  pull: number,
  arrow: number,
  { hand, caption }: { readonly hand: 'pull' | 'push'; readonly caption: string },
): Ink {
  const at = (point: Point): Point => moved(turned(point, pull), from);
  const tail = hand === 'pull' ? -ARROW_GAP : ARROW_GAP + arrow;
  const [x, y] = at([0, tail - arrow / 2]);
  const level = Math.sin(pull) > 0 ? 'end' : 'start';
  const isUpright = Math.abs(Math.sin(pull)) < 0.5;
  return together([
    arrowInk(at, tail, tail - arrow),
    isUpright
      ? words([x + 4, y + 1.4], caption, { anchor: 'start' })
      : hand === 'pull'
        ? words([x, y - 4], caption)
        : // Over the arrow stand the dimensions of what is pushed.
          words(moved(at([0, tail + ARROW_GAP]), [0, 1.4]), caption, { anchor: level }),
  ]);
}

function hookInk(at: (point: Point) => Point, hook: Point): Ink {
  const [sx, sy] = at([1.35, -0.7]);
  const [ex, ey] = at([0, -2.4]);
  return curve(
    `M${mm(sx)} ${mm(sy)}A1.5 1.5 0 1 1 ${mm(ex)} ${mm(ey)}`,
    [moved(hook, [-1.8, -1.8]), moved(hook, [1.8, 1.8])],
    'cord',
  );
}

/** A long name beside the tube would make the apparatus smaller: it takes two lines. */
function besideLines(caption: string): readonly string[] {
  if (caption.length <= WIDE) return [caption];
  const spaces = [...caption].flatMap((letter, n) => (letter === ' ' ? [n] : []));
  const [middle] = spaces.sort((a, b) => Math.abs(a - caption.length / 2) - Math.abs(b - caption.length / 2));
  return middle === undefined ? [caption] : [caption.slice(0, middle), caption.slice(middle + 1)];
}

/** An open arrow: outlined, not filled, so that it stays light and prints in any ink. */
function arrowInk(at: (point: Point) => Point, tail: number, tip: number): Ink {
  const head = Math.min(4.2, (tail - tip) * 0.6);
  const neck = tip + head;
  return path(
    [
      at([-0.9, tail]),
      at([-0.9, neck]),
      at([-2.5, neck]),
      at([0, tip]),
      at([2.5, neck]),
      at([0.9, neck]),
      at([0.9, tail]),
    ],
    'accent',
    true,
    'paper',
  );
}

/** Captions stand beside the scale: level where it hangs, along it where it lies, and then only those that matter. */
function captions(
  at: (point: Point) => Point,
  pull: number,
  y: { readonly tubeTop: number; readonly ring: number; readonly tip: number; readonly tail: number },
  text: ScaleWords,
): readonly Ink[] {
  const tube = (-ROD + y.tubeTop) / 2;
  const arrow = (y.tail + y.tip) / 2;
  if (Math.abs(Math.sin(pull)) >= 0.5) {
    // Over the tube and under the arrow, so that the two never meet.
    const away = Math.sin(pull) > 0 ? 1 : -1;
    const turn = (pull * 180) / Math.PI - 90 * away;
    return [
      words(at([-away * (TUBE_HALF + 1.6), tube]), text.hangs, { size: 'small', turn }),
      words(at([away * UNDER_ARROW, arrow]), text.pull, { turn }),
    ];
  }
  const side = Math.cos(pull) < 0 ? -1 : 1;
  const beside = (along: number, caption: string, size: 'small' | 'normal', down = 0): Ink => {
    const [px, py] = at([side * (TUBE_HALF + 1.6), along]);
    return words([px, py + down + (size === 'small' ? 1 : 1.4)], caption, { size, anchor: 'start' });
  };
  const lines = besideLines(text.hangs);
  return [
    ...lines.map((line, n) => beside(tube, line, 'small', (n - (lines.length - 1) / 2) * LINE)),
    beside(y.ring, text.ring, 'small'),
    beside(-ROD + 0.9, text.hook, 'small'),
    beside(arrow, text.pull, 'normal'),
  ];
}

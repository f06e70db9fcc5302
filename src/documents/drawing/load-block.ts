import type { Point } from '../../core/description/drawing.ts';
import { curve, type Ink, LETTERING, lettersWidth, mm, path, together, words } from './ink.ts';

const HOOK = 6;
const HEIGHT = 9.5;
const LEAST_WIDTH = 14;

/** A load as a block that hangs by its hook, with what it weighs written on it. A sign, not to scale. */
export function loadInk([x, y]: Point, name: string, written: string): Ink {
  const top = y + HOOK;
  const text = written === '' ? name : written;
  const half = Math.max(LEAST_WIDTH, lettersWidth(text, LETTERING.normal, true) + 4) / 2;
  const hook = curve(
    `M${mm(x - 1.3)} ${mm(y + 0.9)}A1.5 1.5 0 1 1 ${mm(x)} ${mm(y + 2.2)}V${mm(top)}`,
    [
      [x - 1.6, y - 0.8],
      [x + 1.6, top],
    ],
    'cord',
  );
  return together([
    hook,
    path(
      [
        [x - half, top],
        [x + half, top],
        [x + half, top + HEIGHT],
        [x - half, top + HEIGHT],
      ],
      'outline',
      true,
      'paper',
    ),
    path(
      [
        [x - half + 0.9, top + 0.9],
        [x + half - 0.9, top + 0.9],
        [x + half - 0.9, top + HEIGHT - 0.9],
        [x - half + 0.9, top + HEIGHT - 0.9],
      ],
      'thin',
      true,
    ),
    words([x, top + HEIGHT / 2 + 0.36 * LETTERING.normal], text, { bold: true }),
    ...(written === '' ? [] : [words([x, top + HEIGHT + 4], name, { size: 'small' })]),
  ]);
}

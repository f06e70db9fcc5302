import { lettersWidth } from './ink.ts';

/** Words in lines, each no wider than the room, and how high their letters are. */
export interface FittedWords {
  readonly lines: readonly string[];
  readonly height: number;
}

/** From one line to the next, as a share of the height of the letters. */
export const LINE = 1.18;

/**
 * A text in as few lines as its room allows, never broken inside a word; `null` where it doesn't fit.
 *
 * @example fittedWords('Up the slipway', { width: 30, height: 4 }, 3)?.lines // => ['Up the slipway']
 * @example fittedWords('Up the slipway', { width: 18, height: 8 }, 3)?.lines // => ['Up the', 'slipway']
 * @example fittedWords('Up the slipway', { width: 5, height: 8 }, 3) // => null
 */
export function fittedWords(
  text: string,
  room: { readonly width: number; readonly height: number },
  height: number,
): FittedWords | null {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (lettersWidth(word, height) > room.width) return null;
    if (last !== undefined && lettersWidth(`${last} ${word}`, height) <= room.width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.length * LINE * height <= room.height ? { lines, height } : null;
}

/** The largest of some heights at which a text fits. */
export function largestFit(
  text: string,
  room: { readonly width: number; readonly height: number },
  heights: readonly number[],
): FittedWords | null {
  for (const height of [...heights].sort((a, b) => b - a)) {
    const fitted = fittedWords(text, room, height);
    if (fitted !== null) return fitted;
  }
  return null;
}

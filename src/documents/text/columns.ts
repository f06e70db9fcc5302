/**
 * Rows of cells as lines with aligned columns, two spaces apart; nothing hangs over at the end.
 *
 * @example columns([['a', '1'], ['bb', '22']], ['left', 'right']) // => ['a    1', 'bb  22']
 */
export function columns(
  rows: readonly (readonly string[])[],
  sides: readonly ('left' | 'right')[],
): readonly string[] {
  const widths = sides.map((_, n) => Math.max(0, ...rows.map((row) => lengthOf(row[n] ?? ''))));
  return rows.map((row) =>
    sides
      .map((side, n) => {
        const cell = row[n] ?? '';
        const space = ' '.repeat((widths[n] ?? 0) - lengthOf(cell));
        return side === 'left' ? cell + space : space + cell;
      })
      .join('  ')
      .trimEnd(),
  );
}

/**
 * Text broken into lines of at most so many characters; a word that is longer stands alone. A number and its
 * unit stay together, and so does what a no-break space joins.
 *
 * @example wrapped('a stiff bar on a pin', 12) // => ['a stiff bar', 'on a pin']
 * @example wrapped('the pull is 3 N', 13) // => ['the pull is', '3 N']
 */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of unbroken(text.split(/[^\S\u00a0]+/).filter((each) => each !== ''))) {
    const last = lines.at(-1);
    if (last !== undefined && lengthOf(last) + 1 + lengthOf(word) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines.map((line) => line.replaceAll('\u00a0', ' '));
}

/** Words with each number and its unit as one: neither "3" and "%" nor "± 2" is broken over two lines. */
function unbroken(words: readonly string[]): readonly string[] {
  const together: string[] = [];
  for (const word of words) {
    const last = together.at(-1);
    if (last !== undefined && ((/[\d.,]$/.test(last) && UNIT.test(word)) || /(^|[\s(])±$/.test(last)))
      together[together.length - 1] = `${last} ${word}`;
    else together.push(word);
  }
  return together;
}

/** A unit alone, with what punctuation stands behind it. */
const UNIT = /^(%|°|N|J|k?g|[kmc]?m|oz|lb|in|gf|kgf|ozf|lbf|±)[).,;:]*$/;

/** Characters as a reader counts them. */
const lengthOf = (text: string): number => [...text].length;

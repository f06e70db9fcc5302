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
 * Text broken into lines of at most so many characters; a word that is longer stands alone.
 *
 * @example wrapped('a stiff bar on a pin', 12) // => ['a stiff bar', 'on a pin']
 */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && lengthOf(last) + 1 + lengthOf(word) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** Characters as a reader counts them. */
const lengthOf = (text: string): number => [...text].length;

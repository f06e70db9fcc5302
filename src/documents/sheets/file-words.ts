/**
 * Marks as parts of file names, all different, also where capitals are the same as small letters.
 *
 * @example fileWords(['1', 'Slip way', 'SLIP WAY']) // => ['1', 'slip-way', 'slip-way-2']
 */
export function fileWords(marks: readonly string[]): readonly string[] {
  const words: string[] = [];
  for (const mark of marks) {
    const word = fileWord(mark);
    let free = word;
    for (let n = 2; words.includes(free); n += 1) free = `${word}-${n}`;
    words.push(free);
  }
  return words;
}

/** A mark as part of a file name, whatever it is written with. */
const fileWord = (mark: string): string =>
  mark
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'table';

/** Far more than any kit needs, and far less than what exhausts a parser's stack. */
const MOST_BRACKETS = 40;
const MOST_INDENT = 200;

/**
 * Where a text nests deeper than anyone writes by hand: the offset, or nothing. Asked before the
 * parser sees the text, because a parser that runs out of stack can take the whole program with it.
 * Brackets in quoted text count too; forty of them at once are no kit either.
 *
 * @example tooDeepAt('a: {b: {c: 1}}') // => null
 */
export function tooDeepAt(text: string): number | null {
  let brackets = 0;
  let leading = 0;
  let isLeading = true;
  for (let at = 0; at < text.length; at += 1) {
    const each = text[at];
    if (each === '\n' || each === '\r') {
      leading = 0;
      isLeading = true;
      continue;
    }
    isLeading &&= each === ' ' || each === '\t' || each === '-' || each === '?' || each === ':';
    if (isLeading) leading += 1;
    if (each === '[' || each === '{') brackets += 1;
    if (each === ']' || each === '}') brackets = Math.max(0, brackets - 1);
    if (brackets > MOST_BRACKETS || leading > MOST_INDENT) return at;
  }
  return null;
}

/**
 * A piece of a sentence that is read as one. A `figure` is a number, a unit after it, or a mark with a
 * digit in it (`2.5`, `N`, `W500`).
 */
export interface Token {
  readonly text: string;
  readonly kind: 'word' | 'figure';
}

/** Only what can't be a word of a sentence: "in" is left out, which is a word far more often. */
const UNITS = /^(?:N|kN|mN|g|kg|gf|kgf|mm|cm|m|km|ft|lb|lbf|oz|ozf|deg|rad|J|mJ|s|min|h|W)$/;

/**
 * The sentences of a text. One ends at a full stop, a question mark or an exclamation mark before a
 * capital, a figure or the end. A colon or a semicolon ends none, so that a long sentence stays long;
 * whatever ends without a stop ends there.
 *
 * @example sentencesOf('Pull it. Read 2.5 N; write it down') // => ['Pull it.', 'Read 2.5 N; write it down']
 */
export const sentencesOf = (text: string): readonly string[] =>
  text
    .split(/(?<=[.!?…]["”’»)]*)\s+(?=["“‘«¿¡(]*[\p{Lu}\p{N}])/u)
    .map((sentence) => sentence.trim())
    .filter((sentence) => tokensOf(sentence).length > 0);

/**
 * The words and figures of a sentence. A word with an apostrophe or a hyphen in it is one word; a
 * number and its unit are two figures, as they are two words when read aloud.
 *
 * @example tokensOf("Hook W500 to the wheel's line.").map(({ kind }) => kind) // => ['word', 'figure', 'word', 'word', 'word', 'word']
 * @example tokensOf('2.5 N').map(({ text }) => text) // => ['2.5', 'N']
 */
export function tokensOf(sentence: string): readonly Token[] {
  const pieces = sentence.match(/[\p{L}\p{N}]+(?:[-'’][\p{L}\p{N}]+|[.,]\p{N}+)*/gu) ?? [];
  const tokens: Token[] = [];
  for (const text of pieces) {
    const before = tokens.at(-1)?.text ?? '';
    const isFigure = /\p{N}/u.test(text) || (UNITS.test(text) && /^\p{N}/u.test(before));
    tokens.push({ text, kind: isFigure ? 'figure' : 'word' });
  }
  return tokens;
}

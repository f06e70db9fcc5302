import type { Chance } from './secret.ts';

/** No vowel, so that no word comes out; no two that are taken for each other, written or read out. */
const LETTERS = 'CDFGHJKMNPQRTVWX';

export const GROUP_CODE_LETTERS = 6;
/** A helper sees what is expected: her code is a good deal longer. */
export const HELPER_CODE_LETTERS = 10;

/** Sixteen letters, four bits each: every one is as likely as any other. */
export const newCode = (chance: Chance, letters: number): string =>
  [...chance(letters)].map((byte) => LETTERS[byte % LETTERS.length]).join('');

/**
 * A code as it was typed: small letters, blanks and hyphens do no harm.
 *
 * @example readCode(' cdf-ghj ') // => 'CDFGHJ'
 */
export const readCode = (typed: string): string => typed.toUpperCase().replace(/[\s\-–.]/g, '');

/**
 * In threes (fives for the long one), to be read out.
 *
 * @example spacedCode('CDFGHJ') // => 'CDF GHJ'
 */
export const spacedCode = (code: string): string => {
  const size = code.length % 3 === 0 ? 3 : 5;
  return code.match(new RegExp(`.{1,${size}}`, 'g'))?.join(' ') ?? code;
};

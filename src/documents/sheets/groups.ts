import type { Visit } from '../../core/files/visit-file.ts';

/**
 * Labels of the groups, never names: letters, where the visit only says how many there are. After Z
 * they go on with two letters. A visit that says nothing has one group, whose label is written by hand.
 *
 * @example groupLabels(3) // => ['A', 'B', 'C']
 * @example groupLabels(null) // => [null]
 */
export const groupLabels = (count: Visit['groups']): readonly (string | null)[] =>
  count === null ? [null] : Array.from({ length: count }, (_, n) => letters(n));

const LETTERS = 26;
const letters = (n: number): string =>
  (n >= LETTERS ? letters(Math.floor(n / LETTERS) - 1) : '') + String.fromCharCode(65 + (n % LETTERS));

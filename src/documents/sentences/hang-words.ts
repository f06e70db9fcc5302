import type { HangSheet } from '../pages/sheet.ts';
import type { Language } from './language.ts';
import { sentence } from './sentence.ts';

/**
 * How a scale hangs, in words.
 *
 * @example hangWords('en', 'upside down') // => 'upside down'
 * @example hangWords('en', { angle: 1.0471976 }) // => 'with its hook 60° from straight down'
 */
export const hangWords = (language: Language, hang: HangSheet): string =>
  typeof hang === 'object'
    ? sentence(language, 'hangs.angle', { angle: { si: hang.angle, dimension: 'angle' } })
    : sentence(language, `hangs.${hang}`);

/** What the hand does with the scale before it pulls, and how its zero is set. */
export const hangInstruction = (language: Language, hang: HangSheet): string =>
  typeof hang === 'object'
    ? sentence(language, 'hangs.angle.instruction', { angle: { si: hang.angle, dimension: 'angle' } })
    : sentence(language, `hangs.${hang}.instruction`);

export const zeroInstruction = (
  language: Language,
  hangs: HangSheet,
  zeroed: HangSheet | 'in place',
): string =>
  zeroed === 'in place' || zeroed === hangs
    ? sentence(language, 'zeroed.in place.instruction')
    : typeof zeroed === 'object'
      ? sentence(language, 'zeroed.angle.instruction', { angle: { si: zeroed.angle, dimension: 'angle' } })
      : sentence(language, `zeroed.${zeroed}.instruction`);

/**
 * How the scale is zeroed and held, in the order in which it is done: a zero that is set in another
 * position comes before the scale is turned.
 */
export function holdLines(
  language: Language,
  { hangs, zeroed }: { readonly hangs: HangSheet; readonly zeroed: HangSheet | 'in place' },
): readonly string[] {
  const hold = hangInstruction(language, hangs);
  const zero = zeroInstruction(language, hangs, zeroed);
  return zeroed === 'in place' || zeroed === hangs ? [hold, zero] : [zero, hold];
}

import { isNotDefined, type NotDefined } from '../../core/description/not-defined.ts';
import { decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';
import type { ClassFigure } from '../../core/readings/class-figure.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';

/** Where a figure is not said. */
export const NOTHING = '–';

/** To two digits of its standard uncertainty; the interval to the same decimals. */
export function figureText(language: Language, figure: ClassFigure | NotDefined, unit: string): string {
  if (isNotDefined(figure)) return NOTHING;
  const decimals = decimalsFor(figure.u);
  const text = (value: number): string => decimalText(value, decimals, languagePack(language).decimal);
  return `${sentence(language, 'summary.range', {
    value: text(figure.value),
    from: text(figure.from),
    to: text(figure.to),
  })}${unit}`;
}

/** A share with its interval, in whole percent. */
export function percentText(language: Language, { value, from, to }: ClassFigure): string {
  const inPercent = (share: number): string => decimalText(100 * share, 0, languagePack(language).decimal);
  return sentence(language, 'summary.percent', {
    value: inPercent(value),
    from: inPercent(from),
    to: inPercent(to),
  });
}

/** Why something is not said. */
export const reasonText = (language: Language, { because, facts }: NotDefined): string =>
  hasSentence(language, because)
    ? sentence(language, because, facts)
    : sentence(language, 'not-defined.reason.unknown');

/** A cell on one line, not to be broken: it may hold line ends, and marks that a terminal would obey. */
export const glued = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\s]+/gu, '\u00a0');

export const percent = (share: number): number => Math.round(100 * share);

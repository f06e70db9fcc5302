import { trimmed } from '../printing/quantity-text.ts';
import { markText, unitLabel } from '../printing/reading-text.ts';
import { holdLines } from '../sentences/hang-words.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import type { ScaleSheet, SetupSheet } from './sheet.ts';

/** How a setup's scale is held, zeroed and read, a line an order; or what is counted instead. */
export function readingLines(
  language: Language,
  { scale, reads }: Pick<SetupSheet, 'scale' | 'reads'>,
): readonly string[] {
  const held =
    scale === null
      ? []
      : [
          ...holdLines(language, scale),
          sentence(language, 'page.scale-ends', { range: rangeWords(language, scale) }),
        ];
  return [...held, ...reads.map(({ key, facts }) => sentence(language, key, facts))];
}

/** The last mark of a scale, with its unit. */
export const rangeWords = (language: Language, scale: ScaleSheet): string =>
  `${scaleEnds(language, scale)[1]} ${unitLabel(scale.graduations.unit)}`;

/** The first and the last number that stand on a scale, without its unit. */
export const scaleEnds = (language: Language, scale: ScaleSheet): readonly [string, string] => {
  const { decimal } = languagePack(language);
  const end = (si: number) => trimmed(markText(scale.graduations, si, decimal));
  return [end(scale.stop), end(scale.range)];
};

import { readingLines } from '../pages/reading-lines.ts';
import type { TableSheet } from '../pages/sheet.ts';
import { cautionsOf, pupilCaution } from '../sentences/caution-words.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';

/** A text that a pupil reads at a table, by what it is for. */
export interface CardText {
  readonly of: 'about' | 'caution' | 'step' | 'reading';
  readonly text: string;
}

/**
 * What the card of a table says in sentences: what the machine is, the cautions, the steps and how the scale is
 * read. What two setups say alike counts once, so that saying it again makes no card easier. Titles and labels
 * are no sentences and are left out.
 */
export function cardTextsOf(language: Language, table: TableSheet): readonly CardText[] {
  const about = `${table.machine}.about`;
  const all: readonly CardText[] = [
    ...(hasSentence(language, about) ? [{ of: 'about' as const, text: sentence(language, about) }] : []),
    ...cautionsOf(table).map((caution) => ({
      of: 'caution' as const,
      text: pupilCaution(language, caution),
    })),
    ...table.setups.flatMap((setup): readonly CardText[] => [
      ...setup.steps.map(({ key, facts }) => ({ of: 'step' as const, text: sentence(language, key, facts) })),
      ...readingLines(language, setup).map((text) => ({ of: 'reading' as const, text })),
    ]),
  ];
  return [...new Map(all.map((each) => [each.text, each])).values()];
}

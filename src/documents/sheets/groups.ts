import type { PaperLanguage } from '../../core/files/group-words.ts';
import type { Visit } from '../../core/files/visit-file.ts';

/** The label of a group on its papers, never a name; `null` where it is written by hand. */
export type GroupLabel = string | null;

/** The labels of a visit's groups; a visit that says nothing has one group. */
export const groupLabels = (visit: Pick<Visit, 'groupLabels'> | null): readonly GroupLabel[] =>
  visit === null || visit.groupLabels.length === 0 ? [null] : visit.groupLabels;

/** Groups that read the same language; those of the cards' own language come first. */
export interface Readers {
  readonly language: PaperLanguage;
  readonly groups: readonly GroupLabel[];
}

/**
 * Who reads which language.
 *
 * @example readersOf({ groupLabels: ['A', 'B'], groupLanguages: { A: 'es' } }, 'en').map(({ language }) => language) // => ['en', 'es']
 */
export function readersOf(
  visit: Pick<Visit, 'groupLabels' | 'groupLanguages'> | null,
  cards: PaperLanguage,
): readonly Readers[] {
  const languageOf = (group: GroupLabel): PaperLanguage =>
    (group === null ? undefined : visit?.groupLanguages[group]) ?? cards;
  const groups = groupLabels(visit);
  const languages = [...new Set([cards, ...groups.map(languageOf)])];
  return languages.flatMap((language) => {
    const own = groups.filter((group) => languageOf(group) === language);
    return own.length === 0 ? [] : [{ language, groups: own }];
  });
}

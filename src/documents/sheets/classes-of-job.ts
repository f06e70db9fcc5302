import type { Language } from '../sentences/language.ts';
import { type PeriodWords, wordsOfClasses } from '../text/period-words.ts';
import { fileWords } from './file-words.ts';
import type { PaperJob } from './paper-job.ts';

/** The classes of a printing with their words, and what stands behind the names of their sheets. */
export function classesOfJob(
  { prepared, period }: PaperJob,
  language: Language,
): readonly { readonly words: PeriodWords; readonly suffix: string }[] {
  if (period === null) return [];
  const all = wordsOfClasses(language, prepared, period);
  const suffixes = fileWords(all.map((words) => words.period.label ?? ''));
  return all.map((words, n) => ({ words, suffix: all.length === 1 ? '' : `-${suffixes[n]}` }));
}

/** The class in the head of a sheet, where the visit has several. */
export const classFacts = ({ say, period }: PeriodWords): readonly (readonly [string, string])[] =>
  period.label === null ? [] : [[say('sheet.rotation.class'), period.label]];

/** From when to when the period is, and how groups move on. */
export const timeFacts = ({ say, at, period }: PeriodWords): readonly (readonly [string, string])[] => [
  [say('sheet.rotation.period'), say('sheet.rotation.from-to', { from: at(0), to: at(period.lasts) })],
  [say('sheet.rotation.way'), say(`sheet.rotation.way.${period.rotation.way}`)],
];

import { en, type WordKey } from './en.ts';
import { es } from './es.ts';
import { type TeacherKey, teacherEn } from './teacher-en.ts';
import { teacherEs } from './teacher-es.ts';
import { filledIn } from './words.ts';

export type { TeacherKey };
export type TeacherSay = (
  key: WordKey | TeacherKey,
  facts?: Readonly<Record<string, string | number>>,
) => string;

/** As `sayIn`, with what only the teacher's page says: a group's page doesn't load that. */
export const teacherSayIn = (language: string): TeacherSay => {
  const words: Readonly<Record<WordKey | TeacherKey, string>> = language.startsWith('es')
    ? { ...es, ...teacherEs }
    : { ...en, ...teacherEn };
  return (key, facts = {}) => filledIn(words[key], facts);
};

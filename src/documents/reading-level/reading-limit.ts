import { isNotDefined } from '../../core/description/not-defined.ts';
import type { AgeRange } from '../../core/files/activity.ts';
import { leastScoreForGrade } from './formulas.ts';
import type { ReadingLanguage, ReadingLevel } from './reading-level.ts';

/** How hard a text may be for the youngest who reads it. */
export interface ReadingLimit {
  readonly age: number;
  /** The activity says no age: the youngest that such an activity is made for is taken. */
  readonly isAssumed: boolean;
  readonly grade: number;
  /** Where a score is asked for instead of a grade: the least that will do. */
  readonly leastScore: number | null;
}

/** Pupils are 8 to 14; who says nothing is taken to mean the youngest. */
const YOUNGEST = 8;
/** A pupil of eight is in the third grade: common practice, no source. */
const AGE_AT_SCHOOL_START = 5;

/**
 * The limit for an activity's age: the grade of its youngest readers, and for Spanish the least Fernández
 * Huerta score for that grade.
 *
 * @example readingLimit({ from: 9, to: 11 }, 'en').grade // => 4
 * @example readingLimit({ from: 9, to: 11 }, 'es').leastScore // => 90
 * @example readingLimit(null, 'en') // => { age: 8, isAssumed: true, grade: 3, leastScore: null }
 */
export function readingLimit(age: AgeRange | null, language: ReadingLanguage): ReadingLimit {
  const youngest = age?.from ?? YOUNGEST;
  const grade = youngest - AGE_AT_SCHOOL_START;
  return {
    age: youngest,
    isAssumed: age === null,
    grade,
    leastScore: language === 'en' ? null : leastScoreForGrade(grade),
  };
}

/** A step is read with the hands full; longer ones are lost half-way: common practice, no source. */
export const MOST_WORDS_IN_A_STEP = 12;

/** Whether a text is easy enough by its formula; a text without words is. */
export function isEasyEnough({ score }: ReadingLevel, limit: ReadingLimit): boolean {
  if (isNotDefined(score)) return true;
  return score.by === 'grade' ? score.grade <= limit.grade : score.score >= (limit.leastScore ?? 0);
}

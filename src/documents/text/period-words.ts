import { ownWordsIn, titleIn } from '../../core/files/titles.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { ClassPeriod, FilledWait, Period } from '../../core/rotation/class-period.ts';
import type { RotationTable } from '../../core/rotation/rotation.ts';
import type { Stay, Timetable } from '../../core/rotation/timetable.ts';
import { clockTold, momentText } from '../printing/time-text.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { type Say, sayIn } from '../sheets/say.ts';

/** What everything that tells of one class's period has at hand. */
export interface PeriodWords {
  readonly language: Language;
  readonly say: Say;
  readonly period: ClassPeriod;
  /** Titles of the tables in this language, by mark. */
  readonly titles: ReadonlyMap<string, string>;
  /** A moment as the period tells it: time of day, or minutes from its start. */
  readonly at: (time: number) => string;
}

/** The words for one class. */
export const periodWords = (
  language: Language,
  { tables }: Pick<Prepared, 'tables'>,
  period: ClassPeriod,
): PeriodWords => ({
  language,
  say: sayIn(language),
  period,
  titles: new Map(tables.map((table) => [table.mark, titleIn(language, table)])),
  at: (time) => momentText(clockTold(period), time),
});

/** The words for each class of the day, in its order. */
export const wordsOfClasses = (
  language: Language,
  prepared: Pick<Prepared, 'tables'>,
  { classes }: Period,
): readonly PeriodWords[] => classes.map((each) => periodWords(language, prepared, each));

/** The timetable of a class; `null` where its wishes clash or none was found. */
export const timetableOf = ({ outcome }: Pick<ClassPeriod, 'outcome'>): Timetable | null =>
  outcome.kind === 'timetable' ? outcome.timetable : null;

/** A table with its title, where it has one: "3, Blocks and falls". */
export function tableWords({ titles }: Pick<PeriodWords, 'titles'>, mark: string): string {
  const title = titles.get(mark) ?? '';
  return title === '' ? mark : `${mark}, ${title}`;
}

/** An adult as the plan calls her: her own label, or a number. */
export const adultWords = ({ say, period }: Pick<PeriodWords, 'say' | 'period'>, label: string): string =>
  period.adultsAreCounted ? say('rotation.adult.counted', { n: label }) : label;

/** What was done before now and what is planned, each once, in the order of time. */
export function staysOf(period: ClassPeriod): readonly (Stay & { readonly isDone: boolean })[] {
  const done = period.underWay?.done ?? [];
  const key = ({ group, table, from }: Stay): string => JSON.stringify([group, table, from]);
  const known = new Set(done.map(key));
  const planned = (timetableOf(period)?.stays ?? []).filter((stay) => !known.has(key(stay)));
  return [
    ...done.map((stay) => ({ ...stay, isDone: true })),
    ...planned.map((stay) => ({ ...stay, isDone: false })),
  ].sort((a, b) => a.from - b.from);
}

/** Everybody's waiting, each with what there is to do. */
export function waitsOf(period: ClassPeriod): readonly FilledWait[] {
  if (period.waits.length > 0) return period.waits;
  return (timetableOf(period)?.waits ?? []).map((wait) => ({ ...wait, task: null }));
}

/** Nobody begins anything in less, seconds: common practice, no source. */
const WORTH_TELLING = 120;

/** Waits that have something to do in them, or that are long enough to need it. */
export const longWaitsOf = (period: ClassPeriod): readonly FilledWait[] =>
  waitsOf(period).filter(({ task, from, to }) => task !== null || to - from >= WORTH_TELLING);

/** A table of the rotation by its mark. */
export const tableOf = ({ rotation }: ClassPeriod, mark: string): RotationTable | undefined =>
  rotation.tables.find((table) => table.mark === mark);

/** The task of a wait on paper, in the language of whoever waits. */
export const paperTask = (language: Language, task: NonNullable<FilledWait['task']>): string =>
  task.kind === 'paper' ? (ownWordsIn(language, task) ?? '') : '';

/** Stretches of one adult at one table; from one group to the next she stays. */
export interface Post {
  readonly adult: string;
  readonly table: string;
  readonly copy: number;
  readonly from: number;
  readonly to: number;
}

/** Nobody goes away from a table and comes back for less, seconds: common practice, no source. */
const SHORT_PAUSE = 180;

/** Where adults stand, by adult and time; what only a walk or a reset parts is one stretch. */
export function postsOf(period: ClassPeriod): readonly Post[] {
  const stands = [...(timetableOf(period)?.stands ?? [])].sort((a, b) => a.from - b.from);
  return period.rotation.adults.flatMap(({ label }) => {
    const own: Post[] = [];
    for (const stand of stands.filter(({ adult }) => adult === label)) {
      const last = own.at(-1);
      const goesOn =
        last !== undefined &&
        last.table === stand.table &&
        last.copy === stand.copy &&
        stand.from - last.to <= SHORT_PAUSE;
      if (last !== undefined && goesOn) own[own.length - 1] = { ...last, to: Math.max(last.to, stand.to) };
      else own.push(stand);
    }
    return own;
  });
}

/** The marks that a group goes to, in its order; a wait is a dash. */
export function routeOf(period: ClassPeriod, group: string): readonly string[] {
  return staysOf(period)
    .filter((stay) => stay.group === group)
    .map(({ table }) => table);
}

/** A route as one line. */
export const routeText = (marks: readonly string[]): string => marks.join(' › ');

/** How long in words that promise no more than they know: whole minutes. */
export function aboutLength(language: Language, time: number): string {
  if (time < 30) return sentence(language, 'rotation.time.under');
  const minutes = Math.max(1, Math.round(time / 60));
  return sentence(language, 'rotation.time.about', { time: `${minutes} min` });
}

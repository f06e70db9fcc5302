import { titleIn } from '../../core/files/titles.ts';
import type { Prepared } from '../../core/prepare.ts';
import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import type { ClassPeriod, Period } from '../../core/rotation/class-period.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { sayIn } from '../sheets/say.ts';
import { adultWords, postsOf } from '../text/period-words.ts';
import { type CalendarEvent, calendarText } from './calendar-text.ts';

/** Whose calendar: all of it, or what concerns one group, one table or one adult. */
export interface CalendarOf {
  readonly group: string | null;
  readonly table: string | null;
  readonly adult: string | null;
}

/** Why there is no calendar. */
export type NoCalendar = 'no-date' | 'no-start' | 'no-timetable';

/** The period as a calendar, or why there is none: a calendar needs a day, a clock and a timetable. */
export function periodCalendar(
  language: Language,
  prepared: Prepared,
  period: Period,
  of: CalendarOf,
  stamp: string,
):
  | { readonly kind: 'calendar'; readonly text: string }
  | { readonly kind: 'none'; readonly because: NoCalendar } {
  const none = (because: NoCalendar) => ({ kind: 'none', because }) as const;
  const events: CalendarEvent[] = [];
  for (const each of period.classes) {
    const { date, starts } = each.clock;
    if (date === null) return none('no-date');
    if (starts === null) return none('no-start');
    if (each.outcome.kind !== 'timetable') return none('no-timetable');
    events.push(...eventsOf(language, prepared, each, of, { date, starts }));
  }
  return { kind: 'calendar', text: calendarText(events, stamp) };
}

interface Clock {
  readonly date: string;
  readonly starts: Seconds;
}

function eventsOf(
  language: Language,
  prepared: Prepared,
  ofClass: ClassPeriod,
  of: CalendarOf,
  clock: Clock,
): readonly CalendarEvent[] {
  if (ofClass.outcome.kind !== 'timetable') return [];
  const { stays } = ofClass.outcome.timetable;
  const say = (key: string, facts: Readonly<Record<string, string>> = {}): string =>
    sentence(language, `calendar.${key}`, facts);
  const at = (
    what: readonly string[],
    from: Seconds,
    to: Seconds,
    summary: string,
    description = '',
    categories: readonly string[] = [],
  ): CalendarEvent => ({
    uid: uidOf(prepared, ofClass, clock, what),
    date: clock.date,
    from: seconds(clock.starts + from),
    to: seconds(clock.starts + to),
    summary: ofClass.label === null ? summary : say('class', { class: ofClass.label, what: summary }),
    description,
    categories,
  });
  const titleOf = (mark: string): string => {
    const table = prepared.tables.find((each) => each.mark === mark);
    return table === undefined ? '' : titleIn(language, table);
  };
  const isHere = (group: string | null, table: string | null): boolean =>
    of.adult === null &&
    (of.group === null || of.group === group) &&
    (of.table === null || of.table === table);
  const { rotation, introduction, lasts, talkAtTheEnd } = ofClass;
  return [
    ...(of.table === null && introduction > 0
      ? [at(['introduction'], seconds(0), introduction, say('introduction'))]
      : []),
    ...stays
      .filter(({ group, table }) => isHere(group, table))
      .map(({ group, table, from, to }) =>
        at(['group', group, 'table', table], from, to, say('stay', { group, table }), titleOf(table), [
          say('group', { group }),
        ]),
      ),
    ...ofClass.waits
      .filter(({ group, task }) =>
        isHere(group, of.table === null ? null : task?.kind === 'setup' ? task.table : null),
      )
      .filter(({ task }) => task !== null)
      .map(({ group, from, to, task }) =>
        at(
          ['group', group, 'wait', String(from)],
          from,
          to,
          say('wait', { group }),
          taskText(language, task, say),
          [say('group', { group })],
        ),
      ),
    ...postsOf(ofClass)
      .filter(({ adult }) => of.adult === adult)
      .map(({ adult, table, from, to }) =>
        at(
          ['adult', adult, 'table', table, String(from)],
          seconds(from),
          seconds(to),
          say('stand', { adult: adultWords({ say: sayIn(language), period: ofClass }, adult), table }),
          titleOf(table),
        ),
      ),
    ...(of.table === null
      ? rotation.breaks.map(({ from, to }) => at(['break', String(from)], from, to, say('break')))
      : []),
    ...(of.table === null && talkAtTheEnd > 0
      ? [at(['talk'], seconds(lasts - talkAtTheEnd), lasts, say('talk'))]
      : []),
  ];
}

function taskText(
  language: Language,
  task: ClassPeriod['waits'][number]['task'],
  say: (key: string, facts: Readonly<Record<string, string>>) => string,
): string {
  if (task === null) return '';
  if (task.kind === 'paper') return task.texts[language] ?? task.text;
  return say('setup', { setup: task.setup, table: task.table });
}

/** Kit, day, class and what it is: written again after a change, a stay moves in the calendar and is not doubled. */
const uidOf = ({ kit }: Prepared, { label }: ClassPeriod, { date }: Clock, what: readonly string[]): string =>
  `${[kit?.serial ?? '', date, ...(label === null ? [] : [label]), ...what].map(encodeURIComponent).join('/')}@handspike`;

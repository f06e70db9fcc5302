import { titleIn } from '../../core/files/titles.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { TeachPlan } from '../../core/rotation/what-to-teach.ts';
import type { Teaching } from '../../core/teach.ts';
import { lengthText, momentText } from '../printing/time-text.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { wrapped } from './columns.ts';
import { routeText } from './period-words.ts';
import { plainJson } from './plain-json.ts';

const WIDTH = 80;

/** What to teach in each period, the best way first, with what is left out. */
export function teachText(language: Language, prepared: Prepared, teaching: readonly Teaching[]): string {
  return teaching.map((each) => classText(language, prepared, each).join('\n')).join('\n\n');
}

function classText(
  language: Language,
  { tables }: Prepared,
  { asked, periods, answer }: Teaching,
): readonly string[] {
  const say = (key: string, facts: Readonly<Record<string, string | number | readonly string[]>> = {}) =>
    sentence(language, `teach.${key}`, facts);
  const named = (mark: string): string => {
    const table = tables.find((each) => each.mark === mark);
    const title = table === undefined ? '' : titleIn(language, table);
    return title === '' || title === mark ? mark : `${mark} (${title})`;
  };
  const lengths = periods.map(lengthText);
  const head =
    periods.length === 1
      ? say('head.one', { length: lengths[0] ?? '' })
      : say('head', { count: periods.length, lengths });
  return [
    ...wrapped(asked.label === null ? head : `${say('class', { class: asked.label })} ${head}`, WIDTH),
    ...(plansOf(answer).length === 0 ? ['', ...wrapped(say('nothing'), WIDTH)] : []),
    ...plansOf(answer).flatMap((plan) => ['', ...planLines(plan)]),
    ...(answer.isCutShort ? ['', ...wrapped(say('cut-short'), WIDTH)] : []),
  ];

  /** Where one group goes in each period. */
  function routeLine({ periods: taught }: TeachPlan, group: string): string {
    const routes = taught.map(({ timetable }) =>
      (timetable?.stays ?? []).filter((stay) => stay.group === group).map(({ table }) => table),
    );
    const lines = routes.map((route) => (route.length === 0 ? '–' : routeText(route)));
    return say('route', { group, routes: lines.join(' | ') });
  }

  function planLines(plan: TeachPlan): readonly string[] {
    const lines = [
      ...plan.periods.map(({ tables: marks, timetable }, n) => {
        const period = n + 1;
        if (timetable === null) return say('period.nothing', { period });
        const clock = n === 0 ? asked.clock : { ...asked.clock, starts: null };
        const ends = momentText(clock, timetable.ends);
        const isAll = marks.length === asked.rotation.tables.length;
        const what = isAll ? say('all-tables') : say('tables', { tables: marks.map(named) });
        return say(clock.starts === null ? 'period.after' : 'period', { period, tables: what, ends });
      }),
      ...(plan.kind === 'own tables' ? [] : asked.rotation.groups.map(({ label }) => routeLine(plan, label))),
      ...(plan.leftOut.length === 0 ? [] : [say('left-out', { tables: plan.leftOut.map(named) })]),
      ...notDone(plan).map(([table, groups]) => say('not-done', { table: named(table), groups })),
      ...(plan.leftOut.length + plan.notDone.length === 0 ? [say('all-in')] : []),
    ];
    return [
      ...wrapped(say(`kind.${plan.kind.replace(' ', '-')}`), WIDTH),
      ...lines.flatMap((line) =>
        wrapped(line, WIDTH - 4).map((each, n) => `${n === 0 ? '  ' : '    '}${each}`),
      ),
    ];
  }
}

/** A plan in which nobody does anything is none. */
const plansOf = ({ plans }: Teaching['answer']): readonly TeachPlan[] =>
  plans.filter(({ visits }) => visits > 0);

/** By table: the groups that don't do it. */
const notDone = ({ notDone: visits }: TeachPlan): readonly (readonly [string, readonly string[]])[] =>
  [...new Set(visits.map(({ table }) => table))]
    .sort()
    .map((table) => [table, visits.filter((each) => each.table === table).map(({ group }) => group)]);

/** The same as JSON, times in seconds since each period began. */
export const teachJson = (teaching: readonly Teaching[]): string =>
  plainJson({
    handspike: 'teaching 1',
    classes: teaching.map(({ asked, periods, answer }) => ({ class: asked.label, periods, ...answer })),
  });

/** Whether something was found for every class. */
export const isTaught = (teaching: readonly Teaching[]): boolean =>
  teaching.every(({ answer }) => plansOf(answer).length > 0);

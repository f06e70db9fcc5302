import type { Diagnostic, Facts, Place } from '../diagnostics/diagnostic.ts';
import type { Seconds } from '../quantities/brands.ts';
import type { Activity } from './activity.ts';
import { nearestFact, type Path } from './context.ts';
import type { DayTime } from './day-time.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import { lettersOf } from './group-words.ts';
import type { Visit } from './visit-file.ts';

type Say = (code: FileCode, path: Path, facts?: Facts, severity?: Diagnostic['severity']) => void;

/** What a visit says of its day, held against the tables of the activity and against itself. */
export function dayFindings(activity: Activity, visit: Visit): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const say: Say = (code, path, facts = {}, severity = 'error') => {
    const on = code === 'helpers-and-adults' || path[0] === 'copies' ? 'key' : 'value';
    const at: Place = { file: visit.file, path, on };
    found.push(fileFinding(code, at, facts, severity));
  };
  checkTables(activity, visit, say);
  checkGroups(visit, say);
  checkClasses(visit, say);
  checkPupils(visit, say);
  checkTimes(activity, visit, say);
  const { adults } = visit.day;
  if (adults !== null && visit.helpers !== null && adults.length < visit.helpers)
    say(
      'helpers-and-adults',
      ['helpers'],
      { helpers: visit.helpers, adults: adults.map(({ label }) => label) },
      'warning',
    );
  return found;
}

function checkTables({ tables }: Activity, { day }: Visit, say: Say): void {
  const known = tables.map(({ mark }) => mark);
  const hold = (written: string | null, path: Path): void => {
    if (written !== null && !known.includes(written))
      say('unknown-table', path, { written, known, ...nearestFact(written, known) });
  };
  for (const { table, path } of [...day.copies, ...day.closed]) hold(table, path);
  for (const { at, path } of day.adults ?? []) for (const table of at ?? []) hold(table, [...path, 'at']);
  for (const { tables: row, path } of day.beside ?? []) for (const table of row) hold(table, path);
  for (const wish of day.wishes) {
    const at = (key: string): Path => [...wish.path, key];
    hold(wish.first, at('first'));
    hold(wish.last, at('last'));
    hold(wish.at?.table ?? null, at('at'));
    hold(wish.order?.table ?? null, at('table'));
    for (const table of wish.mustDo) hold(table, at('must do'));
    for (const table of wish.skips) hold(table, at('skips'));
    for (const table of wish.order?.after ?? []) {
      hold(table, at('after'));
      if (table === wish.order?.table) say('after-itself', at('after'), { table });
    }
  }
}

/** Labels of the largest class; where nobody says how many groups there are, any label may be meant. */
function checkGroups(visit: Visit, say: Say): void {
  const { day } = visit;
  const counts = [visit.groups, ...day.classes.map(({ groups }) => groups)].filter((each) => each !== null);
  if (counts.length === 0) return;
  const most = Math.max(...counts, visit.groupLabels.length);
  const known = Array.from({ length: most }, (_, n) => visit.groupLabels[n] ?? lettersOf(n));
  const hold = (written: string, path: Path): void => {
    if (!known.includes(written))
      say('unknown-group', path, { written, known, ...nearestFact(written, known) });
  };
  for (const { groups, path } of [...day.apart, ...day.together]) for (const each of groups) hold(each, path);
  for (const { groups, path } of day.wishes) for (const each of groups ?? []) hold(each, [...path, 'group']);
}

/** Somebody alone is a group still; nobody is none. */
function checkPupils(visit: Visit, say: Say): void {
  const { classes } = visit.day;
  for (const each of classes.length === 0 ? [{ ...visit, path: [] }] : classes) {
    const pupils = each.pupils ?? visit.pupils;
    const groups = each.groups ?? visit.groups;
    if (pupils !== null && groups !== null && pupils < groups)
      say('fewer-pupils-than-groups', pupilsAt(each), { pupils, groups }, 'note');
  }
}

const pupilsAt = ({ pupils, path }: { readonly pupils: number | null; readonly path: Path }): Path =>
  pupils === null ? ['pupils'] : [...path, 'pupils'];

function checkClasses({ period, day }: Visit, say: Say): void {
  const known = day.classes.map(({ label }) => label);
  for (const { ofClass, path } of day.wishes)
    if (ofClass !== null && !known.includes(ofClass))
      say('unknown-class', [...path, 'class'], {
        written: ofClass,
        ...(known.length === 0 ? {} : { known }),
        ...nearestFact(ofClass, known),
      });
  for (const [n, each] of day.classes.entries()) {
    const before = day.classes[n - 1];
    const lasts = (before?.period ?? period)?.value;
    if (before !== undefined && lasts !== undefined && before.starts + lasts > each.starts)
      say('classes-overlap', [...each.path, 'starts'], { other: before.label, class: each.label });
  }
}

/** Times that are no time of the period, and a period that is all talk. */
function checkTimes(activity: Activity, visit: Visit, say: Say): void {
  const { day } = visit;
  const talks = (activity.period.introduction?.value ?? 0) + (activity.period.talkAtTheEnd?.value ?? 0);
  const periods = [
    { of: visit.period, path: ['period'] as Path },
    ...day.classes.map((each) => ({ of: each.period, path: [...each.path, 'period'] })),
  ];
  for (const { of, path } of periods)
    if (of !== null && talks >= of.value)
      say('no-time-for-tables', path, { talks: { si: talks, dimension: 'time' } });
  const spans = spansOf(visit);
  if (spans.length === 0) return;
  const times = [
    ...day.closed.flatMap(({ from, until }) => [from, until]),
    ...day.breaks.map(({ at }) => at),
    ...day.wishes.flatMap(({ at, comesAt, away }) => [
      at?.time ?? null,
      comesAt,
      away?.from ?? null,
      away?.until ?? null,
    ]),
  ];
  for (const time of times)
    if (time !== null && !spans.some((span) => isWithin(time, span)))
      say('outside-the-period', time.path, {}, 'warning');
}

interface Span {
  /** Since midnight; `null` where nobody says. */
  readonly starts: Seconds | null;
  readonly lasts: Seconds;
}

const spansOf = ({ period, day }: Visit): readonly Span[] =>
  (day.classes.length > 0 ? day.classes : [{ starts: day.starts, period: null }]).flatMap((each) => {
    const lasts = (each.period ?? period)?.value;
    return lasts === undefined ? [] : [{ starts: each.starts, lasts }];
  });

const isWithin = ({ since, time }: DayTime, { starts, lasts }: Span): boolean => {
  if (since === 'start') return time <= lasts;
  return starts === null || (time >= starts && time <= starts + lasts);
};

import type { AskedPeriod } from '../core/files/class-rotation.ts';
import { clockTime } from '../core/files/day-time.ts';
import { type DoneFile, readDoneFile } from '../core/files/done-file.ts';
import type { PeriodChanges } from '../core/files/period-changes.ts';
import type { PeriodSoFar } from '../core/plan-on.ts';
import { type Seconds, seconds } from '../core/quantities/brands.ts';
import type { DecimalMark } from '../core/quantities/print-quantity.ts';
import type { DoneVisit, PeriodChange } from '../core/rotation/history.ts';
import type { Language } from '../documents/sentences/language.ts';
import { sentence } from '../documents/sentences/sentence.ts';
import type { Arguments, Options } from './arguments.ts';
import { type Terminal, UsageFault } from './command.ts';
import { readTable } from './files.ts';
import { refuseTooLate, wholeIn } from './period-changes-in.ts';

export const SO_FAR_OPTIONS = { now: 'text', done: 'text', stop: 'text' } as const satisfies Options;

export const SO_FAR_HELP: readonly string[] = [
  '--now TIME      plan anew from now on, as 25 (minutes from the start) or 09:40; the what-ifs hold from then:',
  '                --late B:10 comes in ten minutes, --close 4 broke, --minutes moves the bell',
  '--done FILE     what has been done by now: a CSV with group, table, from, to; blank "to": still there',
  '--stop N        everything stops for N minutes from now',
];

/** What is asked from the start of the period: what remains of the what-ifs where the period is under way. */
export function fromTheStart(found: Arguments, changes: PeriodChanges): PeriodChanges {
  if (found.text('now') === null) {
    for (const option of ['done', 'stop'])
      if (found.text(option) !== null) throw new UsageFault(`--${option} goes with --now: when is that?`);
    return changes;
  }
  const { way, copies, groups } = changes;
  return {
    ...(way === undefined ? {} : { way }),
    ...(copies === undefined ? {} : { copies }),
    ...(groups === undefined ? {} : { groups }),
  };
}

/** How far the period has come, as it could be read. */
export interface SoFarRead {
  /** `null` where it has not begun. */
  readonly soFar: PeriodSoFar | null;
  /** Whether every line of what has been done could be used. */
  readonly isWhole: boolean;
}

/** How far the period has come; `null` where nothing of what has been done can be read, which is then told. */
export function soFarIn(
  found: Arguments,
  changes: PeriodChanges,
  classes: readonly AskedPeriod[],
  decimal: DecimalMark,
  terminal: Terminal,
  language: Language,
): SoFarRead | null {
  const text = found.text('now');
  if (text === null) return { soFar: null, isWhole: true };
  const { asked, now } = momentIn(text, classes);
  const file = found.text('done');
  const changed = changesFrom(found, changes, asked, now);
  const soFar = {
    ofClass: asked.label,
    now,
    changes: changed,
    ...(changes.lasts === undefined ? {} : { lasts: changes.lasts }),
  };
  if (file === null) return { soFar: { ...soFar, done: null }, isWhole: true };
  const known = classes.flatMap(({ label }) => (label === null ? [] : [label]));
  const read = doneIn(file, asked, known, now, decimal, terminal, language);
  return read === null ? null : { soFar: { ...soFar, done: read.done }, isWhole: read.isWhole };
}

/** Minutes from the start where there is one class, else a clock time within a class's period. */
function momentIn(text: string, classes: readonly AskedPeriod[]): { asked: AskedPeriod; now: Seconds } {
  const clock = clockTime(text);
  const [first] = classes;
  if (clock !== null)
    for (const asked of classes) {
      const at = clock - (asked.clock.starts ?? Infinity);
      if (at >= 0 && at <= asked.lasts) return { asked, now: seconds(at) };
    }
  const minutes = /^\d{1,3}$/.test(text) ? 60 * Number(text) : null;
  if (first !== undefined && classes.length === 1 && minutes !== null && minutes <= first.lasts)
    return { asked: first, now: seconds(minutes) };
  throw new UsageFault(
    `--now is a time within the period, as 25 (minutes from its start) or 09:40, not "${text}"`,
  );
}

function doneIn(
  name: string,
  asked: AskedPeriod,
  classes: readonly string[],
  now: Seconds,
  decimal: DecimalMark,
  terminal: Terminal,
  language: Language,
): { readonly done: readonly DoneVisit[]; readonly isWhole: boolean } | null {
  const { rotation, clock, label } = asked;
  const file: DoneFile = readDoneFile(readTable(terminal.folder, name), {
    groups: rotation.groups.map((group) => group.label),
    tables: rotation.tables.map(({ mark }) => mark),
    copies: Object.fromEntries(rotation.tables.map(({ mark, copies }) => [mark, copies])),
    classes,
    starts: clock.starts,
    decimal,
  });
  if (file.lacksHeading) {
    const because = sentence(language, 'done.no-heading');
    terminal.tell(sentence(language, 'done.unreadable', { file: name, because }));
    return null;
  }
  const ours = file.stays.filter(({ ofClass }) => ofClass === null || ofClass === label);
  const refused = [
    ...file.refused,
    ...ours
      .filter(({ from }) => from >= now)
      .map(({ line, group, table }) => ({
        line,
        text: `${group}, ${table}`,
        because: 'done.later',
        other: null,
      })),
  ];
  tellRefused(name, refused, terminal, language);
  const done = ours
    .filter(({ from }) => from < now)
    .map(({ group, table, copy, from, to }) => ({ group, table, copy, from, to }));
  return { done, isWhole: refused.length === 0 };
}

/** Lines that can't be used, each with its reason, and what to do. */
export function tellRefused(
  name: string,
  refused: DoneFile['refused'],
  terminal: Terminal,
  language: Language,
): void {
  for (const { line, text, because, other } of refused) {
    const why = sentence(language, because, other === null ? {} : { other });
    terminal.tell(sentence(language, 'done.refused', { line, text, because: why }));
  }
  if (refused.length > 0) {
    const lines = refused.map(({ line }) => String(line));
    terminal.tell(sentence(language, 'done.put-right', { file: name, lines }));
  }
}

/** The what-ifs as what is otherwise from now on. */
function changesFrom(
  found: Arguments,
  changes: PeriodChanges,
  { rotation, talkAtTheEnd }: AskedPeriod,
  now: Seconds,
): readonly PeriodChange[] {
  const stop = wholeIn(found, 'stop', 1, 300);
  const { lasts, closed, late, adults } = changes;
  const bell = lasts === undefined ? rotation.bell : Math.max(now, lasts - talkAtTheEnd);
  refuseTooLate(late, { since: now, bell, groups: rotation.groups.length });
  return [
    ...(closed ?? []).map((table): PeriodChange => ({ kind: 'broken', table, copy: null, until: null })),
    ...(late ?? []).map(({ group, by }): PeriodChange => ({ kind: 'late', group, until: seconds(now + by) })),
    ...(adults === undefined ? [] : rotation.adults.slice(adults)).map(
      ({ label }): PeriodChange => ({ kind: 'adult gone', adult: label }),
    ),
    ...(lasts === undefined
      ? []
      : [{ kind: 'bell', bell: seconds(Math.max(now, lasts - talkAtTheEnd)) } as const]),
    ...(stop === null ? [] : [{ kind: 'break', from: now, until: seconds(now + 60 * stop) } as const]),
  ];
}

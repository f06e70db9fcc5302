import type { ClassPeriod, FilledWait } from '../../core/rotation/class-period.ts';
import { clockTold } from '../printing/time-text.ts';
import {
  adultWords,
  longWaitsOf,
  type PeriodWords,
  postsOf,
  staysOf,
  tableOf,
  timetableOf,
} from '../text/period-words.ts';

/** What the lines of a chart stand for. */
export type ChartLines = 'groups' | 'tables' | 'adults';

/** A rotation as lines of blocks, before anybody draws it: the same for paper, page and terminal. Seconds from the start. */
export interface RotationChart {
  readonly lines: ChartLines;
  readonly rows: readonly ChartRow[];
  readonly lasts: number;
  readonly begins: number;
  readonly bell: number;
  readonly breaks: ClassPeriod['rotation']['breaks'];
  /** When all move; none where tables free up. */
  readonly signals: readonly number[];
  readonly now: number | null;
  readonly clock: ClassPeriod['clock'];
}

export interface ChartRow {
  /** What stands before the line, large: "A", "3". */
  readonly label: string;
  /** The same where it stands alone: "Group A". */
  readonly name: string;
  /** The title of a table. */
  readonly about: string | null;
  /** A word from the beginning on: a group that comes late. */
  readonly late: { readonly text: string; readonly to: number } | null;
  readonly parts: readonly ChartPart[];
}

export interface ChartPart {
  readonly kind: 'stay' | 'done' | 'wait' | 'closed';
  /** A mark or a label, large. */
  readonly what: string;
  /** Shorter words, for where the first don't fit. */
  readonly short: string | null;
  readonly title: string | null;
  readonly from: number;
  readonly to: number;
  /** Until when the table is put back; `to` where it isn't. */
  readonly resetTo: number;
  readonly hasAdult: boolean;
}

/** A class's chart, or `null` where it has no timetable. */
export function rotationChart(words: PeriodWords, lines: ChartLines): RotationChart | null {
  const { period } = words;
  const timetable = timetableOf(period);
  if (timetable === null) return null;
  const { rotation } = period;
  return {
    lines,
    rows: rowsOf(words, lines),
    lasts: period.lasts,
    begins: rotation.begins,
    bell: rotation.bell,
    breaks: rotation.breaks,
    signals: timetable.rounds?.map(({ to }) => to) ?? [],
    now: period.underWay?.now ?? null,
    clock: clockTold(period),
  };
}

function rowsOf(words: PeriodWords, lines: ChartLines): readonly ChartRow[] {
  const { rotation } = words.period;
  switch (lines) {
    case 'groups':
      return rotation.groups.map(({ label, arrives }) => groupRow(words, label, arrives));
    case 'tables':
      return rotation.tables.flatMap(({ mark, copies }) =>
        Array.from({ length: copies }, (_, n) => tableRow(words, mark, n + 1, copies)),
      );
    case 'adults':
      return rotation.adults.map(({ label }) => adultRow(words, label));
  }
}

function groupRow(words: PeriodWords, label: string, arrives: number): ChartRow {
  const { say, period, titles, at } = words;
  const stays = staysOf(period).filter(({ group }) => group === label);
  return {
    label,
    name: say('rotation.row.group', { group: label }),
    about: null,
    late:
      arrives > period.rotation.begins
        ? { text: say('rotation.mark.late', { time: at(arrives) }), to: arrives }
        : null,
    parts: [
      ...stays.map((stay): ChartPart => {
        const table = tableOf(period, stay.table);
        return {
          kind: stay.isDone ? 'done' : 'stay',
          what: stay.table,
          short: null,
          title: titles.get(stay.table) ?? null,
          from: stay.from,
          to: stay.to,
          resetTo: stay.to + (table?.reset.value ?? 0),
          hasAdult: table?.needsAdult ?? false,
        };
      }),
      ...longWaitsOf(period)
        .filter(({ group }) => group === label)
        .map((wait) => waitPart(words, wait)),
    ].sort((a, b) => a.from - b.from),
  };
}

function waitPart({ say, period }: PeriodWords, { task, from, to }: FilledWait): ChartPart {
  // Until the bell there is time to spare, and nothing to wait for.
  const word = say(to >= period.rotation.bell ? 'rotation.mark.spare' : 'rotation.mark.wait');
  const [what, short] =
    task === null
      ? [word, null]
      : task.kind === 'setup'
        ? [
            say('rotation.mark.setup', { setup: task.setup }),
            say('rotation.mark.setup.short', { setup: task.setup }),
          ]
        : [say('rotation.mark.paper'), null];
  return { kind: 'wait', what, short, title: null, from, to, resetTo: to, hasAdult: false };
}

function tableRow(words: PeriodWords, mark: string, copy: number, copies: number): ChartRow {
  const { say, period, titles } = words;
  const table = tableOf(period, mark);
  const closed = period.closed.filter((each) => each.table === mark);
  return {
    label: copies > 1 ? `${mark} · ${copy}` : mark,
    name:
      copies > 1
        ? say('rotation.row.copy', { table: mark, copy, copies })
        : say('rotation.row.table', { table: mark }),
    about: titles.get(mark) ?? null,
    late: null,
    parts: [
      ...staysOf(period)
        .filter((stay) => stay.table === mark && stay.copy === copy)
        .map(
          (stay): ChartPart => ({
            kind: stay.isDone ? 'done' : 'stay',
            what: stay.group,
            short: null,
            title: null,
            from: stay.from,
            to: stay.to,
            resetTo: stay.to + (table?.reset.value ?? 0),
            hasAdult: table?.needsAdult ?? false,
          }),
        ),
      ...closed.map(({ during }): ChartPart => {
        const [from, to] = [during?.from ?? period.rotation.begins, during?.to ?? period.rotation.bell];
        return {
          kind: 'closed',
          what: say('rotation.mark.closed'),
          short: null,
          title: null,
          from,
          to,
          resetTo: to,
          hasAdult: false,
        };
      }),
    ].sort((a, b) => a.from - b.from),
  };
}

function adultRow(words: PeriodWords, label: string): ChartRow {
  const { period, titles } = words;
  const name = adultWords(words, label);
  return {
    label: name,
    name,
    about: null,
    late: null,
    parts: postsOf(period)
      .filter(({ adult }) => adult === label)
      .map(
        ({ table, from, to }): ChartPart => ({
          kind: 'stay',
          what: table,
          short: null,
          title: titles.get(table) ?? null,
          from,
          to,
          resetTo: to,
          hasAdult: false,
        }),
      ),
  };
}

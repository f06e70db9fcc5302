import { withGuard } from '../../core/files/readings-table.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { Period } from '../../core/rotation/class-period.ts';
import { clockText, clockTold } from '../printing/time-text.ts';
import type { Language } from '../sentences/language.ts';
import {
  adultWords,
  type PeriodWords,
  paperTask,
  postsOf,
  staysOf,
  tableOf,
  waitsOf,
  wordsOfClasses,
} from './period-words.ts';

/** Headings of the columns, the same in every language. */
const COLUMNS = [
  'date',
  'class',
  'kind',
  'group',
  'table',
  'title',
  'copy',
  'round',
  'adult',
  'from',
  'to',
  'from min',
  'to min',
  'ready again min',
  'task',
] as const;

type Row = Partial<Record<(typeof COLUMNS)[number], string>>;

/** Hundredths of a minute are less than a second: rounded to seconds each time is read back as it was. */
const DECIMALS = 2;

/**
 * The period as comma-separated values (RFC 4180), a row a stay, a wait, or a stretch in which an adult
 * stands somewhere, in the order of time. Minutes are from the start of the period, as a decimal number with
 * a point in every language (9.33 is 9 min 20 s; 9:20 would be read as a time of day); no cell is a formula.
 */
export const rotationCsv = (language: Language, prepared: Prepared, period: Period): string =>
  [
    [...COLUMNS],
    ...wordsOfClasses(language, prepared, period)
      .flatMap(rowsOf)
      .map((row) => COLUMNS.map((column) => withGuard(row[column] ?? ''))),
  ]
    .map((row) => `${row.map(cell).join(',')}\r\n`)
    .join('');

function rowsOf(words: PeriodWords): readonly Row[] {
  const { period } = words;
  const rows: readonly (readonly [at: number, row: Row])[] = [
    ...staysOf(period).map(
      (stay) =>
        [
          stay.from,
          {
            ...base(words, stay),
            kind: stay.isDone ? 'done' : 'stay',
            group: stay.group,
            ...tableCells(words, stay),
            round: stay.round === null ? '' : String(stay.round),
            'ready again min': minutes(stay.to + (tableOf(period, stay.table)?.reset.value ?? 0)),
          },
        ] as const,
    ),
    ...waitsOf(period).map((wait) => {
      const { task } = wait;
      const what =
        task === null
          ? {}
          : task.kind === 'setup'
            ? { table: task.table, task: task.setup }
            : { task: paperTask(words.language, task) };
      return [wait.from, { ...base(words, wait), kind: 'wait', group: wait.group, ...what }] as const;
    }),
    ...postsOf(period).map(
      (post) =>
        [
          post.from,
          {
            ...base(words, post),
            kind: 'adult',
            adult: adultWords(words, post.adult),
            ...tableCells(words, post),
          },
        ] as const,
    ),
  ];
  return [...rows].sort(([a], [b]) => a - b).map(([, row]) => row);
}

function base({ period }: PeriodWords, { from, to }: { readonly from: number; readonly to: number }): Row {
  const { label } = period;
  const clock = clockTold(period);
  const day = (at: number): string => (clock.starts === null ? '' : clockText(clock.starts + at));
  return {
    date: clock.date ?? '',
    class: label ?? '',
    from: day(from),
    to: day(to),
    'from min': minutes(from),
    'to min': minutes(to),
  };
}

const tableCells = (
  { titles }: PeriodWords,
  { table, copy }: { readonly table: string; readonly copy: number },
): Row => ({ table, title: titles.get(table) ?? '', copy: String(copy) });

const minutes = (time: number): string => String(Number((time / 60).toFixed(DECIMALS)));

/** A cell in quotes where it needs them. */
const cell = (text: string): string =>
  /[",;\t|\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

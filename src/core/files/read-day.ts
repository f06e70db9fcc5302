import type { Filled } from '../description/fields.ts';
import { choiceIn, countIn, marksIn, measuredIn, textIn } from '../description/filled.ts';
import { type Seconds, seconds } from '../quantities/brands.ts';
import { checkField } from './check-field.ts';
import { checkFields } from './check-fields.ts';
import { asMap, asText, atValue, type Context, listAt, mapAt, type Path } from './context.ts';
import { type DayTime, readClockTime, readDayTime, refuseBackwards } from './day-time.ts';
import type { AdultWords, ClassWords, ClosedWords, DayWords, GroupsWords, RowWords } from './day-words.ts';
import { readMarks } from './marks.ts';
import { entryOf, type MapNode, type Node } from './node.ts';
import { adultFields, breakFields, classFields, closedFields, copiesField, MOVES } from './period-fields.ts';
import { readWishes } from './read-wishes.ts';

/** Keys of a visit that are read here and are no plain fields. */
export const DAY_KEYS = [
  'copies',
  'closed',
  'adults',
  'breaks',
  'apart',
  'together',
  'wishes',
  'beside',
  'classes',
] as const;

/** Reads what a visit says of its day; whether its tables exist is seen only beside the activity. */
export function readDay(root: MapNode, filled: Filled, context: Context): DayWords {
  const written = textIn(filled, 'starts');
  const classes = readClasses(root, context);
  const starts = written === undefined ? null : readClockTime(written, ['starts'], context);
  const day: DayWords = {
    starts,
    move: moveIn(filled),
    groupSize: countIn(filled, 'group size') ?? null,
    copies: readCopies(root, context),
    closed: readClosed(root, context),
    adults: readAdults(root, context),
    breaks: readBreaks(root, context),
    apart: readGroupsThat(root, 'apart', context),
    together: readGroupsThat(root, 'together', context),
    wishes: readWishes(root, context),
    beside: readRows(root, context),
    classes,
  };
  if (written === undefined && classes.length === 0) refuseClockTimes(day, context);
  return day;
}

function moveIn(filled: Filled): DayWords['move'] {
  switch (choiceIn(filled, 'move')) {
    case MOVES[0]:
      return 'signal';
    case MOVES[1]:
      return 'free';
    default:
      return null;
  }
}

function readCopies(root: MapNode, context: Context): DayWords['copies'] {
  return (mapAt(root, 'copies', [], context)?.entries ?? []).flatMap(({ key: table, node }) => {
    const path = ['copies', table];
    const filled = checkField(node, table, copiesField, { path, id: `visit/copies/${table}` }, context);
    return filled?.type === 'count' ? [{ table, copies: filled.count, path }] : [];
  });
}

/** Marks of tables, or blocks with a table and its times. */
function readClosed(root: MapNode, context: Context): DayWords['closed'] {
  const node = entryOf(root, 'closed')?.node;
  if (node === undefined) return [];
  const plain = (table: string, path: Path): ClosedWords => ({ table, from: null, until: null, path });
  if (node.kind !== 'list')
    return readMarks(node, ['closed'], context).map(({ mark, path }) => plain(mark, path));
  return node.items.flatMap((item, n): readonly ClosedWords[] => {
    const path = ['closed', n];
    if (item.kind !== 'map')
      return readMarks(item, path, context).map(({ mark, path: at }) => plain(mark, at));
    const filled = blockOf(item, path, closedFields, context);
    const table = textIn(filled, 'table');
    if (table === undefined) return [];
    const from = timeIn(filled, 'from', path, context);
    const until = timeIn(filled, 'until', path, context);
    refuseBackwards(from, until, context);
    return [{ table, from, until, path: [...path, 'table'] }];
  });
}

function readAdults(root: MapNode, context: Context): DayWords['adults'] {
  if (entryOf(root, 'adults') === undefined) return null;
  const labels = new Set<string>();
  return blocks(root, 'adults', context).flatMap(([map, path]): readonly AdultWords[] => {
    const filled = blockOf(map, path, adultFields, context);
    const label = textIn(filled, 'adult');
    if (label === undefined) return [];
    if (labels.has(label)) atValue(context, [...path, 'adult'], 'adult-twice', { label });
    labels.add(label);
    return [{ label, at: marksIn(filled, 'at') ?? null, path }];
  });
}

function readBreaks(root: MapNode, context: Context): DayWords['breaks'] {
  return blocks(root, 'breaks', context).flatMap(([map, path]) => {
    const filled = blockOf(map, path, breakFields, context);
    const at = timeIn(filled, 'at', path, context);
    const lasts = measuredIn<Seconds>(filled, 'lasts')?.value;
    return at === null || lasts === undefined ? [] : [{ at, lasts: seconds(Math.round(lasts)) }];
  });
}

/** Groups that want to be apart or together: one text, or a list with one for each such set of groups. */
function readGroupsThat(root: MapNode, key: 'apart' | 'together', context: Context): readonly GroupsWords[] {
  return lines(root, key, context).flatMap(([node, path]) => {
    const groups = [...new Set(readMarks(node, path, context).map(({ mark }) => mark))];
    if (groups.length >= 2) return [{ groups, path }];
    if (groups.length === 1) atValue(context, path, 'two-groups-wanted', { key, group: groups[0] ?? '' });
    return [];
  });
}

function readRows(root: MapNode, context: Context): DayWords['beside'] {
  if (entryOf(root, 'beside') === undefined) return null;
  return lines(root, 'beside', context).flatMap(([node, path]): readonly RowWords[] => {
    const tables = readMarks(node, path, context).map(({ mark }) => mark);
    return tables.length === 0 ? [] : [{ tables, path }];
  });
}

function readClasses(root: MapNode, context: Context): DayWords['classes'] {
  const labels = new Set<string>();
  return blocks(root, 'classes', context)
    .flatMap(([map, path]): readonly ClassWords[] => {
      const filled = blockOf(map, path, classFields, context);
      const label = textIn(filled, 'class');
      const written = textIn(filled, 'starts');
      const starts = written === undefined ? null : readClockTime(written, [...path, 'starts'], context);
      if (label === undefined || starts === null) return [];
      if (labels.has(label)) atValue(context, [...path, 'class'], 'class-twice', { label });
      labels.add(label);
      return [
        {
          label,
          starts,
          period: measuredIn<Seconds>(filled, 'period') ?? null,
          pupils: countIn(filled, 'pupils') ?? null,
          groups: countIn(filled, 'groups') ?? null,
          path,
        },
      ];
    })
    .sort((a, b) => a.starts - b.starts);
}

const blockOf = (map: MapNode, path: Path, fields: Parameters<typeof checkFields>[1], context: Context) =>
  checkFields(map, fields, { path, idOf: (field) => `visit/${path.join('/')}/${field}` }, context).filled;

/** A list of blocks of keys. */
const blocks = (root: MapNode, key: string, context: Context): readonly (readonly [MapNode, Path])[] =>
  listAt(root, key, [], context).flatMap((item, n) => {
    const map = asMap(item, [key, n], context);
    return map === null ? [] : [[map, [key, n]] as const];
  });

/** The items of a list, or the one text that stands there instead. */
function lines(root: MapNode, key: string, context: Context): readonly (readonly [Node, Path])[] {
  const node = entryOf(root, key)?.node;
  if (node === undefined) return [];
  if (node.kind === 'list') return node.items.map((item, n) => [item, [key, n]] as const);
  return asText(node, [key], context) === null ? [] : [[node, [key]]];
}

function timeIn(filled: Filled, key: string, path: Path, context: Context): DayTime | null {
  const text = textIn(filled, key);
  return text === undefined ? null : readDayTime(text, [...path, key], context);
}

/** A clock tells nothing where nobody says when the period starts. */
function refuseClockTimes(day: DayWords, context: Context): void {
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
    if (time?.since === 'midnight') atValue(context, time.path, 'clock-without-start');
}

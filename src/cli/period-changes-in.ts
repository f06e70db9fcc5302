import { nearestName } from '../core/diagnostics/nearest-name.ts';
import type { PeriodChanges } from '../core/files/period-changes.ts';
import { copiesField } from '../core/files/period-fields.ts';
import { seconds } from '../core/quantities/brands.ts';
import type { Arguments, Options } from './arguments.ts';
import { UsageFault } from './command.ts';

/** The what-ifs of a period that a command line may ask for. */
export const CHANGE_OPTIONS = {
  minutes: 'text',
  close: 'text',
  late: 'text',
  adults: 'text',
  copies: 'text',
  groups: 'text',
  signal: 'switch',
  'as-free': 'switch',
} as const satisfies Options;

/** A line of help for each. */
export const CHANGE_HELP: readonly string[] = [
  '--minutes N     what if the period lasts N minutes',
  '--close TABLES  what if these tables are closed, as 4,5',
  '--late GROUPS   what if groups come late, as B:10 (ten minutes after the start)',
  '--adults N      what if there are N adults, who may stand anywhere',
  '--copies TABLES what if tables are set up more than once, as 2:2',
  '--groups N      what if there are N groups',
  '--signal        what if all move together, on a signal',
  '--as-free       what if each group moves on as a table frees up',
];

/** What the options change; tables and groups are those that there are. */
export function periodChangesIn(
  found: Arguments,
  known: { readonly tables: readonly string[]; readonly groups: readonly string[] },
): PeriodChanges {
  const minutes = wholeIn(found, 'minutes', 1, 1000);
  const adults = wholeIn(found, 'adults', 0, 100);
  const groups = wholeIn(found, 'groups', 1, 100);
  const isSignal = found.isOn('signal');
  const isFree = found.isOn('as-free');
  if (isSignal && isFree) throw new UsageFault('--signal and --as-free are two ways to move on: name one');
  return {
    ...(minutes === null ? {} : { lasts: seconds(60 * minutes) }),
    ...(adults === null ? {} : { adults }),
    ...(groups === null ? {} : { groups }),
    ...(isSignal ? { way: 'signal' } : {}),
    ...(isFree ? { way: 'free' } : {}),
    closed: namesIn(found, 'close', '4,5').map((mark) => oneOf('close', 'table', mark, known.tables)),
    late: pairsIn(found, 'late', 'B:10', 999).map(([group, by]) => ({
      group: groups === null ? oneOf('late', 'group', group, known.groups) : group,
      by: seconds(60 * by),
    })),
    copies: Object.fromEntries(
      pairsIn(found, 'copies', '2:2', copiesField.most).map(([mark, copies]) => [
        oneOf('copies', 'table', mark, known.tables),
        copies,
      ]),
    ),
  };
}

/** A whole number within bounds; `null` where the option is not there. */
export function wholeIn(found: Arguments, option: string, least: number, most: number): number | null {
  const text = found.text(option);
  if (text === null) return null;
  const number = Number(text);
  if (!/^\d+$/.test(text) || number < least || number > most)
    throw new UsageFault(`--${option} is a whole number from ${least} to ${most}, not "${text}"`);
  return number;
}

/** One of the names that there are; an unknown one is refused with the nearest. */
export function oneOf(option: string, what: string, written: string, known: readonly string[]): string {
  const found =
    known.find((each) => each === written) ??
    known.find((each) => each.toLowerCase() === written.toLowerCase());
  if (found !== undefined) return found;
  const nearest = nearestName(written, known);
  throw new UsageFault(
    `--${option}: there is no ${what} "${written}"${nearest === undefined ? `; there are ${known.join(', ')}` : `; did you mean "${nearest}"?`}`,
  );
}

/** Names with a number each: `B:10, C:5`. */
function pairsIn(
  found: Arguments,
  option: string,
  example: string,
  most: number,
): readonly (readonly [name: string, number: number])[] {
  const pairs = namesIn(found, option, example).map((piece): readonly [string, number] => {
    const [, name, number] = /^(.+):(\d{1,3})$/.exec(piece) ?? [];
    if (name === undefined || number === undefined || Number(number) === 0)
      throw new UsageFault(`--${option} is written as ${example}, not "${piece}"`);
    if (Number(number) > most)
      throw new UsageFault(`--${option}: a whole number from 1 to ${most} goes with a name, not "${piece}"`);
    return [name.trim(), Number(number)];
  });
  const names = pairs.map(([name]) => name.toLowerCase());
  const twice = pairs.find(([name], n) => names.indexOf(name.toLowerCase()) < n);
  if (twice !== undefined) throw new UsageFault(`--${option} names "${twice[0]}" twice: which one holds?`);
  return pairs;
}

/** Names with commas between; an option that names nothing is refused. */
function namesIn(found: Arguments, option: string, example: string): readonly string[] {
  const text = found.text(option);
  const pieces = piecesOf(text);
  if (text !== null && pieces.length === 0)
    throw new UsageFault(`--${option} is written as ${example}, not "${text}"`);
  return pieces;
}

/** A group that comes when the bell has rung is not late but away. */
export function refuseTooLate(
  late: PeriodChanges['late'],
  { since, bell, groups }: { readonly since: number; readonly bell: number; readonly groups: number },
): void {
  for (const { group, by } of late ?? [])
    if (bell > since && since + by >= bell)
      throw new UsageFault(
        `--late ${group}:${by / 60}: the bell rings ${Math.floor((bell - since) / 60)} min ${since === 0 ? 'after the start' : 'from now'}; write fewer minutes${since === 0 ? `, or plan without that group: --groups ${groups - 1}` : ''}`,
      );
}

const piecesOf = (text: string | null): readonly string[] =>
  (text ?? '')
    .split(',')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');

import { nearestName } from '../core/diagnostics/nearest-name.ts';
import type { PeriodChanges } from '../core/files/period-changes.ts';
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
    closed: piecesOf(found.text('close')).map((mark) => oneOf('close', 'table', mark, known.tables)),
    late: pairsIn(found, 'late', 'B:10').map(([group, by]) => ({
      group: groups === null ? oneOf('late', 'group', group, known.groups) : group,
      by: seconds(60 * by),
    })),
    copies: Object.fromEntries(
      pairsIn(found, 'copies', '2:2').map(([mark, copies]) => [
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
): readonly (readonly [name: string, number: number])[] {
  return piecesOf(found.text(option)).map((piece) => {
    const [, name, number] = /^(.+):(\d{1,3})$/.exec(piece) ?? [];
    if (name === undefined || number === undefined || Number(number) === 0)
      throw new UsageFault(`--${option} is written as ${example}, not "${piece}"`);
    return [name.trim(), Number(number)];
  });
}

const piecesOf = (text: string | null): readonly string[] =>
  (text ?? '')
    .split(',')
    .map((piece) => piece.trim())
    .filter((piece) => piece !== '');

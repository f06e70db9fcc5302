import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { Setup } from '../setups/setup.ts';
import { advantageWays, type ReckoningWay, workInWays, workOutWays } from './reckoning-ways.ts';
import { figureWritten, type WrittenFigure } from './written-figure.ts';
import type { ComputedColumns, WrittenReading } from './written-reading.ts';

/**
 * What a group made of its own reading in one computed column. It is held against the group's reading, right
 * or wrong, so that a slip of the scale isn't told twice; it never changes a pull.
 */
export interface Reckoned {
  readonly column: keyof ComputedColumns;
  readonly written: string;
  /**
   * `another way` is a figure with a meaning of its own; `slip` one that a known slip gives; `not found` one
   * that nothing on the list gives.
   */
  readonly verdict: 'as the key' | 'another way' | 'slip' | 'not found' | 'unreadable' | 'not judged';
  readonly because: NotDefined | null;
  /** The reckonings that give this number within its rounding, nearest first. */
  readonly ways: readonly ReckoningWay[];
  /** What the group's own reading gives; a ratio, or joules. */
  readonly shouldBe: number | null;
}

const COLUMNS: readonly { readonly column: keyof ComputedColumns; readonly ways: typeof advantageWays }[] = [
  { column: 'advantage', ways: advantageWays },
  { column: 'workIn', ways: workInWays },
  { column: 'workOut', ways: workOutWays },
];

/**
 * The computed columns of a reading, one finding each. `reading` is what the group read, in newtons, in the
 * unit that it most likely counted in; `null` where there is none.
 */
export function reckonedFrom(
  { computed = {} }: Pick<WrittenReading, 'computed'>,
  reading: number | null,
  setup: Setup,
): readonly Reckoned[] {
  return COLUMNS.flatMap(({ column, ways }): readonly Reckoned[] => {
    const written = computed[column];
    if (written === undefined || /^[-–—\s]*$/.test(written)) return [];
    const none = { column, written, ways: [], shouldBe: null };
    const figure = figureWritten(written);
    if (figure === null || (column === 'advantage' && figure.joules !== null))
      return [{ ...none, verdict: 'unreadable', because: notDefined('reckoning.no-figure') }];
    if (reading === null || setup.watched !== 'pull')
      return [{ ...none, verdict: 'not judged', because: notDefined('reckoning.no-reading') }];
    const all = ways(setup, reading);
    if (isNotDefined(all)) return [{ ...none, verdict: 'not judged', because: all }];
    const found = waysTo(all, figure);
    return [
      {
        column,
        written,
        because: null,
        verdict: verdictOf(found),
        ways: found,
        shouldBe: all.find(({ is }) => is === 'as the key')?.value ?? null,
      },
    ];
  });
}

/** Rounding on the way, and 10 for 9.8 m/s²: what a school allows. Common practice, no source. */
const LESS = 0.985;
const MORE = 1.025;

/** The reckonings that lead to a written figure, nearest first. */
function waysTo(all: readonly ReckoningWay[], { number, joules, rounding }: WrittenFigure) {
  const unit = joules ?? 1;
  const value = number * unit;
  const slack = rounding * unit * (1 + 1e-9);
  return all
    .filter((way) => value >= way.value * LESS - slack && value <= way.value * MORE + slack)
    .sort((a, b) => Math.abs(a.value - value) - Math.abs(b.value - value));
}

/** In favour of the group: a slip is told only where no sound reckoning gives the same number. */
function verdictOf(found: readonly ReckoningWay[]): Reckoned['verdict'] {
  if (found.some(({ is }) => is === 'as the key')) return 'as the key';
  if (found.some(({ is }) => is === 'sound')) return 'another way';
  return found.length > 0 ? 'slip' : 'not found';
}

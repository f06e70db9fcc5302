import type { Happening, WrittenReading } from '../../store/entry.ts';
import type { Outbox, OutboxItem, Whereabouts } from '../../store/outbox.ts';
import type { ChartRow, TeacherParts, TeacherReading } from '../../store/wire.ts';
import { tablesOf } from '../teacher/call.ts';

/** A row of a group's chart as it stands: what is written there, and where that is. */
export interface ChartCell {
  /** The last reading that holds; `null` where nothing is written. */
  readonly id: string | null;
  readonly written: string;
  readonly whereabouts: Whereabouts | null;
  /** How the server judges it; `null` until it has said so of what stands there. */
  readonly verdict: Pick<TeacherReading, 'verdict' | 'verdictText'> | null;
  /** Readings of this group here that hold. */
  readonly many: number;
}

export const EMPTY_CELL: ChartCell = { id: null, written: '', whereabouts: null, verdict: null, many: 0 };

interface Held {
  readonly id: string;
  readonly setup: string;
  readonly written: string;
  readonly isVoid: boolean;
  readonly whereabouts: Whereabouts;
  readonly verdict: ChartCell['verdict'];
}

/** The rows of a group's chart by setup: what the server knows, and on top of it what this device wrote since. */
export function chartCells(
  parts: Partial<TeacherParts>,
  group: string,
  outbox: Outbox,
  fresh: ReadonlySet<string>,
): ReadonlyMap<string, ChartCell> {
  const held = new Map<string, Held>();
  for (const { setups } of tablesOf(parts))
    for (const { mark, readings } of setups)
      for (const { id, written, isVoid, verdict, verdictText, ...reading } of readings)
        if (reading.group === group)
          held.set(id, {
            id,
            setup: mark,
            written,
            isVoid,
            whereabouts: 'stored',
            verdict: { verdict, verdictText },
          });
  for (const item of outbox.items) {
    const isTold = item.whereabouts === 'stored' && !fresh.has(item.entry.id);
    if (!isTold && item.whereabouts !== 'refused') hold(held, group, item);
  }
  const cells = new Map<string, ChartCell>();
  for (const { id, setup, written, isVoid, whereabouts, verdict } of held.values()) {
    if (isVoid) continue;
    const many = (cells.get(setup)?.many ?? 0) + 1;
    cells.set(setup, { id, written, whereabouts, verdict, many });
  }
  return cells;
}

function hold(
  held: Map<string, Held>,
  group: string,
  { entry: { id, what }, whereabouts }: OutboxItem,
): void {
  if (what.kind === 'reading') {
    if (what.group === group && !held.has(id))
      held.set(id, {
        id,
        setup: what.setup,
        written: what.written,
        isVoid: false,
        whereabouts,
        verdict: null,
      });
    return;
  }
  if (what.kind !== 'correction' && what.kind !== 'void' && what.kind !== 'restore') return;
  const before = held.get(what.of);
  if (before === undefined) return;
  if (what.kind === 'correction')
    held.set(what.of, { ...before, written: what.written, whereabouts, verdict: null });
  else held.set(what.of, { ...before, isVoid: what.kind === 'void', whereabouts });
}

/**
 * What is kept of a row as it was typed. The unit that the chart prints is added behind a number; what ends in a
 * word or a sign stays as it is.
 *
 * @example withUnit('about 2', 'N') // => 'about 2 N'
 * @example withUnit('200 g', 'N') // => '200 g'
 * @example withUnit('-', 'N') // => '-'
 */
export function withUnit(typed: string, unit: string | null): string {
  const text = typed.trim().replace(/\s+/g, ' ');
  return unit !== null && /\d$/.test(text) ? `${text} ${unit}` : text;
}

/**
 * What a row shows for editing: without the unit that the chart prints.
 *
 * @example withoutUnit('about 2 N', 'N') // => 'about 2'
 */
export const withoutUnit = (written: string, unit: string | null): string =>
  unit !== null && written.endsWith(` ${unit}`) ? written.slice(0, -unit.length - 1) : written;

/** What is to be written where a row was left with other words in it than before; `null` where they are the same. */
export function changeOf(cell: ChartCell, typed: string, row: ChartRow, group: string): Happening | null {
  const written = withUnit(typed, row.unit);
  if (written === cell.written) return null;
  if (cell.id === null) return written === '' ? null : readingOf(written, row, group);
  return written === '' ? { kind: 'void', of: cell.id } : { kind: 'correction', of: cell.id, written };
}

function readingOf(written: string, { setup, asks }: ChartRow, group: string): WrittenReading {
  return {
    kind: 'reading',
    group,
    setup,
    written,
    ease: asks === 'ease' && /^(1?[1-9]|10|20)$/.test(written) ? Number(written) : null,
    turns: asks === 'turns' ? written : null,
    note: null,
  };
}

/** What takes a change back: `id` is that of the entry that made it. */
export function takenBack(change: Happening, cell: ChartCell, id: string): Happening | null {
  switch (change.kind) {
    case 'reading':
      return { kind: 'void', of: id };
    case 'correction':
      return { kind: 'correction', of: change.of, written: cell.written };
    case 'void':
      return { kind: 'restore', of: change.of };
    default:
      return null;
  }
}

import { useState } from 'preact/hooks';
import type { Whereabouts } from '../../store/outbox.ts';
import type { ChartRow, ChartTable, TeacherReading } from '../../store/wire.ts';
import type { TeacherSay } from '../words/teacher-words.ts';
import { type ChartCell, withoutUnit } from './chart-cell.ts';

export interface ChartRowsProps {
  readonly say: TeacherSay;
  readonly table: ChartTable;
  readonly cellOf: (setup: string) => ChartCell;
  readonly onSave: (row: ChartRow, cell: ChartCell, typed: string) => void;
  readonly onStep: (from: HTMLInputElement, by: number) => void;
}

/** A table of the chart, in the paper's own rows. */
export function ChartRows({ table, cellOf, ...more }: ChartRowsProps) {
  const { say } = more;
  const id = `table-${table.table}`;
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>{say('tables.one', { table: table.table, title: table.title })}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('chart.setup')}</th>
            <th scope="col">{say('chart.reading')}</th>
            <th scope="col">{say('chart.state')}</th>
          </tr>
        </thead>
        <tbody>
          {table.rows.map((row) => (
            <Row key={row.setup} row={row} cell={cellOf(row.setup)} {...more} />
          ))}
        </tbody>
      </table>
    </section>
  );
}

const VERDICTS: Readonly<Record<TeacherReading['verdict'], string>> = {
  good: '✓',
  'little-off': '◐',
  'look-again': '▲',
  unread: '?',
};
const WHEREABOUTS: Readonly<Record<Whereabouts, string>> = {
  here: '□',
  sent: '◧',
  stored: '■',
  refused: '✕',
};

interface RowProps extends Omit<ChartRowsProps, 'table' | 'cellOf'> {
  readonly row: ChartRow;
  readonly cell: ChartCell;
}

function Row({ say, row, cell, onSave, onStep }: RowProps) {
  const { setup, asks, unit, isExtra } = row;
  const shown = withoutUnit(cell.written, unit);
  /**
   * `null` while nothing is typed that was not left yet. What comes from a tablet meanwhile is written over by
   * nobody: what is typed is held against the row as it stood when typing began.
   */
  const [typed, setTyped] = useState<{ readonly text: string; readonly over: ChartCell } | null>(null);
  const leave = (): void => {
    if (typed !== null) onSave(row, typed.over, typed.text);
    setTyped(null);
  };
  const onKeyDown = (event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void => {
    const by = { Enter: 1, ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (by !== undefined) {
      event.preventDefault();
      onStep(event.currentTarget, by);
    } else if (event.key === 'Escape') setTyped(null);
  };
  return (
    <tr>
      <th scope="row">
        {setup}
        {isExtra && <span class="hint"> {say('chart.extra')}</span>}
      </th>
      <td>
        <input
          data-setup={setup}
          aria-label={say(`chart.field.${asks}`, { setup })}
          value={typed?.text ?? shown}
          defaultValue={shown}
          maxLength={60}
          autocomplete="off"
          spellcheck={false}
          enterKeyHint="next"
          onInput={({ currentTarget }) => setTyped({ text: currentTarget.value, over: typed?.over ?? cell })}
          onBlur={leave}
          onKeyDown={onKeyDown}
        />{' '}
        <span class="unit">{asks === 'ease' ? say('chart.ease') : unit}</span>
      </td>
      <td>
        {cell.whereabouts !== null && (
          <span class="where">
            {WHEREABOUTS[cell.whereabouts]} {say(`where.${cell.whereabouts}`)}
          </span>
        )}
        {cell.verdict !== null && (
          <span class={cell.verdict.verdict}>
            {' '}
            {VERDICTS[cell.verdict.verdict]} {cell.verdict.verdictText}
          </span>
        )}
        {cell.many > 1 && <span class="hint"> {say('chart.more', { many: cell.many })}</span>}
      </td>
    </tr>
  );
}

import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Happening } from '../../store/entry.ts';
import type { ChartRow } from '../../store/wire.ts';
import type { InsideProps } from '../teacher/teacher-screen.tsx';
import { type ChartCell, changeOf, chartCells, EMPTY_CELL, takenBack } from './chart-cell.ts';
import { ChartRows } from './chart-rows.tsx';
import { GroupsOfCharts } from './groups-of-charts.tsx';

/** Something that was written here, and how to take it back. */
interface Done {
  readonly group: string;
  readonly setup: string;
  readonly said: string;
  readonly back: Happening | null;
}

/** Chart entry: the charts of the groups one after the other, row by row as on the paper, by keyboard alone. */
export function ChartEntry({ device, state, say }: InsideProps) {
  const { groups = [], chart = [], visit } = state.parts;
  const [chosen, setChosen] = useState<string | null>(null);
  const [done, setDone] = useState<readonly Done[]>([]);
  const [said, setSaid] = useState('');
  const form = useRef<HTMLDivElement>(null);
  /** The row to go to once its group is shown: its setup, or the first that is empty. */
  const going = useRef<string | null>('');
  const labels = groups.map(({ label }) => label);
  const group = chosen ?? labels[0] ?? null;
  const rows = chart.flatMap((table) => table.rows);
  const cellsFor = (label: string): ReadonlyMap<string, ChartCell> =>
    chartCells(state.parts, label, state.outbox, state.fresh);
  const cells = group === null ? new Map<string, ChartCell>() : cellsFor(group);

  const fields = (): readonly HTMLInputElement[] => [
    ...(form.current?.querySelectorAll<HTMLInputElement>('input[data-setup]') ?? []),
  ];
  useLayoutEffect(() => {
    if (going.current === null || rows.length === 0) return;
    const all = fields();
    const to =
      all.find(({ dataset }) => dataset.setup === going.current) ??
      all.find(({ value }) => value === '') ??
      all[0];
    to?.focus();
    to?.select();
    going.current = null;
  }, [group, rows.length === 0]);

  useEffect(() => {
    // A page that is left or loaded anew writes what stands in the field first.
    const leave = (): void => fieldInHand()?.blur();
    addEventListener('pagehide', leave);
    return () => removeEventListener('pagehide', leave);
  }, []);

  const goTo = (label: string, setup = ''): void => {
    // What stands in the field is written before its row goes away.
    fieldInHand()?.blur();
    going.current = setup;
    if (label === group)
      fields()
        .find(({ dataset }) => dataset.setup === setup)
        ?.focus();
    setChosen(label);
  };
  const step = (from: HTMLInputElement, by: number): void => {
    const all = fields();
    const next = all[all.indexOf(from) + by];
    if (next !== undefined) {
      next.focus();
      next.select();
    } else if (by > 0 && group !== labels.at(-1)) toGroup(1);
    else {
      // At either end the row is written, and the keys stay where they are.
      from.blur();
      from.focus();
    }
  };
  const toGroup = (by: number): void => {
    const next = labels[labels.indexOf(group ?? '') + by];
    if (next !== undefined) goTo(next);
  };

  const save = async (row: ChartRow, cell: ChartCell, typed: string): Promise<void> => {
    if (group === null) return;
    const change = changeOf(cell, typed, row, group);
    if (change === null) return;
    const { setup } = row;
    const [id = ''] = await device.write(change);
    const facts = {
      group,
      setup,
      before: cell.written,
      written: 'written' in change ? change.written : '',
    };
    const key = change.kind === 'reading' || change.kind === 'correction' ? change.kind : 'void';
    const what = say(`chart.did.${key}`, facts);
    setSaid(what);
    setDone((all) => [...all, { group, setup, said: what, back: takenBack(change, cell, id) }]);
  };
  const takeBack = async (): Promise<void> => {
    const last = done.at(-1);
    if (last === undefined || last.back === null) return;
    setDone(done.slice(0, -1));
    await device.write(last.back);
    setSaid(say('chart.did.undone', { group: last.group, setup: last.setup }));
    goTo(last.group, last.setup);
  };

  const last = done.at(-1);
  const waiting = state.outbox.items.filter(
    ({ whereabouts }) => whereabouts === 'here' || whereabouts === 'sent',
  ).length;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'PageDown' || event.key === 'PageUp') {
      event.preventDefault();
      toGroup(event.key === 'PageDown' ? 1 : -1);
    } else if (event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey) && !isBeingTyped(event)) {
      event.preventDefault();
      void takeBack();
    }
  };
  return (
    <main class="charts" onKeyDown={onKeyDown}>
      <header>
        <h1>
          {say('chart.page')}
          {visit !== undefined && `: ${visit.title}`}
        </h1>
        <p class={state.isLive ? 'line live' : 'line away'}>
          <span aria-hidden="true">{state.isLive ? '●' : '○'}</span>{' '}
          {say(state.isLive ? 'line.live' : 'line.away')}
          {waiting > 0 && ` · □ ${say('teacher.on-device', { many: waiting })}`}
        </p>
        <p>
          <a href="/teacher">{say('chart.back')}</a>
        </p>
      </header>
      <GroupsOfCharts say={say} labels={labels} chosen={group} rows={rows} cellsFor={cellsFor} onGo={goTo} />
      <div class="did">
        <p role="status">{said}</p>
        {last !== undefined && (
          <button type="button" onClick={() => void takeBack()}>
            {say('chart.undo', { setup: last.setup, group: last.group })}
          </button>
        )}
      </div>
      {group !== null && (
        <div ref={form} key={group} class="sheet-of-paper">
          <h2>{say('chart.group', { group })}</h2>
          <p class="hint">{say('chart.as-written')}</p>
          <p class="hint">{say('chart.keys')}</p>
          {chart.map((table) => (
            <ChartRows
              key={table.table}
              say={say}
              table={table}
              cellOf={(setup) => cells.get(setup) ?? EMPTY_CELL}
              onSave={(row, cell, typed) => void save(row, cell, typed)}
              onStep={step}
            />
          ))}
        </div>
      )}
    </main>
  );
}

const fieldInHand = (): HTMLElement | null =>
  document.activeElement instanceof HTMLElement ? document.activeElement : null;

/** A field with words in it that were not left yet: the browser takes those back itself. */
const isBeingTyped = ({ target }: KeyboardEvent): boolean =>
  target instanceof HTMLInputElement && target.value !== target.defaultValue;

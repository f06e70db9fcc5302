import type { ChartRow } from '../../store/wire.ts';
import type { TeacherSay } from '../words/teacher-words.ts';
import type { ChartCell } from './chart-cell.ts';

export interface GroupsOfChartsProps {
  readonly say: TeacherSay;
  readonly labels: readonly string[];
  readonly chosen: string | null;
  readonly rows: readonly ChartRow[];
  readonly cellsFor: (label: string) => ReadonlyMap<string, ChartCell>;
  readonly onGo: (label: string) => void;
}

/** Whose chart is typed, and how far each has come; setups for groups that wait don't count. */
export function GroupsOfCharts({ say, labels, chosen, rows, cellsFor, onGo }: GroupsOfChartsProps) {
  const asked = rows.filter(({ isExtra }) => !isExtra);
  if (labels.length === 0) return <p class="hint">{say('groups.none')}</p>;
  return (
    <nav class="whose" aria-label={say('chart.groups')}>
      <ul>
        {labels.map((label) => {
          const cells = cellsFor(label);
          const written = asked.filter(({ setup }) => cells.has(setup)).length;
          return (
            <li key={label}>
              <button
                type="button"
                aria-pressed={label === chosen}
                aria-label={`${say('chart.group', { group: label })}, ${say('chart.count', { written, rows: asked.length })}`}
                onClick={() => onGo(label)}
              >
                <b>{label}</b>{' '}
                <span class="num">
                  {written === asked.length ? '✓ ' : ''}
                  {say('chart.count', { written, rows: asked.length })}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}

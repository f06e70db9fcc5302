import type { Chosen, FindingView, Whole } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';

export interface SetupListProps {
  readonly say: PrepareSay;
  readonly whole: Whole;
  readonly chosen: Chosen | null;
  readonly choose: (chosen: Chosen) => void;
}

/** Every table with its setups: the good range of each, or the word that says why there is none. */
export function SetupList({ say, whole, chosen, choose }: SetupListProps) {
  return (
    <nav class="setup-list" aria-label={say('prepare.tables')}>
      <h2>{say('prepare.tables')}</h2>
      {whole.tables.map((table, n) => {
        const count = atTable(whole.findings, n).filter(({ severity }) => severity !== 'note').length;
        const row = (mark: string, text: string) => (
          <li key={mark}>
            <button
              type="button"
              aria-pressed={chosen?.table === table.mark && chosen.setup === mark}
              onClick={() => choose({ table: table.mark, setup: mark })}
            >
              <b>{mark}</b> <span>{text}</span>
            </button>
          </li>
        );
        return (
          <section key={table.mark}>
            <h3>
              {table.mark} {table.title}
            </h3>
            <p class="hint">
              {table.machine};{' '}
              {count === 0 ? `✓ ${say('prepare.fine')}` : `! ${say('prepare.look', { count })}`}
            </p>
            <ul>
              {table.rows.map(({ mark, good }) => row(mark, good))}
              {table.notPrepared.map((mark) => row(mark, `× ${say('prepare.unbuilt')}`))}
            </ul>
          </section>
        );
      })}
    </nav>
  );
}

/** What is found at a table's own place in the activity. */
const atTable = (findings: readonly FindingView[], table: number): readonly FindingView[] =>
  findings.filter(({ file, path }) => file === 'activity' && path[0] === 'tables' && path[1] === table);

import { useRef } from 'preact/hooks';
import type { BenchAtSetup, BenchLineAdded } from '../engine/bench-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import { useBenchDraft } from './bench-draft.ts';
import { BenchForm } from './bench-form.tsx';
import { BenchLines } from './bench-lines.tsx';
import type { BenchWork } from './bench-work.ts';
import { RowsTable } from './rows-table.tsx';

export interface BenchPartProps {
  readonly say: BenchSay;
  readonly setup: string;
  readonly work: BenchWork;
}

/** What was read on the bench at the setup in hand, with its scale and its parts, and what that tells. */
export function BenchPart({ say, setup, work }: BenchPartProps) {
  const at = work.at?.setup === setup ? work.at : null;
  const draft = useBenchDraft(say, setup, work);
  const answer = useRef<HTMLDivElement>(null);
  return (
    <details
      class="bench"
      data-part="bench"
      onToggle={({ currentTarget }) => work.open('bench', currentTarget.open)}
    >
      <summary>
        <b>{say('bench.title')}</b>
      </summary>
      <p class="hint">{say('bench.hint')}</p>
      {at === null ? (
        <p class="hint">{say('bench.wait')}.</p>
      ) : (
        <BenchForm say={say} at={at} work={work} draft={draft} />
      )}
      <div ref={answer} tabIndex={-1} role="status" data-answer={work.answer === null ? 'none' : 'given'}>
        {work.answer !== null && <Answer say={say} answer={work.answer} />}
      </div>
      {at !== null && <BenchLines say={say} at={at} draft={draft} toAnswer={() => answer.current?.focus()} />}
      {at !== null && <Told say={say} at={at} />}
    </details>
  );
}

/** What the line did to the key, or why it was not taken. */
function Answer({ say, answer }: { readonly say: BenchSay; readonly answer: BenchLineAdded }) {
  const { texts, added, faults, moved } = answer;
  return (
    <>
      {texts === null ? (
        <p class="trouble">× {say('bench.refused')}</p>
      ) : (
        <p>
          <b>✓ {added}</b>
        </p>
      )}
      {texts !== null && faults.length > 0 && <p class="trouble">! {say('bench.warned')}</p>}
      {faults.map(({ what, here, why, help }) => (
        <p key={here}>
          <b>{what}:</b> {here}. {say('bench.why', { why, help })}
        </p>
      ))}
      {texts !== null && moved.length === 0 && <p>{say('bench.unmoved')}</p>}
      {moved.length > 0 && (
        <RowsTable
          look="rows"
          caption={say('bench.moved')}
          head={[say('bench.moved.setup'), say('bench.moved.before'), say('bench.moved.now')]}
          rows={moved.map(({ setup, before, now }) => [setup, before, now])}
        />
      )}
    </>
  );
}

function Told({ say, at: { told } }: { readonly say: BenchSay; readonly at: BenchAtSetup }) {
  if (told === null) return null;
  const { head, unknowns, remarks } = told;
  return (
    <>
      <p>{head}</p>
      {unknowns.rows.length > 0 && (
        <RowsTable look="rows" caption={say('bench.told')} head={unknowns.head} rows={unknowns.rows} />
      )}
      <details>
        <summary>{say('bench.more')}</summary>
        {remarks.map((each) => (
          <p key={each}>{each}</p>
        ))}
      </details>
    </>
  );
}

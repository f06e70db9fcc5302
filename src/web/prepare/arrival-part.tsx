import { useState } from 'preact/hooks';
import type { ArrivalCheckView, TrialRead } from '../engine/bench-wire.ts';
import type { Edit } from '../engine/prepare-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import type { BenchWork } from './bench-work.ts';

export interface ArrivalPartProps {
  readonly say: BenchSay;
  readonly work: BenchWork;
  readonly edit: (edit: Edit) => void;
}

/** The one reading to take at each table on arrival, and what follows from what was read. */
export const ArrivalPart = ({ say, work, edit }: ArrivalPartProps) => (
  <details
    class="arrival"
    data-part="arrival"
    onToggle={({ currentTarget }) => work.open('arrival', currentTarget.open)}
  >
    <summary>
      <b>{say('arrival.title')}</b>
    </summary>
    <p class="hint">{say('arrival.hint')}</p>
    {work.arrival === null && <p class="hint">{say('bench.wait')}.</p>}
    <ul>
      {work.arrival?.tables.map((at) => (
        <li key={at.table} data-arrival={at.table}>
          <h3>{say('arrival.table', { mark: at.table, title: at.title })}</h3>
          <AtTable say={say} at={at} work={work} edit={edit} />
        </li>
      ))}
    </ul>
  </details>
);

interface AtTableProps extends ArrivalPartProps {
  readonly at: ArrivalCheckView;
}

function AtTable({ say, at, work, edit }: AtTableProps) {
  const [written, setWritten] = useState('');
  const { table, check, example } = at;
  if (check === null) return <p>{say('arrival.none')}</p>;
  const trial = work.trials[check.setup];
  return (
    <>
      <p>{check.text}.</p>
      {at.written !== null && <Written say={say} at={at} edit={edit} />}
      <form
        class="read"
        onSubmit={(event) => {
          event.preventDefault();
          if (written.trim() !== '') work.read(check.setup, written.trim());
        }}
      >
        <label>
          {say('arrival.reading', { setup: check.setup })}
          <input
            value={written}
            placeholder={example}
            autocomplete="off"
            spellcheck={false}
            onInput={(event) => setWritten(event.currentTarget.value)}
          />
        </label>
        <button type="submit">{say('arrival.see', { table })}</button>
      </form>
      <div role="status">
        {trial !== undefined && <Verdict say={say} at={at} trial={trial} edit={edit} />}
      </div>
      {trial?.told?.isFollowed !== false && (
        <details>
          <summary>{say('arrival.outside')}</summary>
          <Steps steps={check.steps} />
        </details>
      )}
    </>
  );
}

interface VerdictProps extends Pick<AtTableProps, 'say' | 'at' | 'edit'> {
  readonly trial: TrialRead;
}

function Verdict({ say, at, trial: { setup, written, told }, edit }: VerdictProps) {
  if (told === null) return <p class="trouble">× {say('arrival.bad', { written, example: at.example })}</p>;
  // Of each table one reading is taken; what another setup showed has to go first.
  const isFree = at.written === null || at.written.setup === setup;
  return (
    <>
      <p class={told.isFollowed ? '' : 'trouble'}>
        {told.isFollowed ? '✓' : '!'} {told.verdict}
      </p>
      <ul class="plain-rows">
        {told.rows.map((row) => (
          <li key={row.setup} data-follows={row.setup}>
            <b>{row.setup}</b> {row.text}
          </li>
        ))}
      </ul>
      <Steps steps={told.steps} />
      {told.isFollowed && isFree && (
        <button
          type="button"
          onClick={() => edit({ file: 'visit', path: ['arrival', setup], value: written })}
        >
          {say('arrival.follow', { table: at.table, written })}
        </button>
      )}
    </>
  );
}

function Written({ say, at: { written }, edit }: Pick<AtTableProps, 'say' | 'at' | 'edit'>) {
  if (written === null) return null;
  const { setup, reading, path } = written;
  return (
    <p class="acts">
      <span>✓ {say('arrival.written', { setup, reading })}</span>
      <button type="button" class="plain" onClick={() => edit({ file: 'visit', path, value: '' })}>
        {say('arrival.take-out', { reading })}
      </button>
    </p>
  );
}

const Steps = ({ steps }: { readonly steps: readonly string[] }) =>
  steps.length === 0 ? null : (
    <ol class="steps">
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  );

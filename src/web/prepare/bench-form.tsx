import { useEffect, useRef } from 'preact/hooks';
import type { BenchAtSetup } from '../engine/bench-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import type { BenchDraft } from './bench-draft.ts';
import type { BenchWork } from './bench-work.ts';

export interface BenchFormProps {
  readonly say: BenchSay;
  readonly at: BenchAtSetup;
  readonly work: BenchWork;
  readonly draft: BenchDraft;
}

const GROUPS = ['setup', 'scale', 'parts'] as const;

/** A line for the bench book: what was read there, by whom and on which day. */
export function BenchForm({ say, at, work, draft }: BenchFormProps) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    // A line that is put right begins with what was read.
    if (draft.instead !== null) form.current?.querySelector<HTMLElement>('[data-bench="reading"]')?.focus();
  }, [draft.instead]);
  const task = at.tasks.find(({ what }) => what === draft.what) ?? at.tasks[0];
  if (task === undefined) return <p>{say('bench.nothing')}</p>;
  return (
    <form
      ref={form}
      class="read"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void draft.add(task);
      }}
    >
      {draft.instead !== null && (
        <p class="acts">
          <b>{say('bench.instead', { line: draft.instead })}</b>
          <button type="button" class="plain" onClick={() => draft.putRight(null)}>
            {say('bench.not-instead')}
          </button>
        </p>
      )}
      <label class="wide">
        {say('bench.task')}
        <select
          data-bench="what"
          value={task.what}
          onChange={(event) => draft.change({ what: event.currentTarget.value })}
        >
          {GROUPS.map((group) => {
            const tasks = at.tasks.filter(({ of }) => of === group);
            return tasks.length === 0 ? null : (
              <optgroup key={group} label={say(`bench.task.${group}`, { setup: at.setup })}>
                {tasks.map(({ what, words }) => (
                  <option key={what} value={what}>
                    {words}
                  </option>
                ))}
              </optgroup>
            );
          })}
        </select>
        {/* A narrow field cuts the end off, which is what tells two choices apart. */}
        <small aria-hidden="true">{task.words}</small>
      </label>
      <Written
        name="reading"
        label={say('bench.reading')}
        value={draft.reading}
        placeholder={task.example}
        write={(reading) => draft.change({ reading })}
      />
      <Written
        name="date"
        isDay
        label={say('bench.date')}
        value={draft.date}
        write={(date) => draft.change({ date })}
      />
      <Written
        name="by"
        label={say('bench.by')}
        hint={say('bench.by.hint')}
        value={work.by}
        write={(by) => {
          work.sign(by);
          draft.change({});
        }}
      />
      <Written
        name="note"
        label={say('bench.note')}
        value={draft.note}
        write={(note) => draft.change({ note })}
      />
      <p class="wide trouble" role="alert">
        {draft.trouble}
      </p>
      <button type="submit" class="wide">
        {say('bench.add')}
      </button>
    </form>
  );
}

interface WrittenProps {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly isDay?: boolean;
  readonly placeholder?: string;
  readonly hint?: string;
  readonly write: (text: string) => void;
}

/** One thing that is written by hand. */
function Written({ name, label, value, isDay = false, placeholder = '', hint, write }: WrittenProps) {
  const says = `bench-${name}-says`;
  return (
    <label>
      {label}
      <input
        {...(isDay ? { type: 'date' } : {})}
        data-bench={name}
        value={value}
        placeholder={placeholder}
        autocomplete="off"
        spellcheck={false}
        aria-describedby={hint === undefined ? undefined : says}
        onInput={(event) => write(event.currentTarget.value)}
      />
      {hint !== undefined && <small id={says}>{hint}</small>}
    </label>
  );
}

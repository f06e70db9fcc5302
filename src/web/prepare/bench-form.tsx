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
  const task = at.tasks.find(({ what }) => what === draft.what) ?? at.tasks[0];
  if (task === undefined) return <p>{say('bench.nothing')}</p>;
  return (
    <form
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
      </label>
      <label>
        {say('bench.reading')}
        <input
          data-bench="reading"
          value={draft.reading}
          placeholder={task.example}
          autocomplete="off"
          spellcheck={false}
          onInput={(event) => draft.change({ reading: event.currentTarget.value })}
        />
      </label>
      <label>
        {say('bench.date')}
        <input
          type="date"
          data-bench="date"
          value={draft.date}
          onInput={(event) => draft.change({ date: event.currentTarget.value })}
        />
      </label>
      <label>
        {say('bench.by')}
        <input
          data-bench="by"
          value={work.by}
          autocomplete="off"
          aria-describedby="bench-by-says"
          onInput={(event) => {
            work.sign(event.currentTarget.value);
            draft.change({});
          }}
        />
        <small id="bench-by-says">{say('bench.by.hint')}</small>
      </label>
      <label>
        {say('bench.note')}
        <input
          data-bench="note"
          value={draft.note}
          autocomplete="off"
          onInput={(event) => draft.change({ note: event.currentTarget.value })}
        />
      </label>
      <p class="wide trouble" role="alert">
        {draft.trouble}
      </p>
      <button type="submit" class="wide">
        {say('bench.add')}
      </button>
    </form>
  );
}

import type { TeacherSay } from '../words/teacher-words.ts';
import type { Call } from './call.ts';

export interface WhomToGoToProps {
  readonly say: TeacherSay;
  readonly calls: readonly Call[];
}

/** The question of the page: whom should I go to, why, and what do I say there. */
export function WhomToGoTo({ say, calls }: WhomToGoToProps) {
  return (
    <section class="go" id="go" aria-labelledby="go-heading">
      <h2 id="go-heading">{say('go.heading')}</h2>
      {calls.length === 0 && <p class="hint">✓ {say('go.none')}</p>}
      <ol>
        {calls.map((call) => (
          <li key={keyOf(call)} class={call.kind}>
            <CallText say={say} call={call} />
          </li>
        ))}
      </ol>
    </section>
  );
}

const keyOf = (call: Call): string => {
  switch (call.kind) {
    case 'table':
      return `table ${call.table} ${call.finding}`;
    case 'reading':
      return call.reading.id;
    case 'late':
      return `late ${call.group}`;
  }
};

function CallText({ say, call }: { readonly say: TeacherSay; readonly call: Call }) {
  switch (call.kind) {
    case 'table':
      return (
        <>
          <h3>
            <span aria-hidden="true">▦</span>{' '}
            <a href={`#table-${call.table}`}>{say('go.table', { table: call.table })}</a>
          </h3>
          <p>{call.finding}</p>
        </>
      );
    case 'late':
      return (
        <>
          <h3>
            <span aria-hidden="true">◷</span> {say('go.late', { group: call.group, table: call.table })}
          </h3>
          <p>{say('go.late.say', { minutes: call.minutes })}</p>
        </>
      );
    case 'reading': {
      const { reading, table, setup, now } = call;
      const isElsewhere = now !== null && now !== table;
      return (
        <>
          <h3>
            <span aria-hidden="true">▲</span>{' '}
            {say(isElsewhere ? 'go.reading.elsewhere' : 'go.reading', {
              group: reading.group,
              table,
              now: now ?? '',
            })}
          </h3>
          <p>
            <a href={`#setup-${setup}`} aria-label={say('go.see', { setup })}>
              {setup}
            </a>
            : <b class="num">{reading.written}</b>, {reading.verdictText}
          </p>
          {reading.cause !== null && (
            <p>
              <b>{say('go.cause')}</b> {reading.cause}
            </p>
          )}
          {reading.say !== null && (
            <p class="saying">
              <b>{say('go.say')}</b> {reading.say}
            </p>
          )}
        </>
      );
    }
  }
}

import { useState } from 'preact/hooks';
import type { TeacherGroup } from '../../store/wire.ts';
import type { TeacherView } from './acts.ts';
import { wallTime } from './clock-time.ts';

export interface GroupsNowProps extends TeacherView {
  readonly groups: readonly TeacherGroup[];
}

/** Who is where, a line a group. */
export function GroupsNow({ groups, ...view }: GroupsNowProps) {
  const { say } = view;
  return (
    <section class="groups" id="groups" aria-labelledby="groups-heading">
      <h2 id="groups-heading">{say('groups.heading')}</h2>
      {groups.length === 0 && <p class="hint">{say('groups.none')}</p>}
      <ul>
        {groups.map((group) => (
          <GroupLine key={group.label} group={group} {...view} />
        ))}
      </ul>
    </section>
  );
}

function GroupLine({ group, say, language, act }: TeacherView & { readonly group: TeacherGroup }) {
  const [isAsking, setAsking] = useState(false);
  const [minutes, setMinutes] = useState('10');
  const { label, table, since, next, behind, heard, toLookAt } = group;
  const planAnew = (): void => {
    const late = Number(minutes);
    if (!Number.isInteger(late) || late < 1) return;
    setAsking(false);
    act(
      { kind: 'late', group: label, minutes: late },
      { key: 'did.late', facts: { group: label, minutes: late } },
    );
  };
  return (
    <li>
      <p class="label">
        <span class="unseen">{say('group.label', { group: '' })}</span>
        {label}
      </p>
      <div>
        <p>
          <b>{table === null ? say('groups.nowhere') : say('groups.at', { table })}</b>
          {since !== null && ` ${say('groups.since', { time: wallTime(language, since) })}`} →{' '}
          {next === null ? say('groups.last') : say('groups.next', { table: next })}
        </p>
        <p class="hint">
          {behind > 0
            ? `◷ ${say('groups.behind', { minutes: Math.round(behind / 60_000) })}`
            : `✓ ${say('groups.on-time')}`}
          {toLookAt > 0 && <b> ▲ {say('groups.look', { many: toLookAt })}</b>}
          {' · '}
          {heard === null
            ? `○ ${say('groups.unheard')}`
            : `● ${say('groups.heard', { time: wallTime(language, heard) })}`}
        </p>
        {isAsking ? (
          <form
            class="acts"
            onSubmit={(event) => {
              event.preventDefault();
              planAnew();
            }}
            onKeyDown={({ key }) => {
              if (key === 'Escape') setAsking(false);
            }}
          >
            <label>
              {say('groups.late.minutes')}{' '}
              <input
                type="number"
                min="1"
                max="120"
                step="1"
                required
                value={minutes}
                onInput={({ currentTarget }) => setMinutes(currentTarget.value)}
              />
            </label>
            <button type="submit">{say('groups.late.do')}</button>
            <button type="button" class="plain" onClick={() => setAsking(false)}>
              {say('groups.cancel')}
            </button>
          </form>
        ) : null}
      </div>
      {!isAsking && (
        <button
          type="button"
          class="plain"
          aria-label={say('groups.late.of', { group: label })}
          onClick={() => setAsking(true)}
        >
          {say('groups.late')}
        </button>
      )}
    </li>
  );
}

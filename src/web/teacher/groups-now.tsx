import { useState } from 'preact/hooks';
import type { TeacherGroup } from '../../store/wire.ts';
import { recalled, type TeacherView } from './acts.ts';
import { wallTime } from './clock-time.ts';

export interface GroupsNowProps extends TeacherView {
  /** What a new device types to come in. */
  readonly code: string;
  readonly groups: readonly TeacherGroup[];
}

/** Who is where, a line a group. */
export function GroupsNow({ groups, code, ...view }: GroupsNowProps) {
  const { say } = view;
  return (
    <section class="groups" id="groups" aria-labelledby="groups-heading">
      <h2 id="groups-heading">{say('groups.heading')}</h2>
      {groups.length === 0 && <p class="hint">{say('groups.none')}</p>}
      <ul>
        {groups.map((group) => (
          <GroupLine key={group.label} group={group} code={code} {...view} />
        ))}
      </ul>
    </section>
  );
}

interface GroupLineProps extends TeacherView {
  readonly group: TeacherGroup;
  readonly code: string;
}

function GroupLine({ group, code, say, language, act }: GroupLineProps) {
  const [asking, setAsking] = useState<'late' | 'device' | null>(null);
  const [minutes, setMinutes] = useState('10');
  const { label, table, since, next, behind, device, isFreed, heard, toLookAt } = group;
  const planAnew = (): void => {
    const late = Number(minutes);
    if (!Number.isInteger(late) || late < 1) return;
    setAsking(null);
    act(
      { kind: 'late', group: label, minutes: late },
      { key: 'did.late', facts: { group: label, minutes: late } },
      recalled('did.late.not', { group: label }),
    );
  };
  const free = (from: string): void => {
    setAsking(null);
    act(
      { kind: 'freed', group: label, from },
      { key: 'did.freed', facts: { group: label, code } },
      recalled('did.freed.not', { group: label }),
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
          {isFreed
            ? `○ ${say('groups.freed', { code })}`
            : heard === null
              ? `○ ${say('groups.unheard')}`
              : `● ${say('groups.heard', { time: wallTime(language, heard) })}`}
        </p>
        {asking === 'late' && (
          <form
            class="acts"
            onSubmit={(event) => {
              event.preventDefault();
              planAnew();
            }}
            onKeyDown={({ key }) => {
              if (key === 'Escape') setAsking(null);
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
            <button type="button" class="plain" onClick={() => setAsking(null)}>
              {say('groups.cancel')}
            </button>
          </form>
        )}
        {asking === 'device' && device !== null && (
          <div class="acts">
            <p>{say('groups.device.say', { group: label })}</p>
            <button type="button" onClick={() => free(device)}>
              {say('groups.device.do')}
            </button>
            <button type="button" class="plain" onClick={() => setAsking(null)}>
              {say('groups.cancel')}
            </button>
          </div>
        )}
      </div>
      {asking === null && (
        <div class="of-group">
          <button
            type="button"
            class="plain"
            aria-label={say('groups.late.of', { group: label })}
            onClick={() => setAsking('late')}
          >
            {say('groups.late')}
          </button>
          {device !== null && (
            <button
              type="button"
              class="plain"
              aria-label={say('groups.device.of', { group: label })}
              onClick={() => setAsking('device')}
            >
              {say('groups.device')}
            </button>
          )}
        </div>
      )}
    </li>
  );
}

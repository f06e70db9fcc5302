import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Whereabouts } from '../../store/outbox.ts';
import type { TeacherReading } from '../../store/wire.ts';
import type { TeacherKey } from '../words/teacher-words.ts';
import type { TeacherView } from './acts.ts';
import { wallTime } from './clock-time.ts';

export interface ReadingRowProps extends TeacherView {
  readonly setup: string;
  readonly reading: TeacherReading;
}

const SHAPES: Readonly<Record<TeacherReading['verdict'], string>> = {
  good: '✓',
  'little-off': '◐',
  'look-again': '▲',
  unread: '?',
};

/** What this page did to it, on its way to the journal. */
const WHERE: Readonly<Record<Whereabouts, string>> = { here: '□', sent: '→', stored: '■', refused: '✕' };

/** A reading with its verdict; struck through or written anew it is kept. */
export function ReadingRow({ reading, setup, say, language, act, where }: ReadingRowProps) {
  const [anew, setAnew] = useState<string | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const button = useRef<HTMLButtonElement>(null);
  const isOpen = anew !== null;
  const wasOpen = useRef(false);
  // Before the next key can come: what is typed straight after the press belongs in the field.
  useLayoutEffect(() => {
    if (isOpen) field.current?.select();
    else if (wasOpen.current) button.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  const { id, group, written, before, when, isVoid, verdict, verdictText, cause, remarks } = reading;
  const own = where(id);
  const named = (key: TeacherKey): string => say('row.of', { act: say(key), group, setup, written });
  const strike = { what: { kind: 'void', of: id }, said: { key: 'did.void', facts: { written } } } as const;
  const restore = {
    what: { kind: 'restore', of: id },
    said: { key: 'did.restore', facts: { written } },
  } as const;
  const [does, undoes] = isVoid ? [restore, strike] : [strike, restore];
  const correction = (to: string) =>
    ({
      what: { kind: 'correction', of: id, written: to },
      said: { key: 'did.correction', facts: { written: to } },
    }) as const;
  const save = (): void => {
    const to = (anew ?? '').trim();
    setAnew(null);
    if (to === '' || to === written) return;
    const { what, said } = correction(to);
    act(what, said, correction(written));
  };
  return (
    <li class={isVoid ? 'void' : verdict}>
      <p>
        <b>{say('row.group', { group })}</b>{' '}
        {isVoid ? <s class="num">{written}</s> : <b class="num">{written}</b>}
        {isVoid && ` ✕ ${say('row.void')}`}
        {before.length > 0 && (
          <span class="hint">
            {' '}
            {say('row.before')}{' '}
            {before.map((old, n) => (
              <s key={`${n} ${old}`}>{old} </s>
            ))}
          </span>
        )}{' '}
        <span class="hint">{wallTime(language, when)}</span>
        {own !== null && (
          <span class="hint">
            {' '}
            · {WHERE[own]} {say(`where.${own}`)}
          </span>
        )}
      </p>
      {!isVoid && (
        <p>
          <span class="shape" aria-hidden="true">
            {SHAPES[verdict]}
          </span>{' '}
          {verdictText}
          {reading.isAskedAgain && <span class="hint"> · ↻ {say('row.asked')}</span>}
        </p>
      )}
      {!isVoid && cause !== null && (
        <p>
          <b>{say('go.cause')}</b> {cause}
        </p>
      )}
      {!isVoid && reading.say !== null && (
        <p>
          <b>{say('go.say')}</b> {reading.say}
        </p>
      )}
      {!isVoid && remarks.length > 0 && (
        <details>
          <summary>{say('row.more')}</summary>
          {remarks.map((remark) => (
            <p key={remark}>{remark}</p>
          ))}
        </details>
      )}
      {isOpen ? (
        <form
          class="acts"
          onSubmit={(event) => {
            event.preventDefault();
            save();
          }}
          onKeyDown={({ key }) => {
            if (key === 'Escape') setAnew(null);
          }}
        >
          <label>
            {say('row.anew', { group, setup })}{' '}
            <input
              ref={field}
              value={anew}
              maxLength={60}
              autocomplete="off"
              onInput={({ currentTarget }) => setAnew(currentTarget.value)}
            />
          </label>
          <button type="submit">{say('row.save')}</button>
          <button type="button" class="plain" onClick={() => setAnew(null)}>
            {say('groups.cancel')}
          </button>
        </form>
      ) : (
        <p class="acts">
          <button
            type="button"
            class="plain"
            aria-label={named(isVoid ? 'row.restore' : 'row.strike')}
            onClick={() => act(does.what, does.said, undoes)}
          >
            {say(isVoid ? 'row.restore' : 'row.strike')}
          </button>
          {!isVoid && (
            <button
              ref={button}
              type="button"
              class="plain"
              aria-label={named('row.correct')}
              onClick={() => setAnew(written)}
            >
              {say('row.correct')}
            </button>
          )}
        </p>
      )}
    </li>
  );
}

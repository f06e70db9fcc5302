import { useEffect, useRef, useState } from 'preact/hooks';
import type { Seat } from '../../store/entry.ts';
import type { DoorAnswer, PassView } from '../../store/wire.ts';
import { type Answer, ask } from '../device/ask.ts';
import type { Say, WordKey } from '../words/words.ts';
import { sayIn } from '../words/words.ts';

export interface DoorProps {
  readonly language: string;
  /** From the address, behind the #; it is looked up at once. */
  readonly code: string;
  /** Where only groups come in; a code for helpers is told what it is. */
  readonly isForGroups?: boolean;
  readonly join: (code: string, seat: Seat) => Promise<Answer<PassView>>;
  readonly onIn: (seat: Seat) => void;
}

/** One question after the other: which code, and then which group or table. */
export function Door({ language, code: given, isForGroups = false, join, onIn }: DoorProps) {
  const [code, setCode] = useState(given);
  const [view, setView] = useState<DoorAnswer | null>(null);
  const [trouble, setTrouble] = useState<string | null>(null);
  const [isBusy, setBusy] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const choice = useRef<HTMLHeadingElement>(null);
  const say = sayIn(view?.language ?? language);

  const look = async (): Promise<void> => {
    if (code.trim() === '') return field.current?.focus();
    setBusy(true);
    const answer = await ask<DoorAnswer>(`/api/visit?code=${encodeURIComponent(code.trim())}`);
    setBusy(false);
    setTrouble(answer.kind === 'answer' ? null : troubleText(say, answer));
    const isOther = answer.kind === 'answer' && isForGroups && answer.body.opens !== 'group';
    if (isOther) setTrouble(say('door.for-helpers'));
    if (answer.kind === 'answer' && !isOther) setView(answer.body);
    else field.current?.focus();
  };
  const choose = async (seat: Seat): Promise<void> => {
    setBusy(true);
    const answer = await join(code.trim(), seat);
    setBusy(false);
    if (answer.kind === 'answer') onIn(seat);
    else setTrouble(troubleText(say, answer));
  };
  useEffect(() => {
    if (given !== '') void look();
  }, []);
  useEffect(() => {
    if (view !== null) {
      document.documentElement.lang = view.language;
      choice.current?.focus();
    }
  }, [view]);

  const told = (
    <p class="trouble" id="trouble" role="alert">
      {trouble}
    </p>
  );
  if (view === null)
    return (
      <main class="door">
        <h1>{say('door.heading')}</h1>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void look();
          }}
        >
          <label for="code">{say('door.code')}</label>
          <input
            ref={field}
            id="code"
            value={code}
            autocomplete="off"
            autocapitalize="characters"
            spellcheck={false}
            maxLength={40}
            aria-describedby="code-hint trouble"
            aria-invalid={trouble !== null}
            onInput={(event) => setCode(event.currentTarget.value)}
          />
          <p class="hint" id="code-hint">
            {say('door.code.hint')}
          </p>
          {told}
          <button type="submit" class="main" disabled={isBusy}>
            {say('door.look')}
          </button>
        </form>
        {!isForGroups && (
          <p class="hint">
            {say('door.teachers')} <a href="prepare.html">{say('door.prepare')}</a>{' '}
            <a href="discuss.html">{say('door.talk')}</a>
          </p>
        )}
        <p class="hint">{say('door.no-names')}</p>
      </main>
    );
  const isGroup = view.opens === 'group';
  return (
    <main class="door">
      <p class="over">{view.title}</p>
      <h1 ref={choice} tabIndex={-1}>
        {say(isGroup ? 'door.group' : 'door.table')}
      </h1>
      <ul class={isGroup ? 'labels' : 'tables'}>
        {isGroup
          ? view.groups.map((group) => (
              <li key={group}>
                <button
                  type="button"
                  disabled={isBusy}
                  aria-label={say('door.group.one', { group })}
                  onClick={() => void choose({ kind: 'group', group })}
                >
                  {group}
                </button>
              </li>
            ))
          : view.tables.map(({ mark, title }) => (
              <li key={mark}>
                <button
                  type="button"
                  disabled={isBusy}
                  onClick={() => void choose({ kind: 'helper', table: mark })}
                >
                  {say('door.table.one', { mark, title })}
                </button>
              </li>
            ))}
      </ul>
      {told}
      <button type="button" class="plain" onClick={() => setView(null)}>
        {say('door.other-code')}
      </button>
    </main>
  );
}

const TROUBLES: Readonly<Record<string, WordKey>> = {
  'wrong-code': 'door.wrong-code',
  'too-many-tries': 'door.too-many-tries',
};

function troubleText(say: Say, answer: Answer<unknown>): string {
  if (answer.kind !== 'refused') return say('door.away');
  const seconds = Math.ceil((answer.wait ?? 1000) / 1000);
  return say(TROUBLES[answer.why] ?? 'door.refused', { seconds });
}

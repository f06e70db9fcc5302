import type { TalkShown } from '../engine/talk-wire.ts';
import type { DiscussSay } from '../words/discuss-words.ts';
import type { SharedTalk } from './shared-talk.ts';
import { movedTo } from './talk-now.ts';

export interface NotesViewProps {
  readonly say: DiscussSay;
  readonly talk: TalkShown;
  readonly shared: SharedTalk;
}

/** What whoever leads the talk holds in hand: the question that is on the wall, and how to lead it. */
export function NotesView({ say, talk, shared }: NotesViewProps) {
  const { at, isOpen } = shared.now;
  const question = talk.questions[at];
  const go = (to: number) => shared.change((now) => movedTo(now, to));
  return (
    <section class="notes" aria-labelledby="notes-heading">
      <h2 id="notes-heading">{say('discuss.notes')}</h2>
      <ol class="questions">
        {talk.questions.map(({ kind, ask }, n) => (
          <li key={kind}>
            <button type="button" aria-current={n === at ? 'step' : undefined} onClick={() => go(n)}>
              {n + 1}. {ask}
            </button>
          </li>
        ))}
      </ol>
      {question !== undefined && (
        <div class="note">
          <p class="over" aria-live="polite">
            {question.count}
          </p>
          <div class="acts">
            <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
              {say('discuss.back')}
            </button>
            <button
              type="button"
              class="main"
              disabled={question.answer.length === 0}
              aria-pressed={isOpen}
              onClick={() => shared.change((now) => ({ ...now, isOpen: !now.isOpen }))}
            >
              {say(isOpen ? 'discuss.cover' : 'discuss.uncover')}
            </button>
            <button type="button" disabled={at === talk.questions.length - 1} onClick={() => go(at + 1)}>
              {say('discuss.next')}
            </button>
          </div>
          <dl>
            {question.notes.map(({ term, texts, isAsk }) => (
              <div key={term}>
                <dt>{term}</dt>
                <dd class={isAsk ? 'ask' : undefined}>
                  {texts.map((text) => (
                    <p key={text}>{text}</p>
                  ))}
                </dd>
              </div>
            ))}
          </dl>
        </div>
      )}
      <details>
        <summary>{say('discuss.how')}</summary>
        {[...talk.how, ...talk.leftOut].map((text) => (
          <p key={text}>{text}</p>
        ))}
      </details>
    </section>
  );
}

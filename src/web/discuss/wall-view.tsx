import { useEffect, useRef } from 'preact/hooks';
import type { QuestionShown, TalkShown } from '../engine/talk-wire.ts';
import type { DiscussSay } from '../words/discuss-words.ts';
import type { SharedTalk } from './shared-talk.ts';
import { movedTo } from './talk-now.ts';
import { TalkParts } from './talk-part.tsx';

export interface WallViewProps {
  readonly say: DiscussSay;
  readonly shared: SharedTalk;
}

/** One question as large as the window; its answer is uncovered when the class has spoken. */
export function WallView({ say, shared }: WallViewProps) {
  const { talk, at, isOpen } = shared.now;
  const question = talk?.questions[at];
  const heading = useRef<HTMLHeadingElement>(null);
  const place = useRef(at);
  useEffect(() => {
    if (place.current === at) return;
    place.current = at;
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, [at]);
  if (talk === null || question === undefined)
    return (
      <main class="wall">
        <h1>{say('discuss.page')}</h1>
        <p>{say('discuss.wall.none')}</p>
        <p>
          <a href="#notes">{say('discuss.to-notes')}</a>
        </p>
      </main>
    );
  const last = talk.questions.length - 1;
  const go = (to: number) => shared.change((now) => movedTo(now, to));
  return (
    <>
      <main class="wall">
        <p class="over">
          {question.number}. {talk.about}
        </p>
        <h1 ref={heading} tabIndex={-1}>
          {question.ask}
        </h1>
        <Question question={question} talk={talk} isOpen={isOpen} />
      </main>
      <nav class="wall-acts" aria-label={say('discuss.acts')}>
        <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
          {say('discuss.back')}
        </button>
        {question.answer.length > 0 && (
          <button
            type="button"
            class="main"
            aria-expanded={isOpen}
            onClick={() => shared.change((now) => ({ ...now, isOpen: !now.isOpen }))}
          >
            {say(isOpen ? 'discuss.cover' : 'discuss.uncover')}
          </button>
        )}
        <button type="button" disabled={at === last} onClick={() => go(at + 1)}>
          {say('discuss.next')}
        </button>
        <a href="#notes">{say('discuss.to-notes')}</a>
      </nav>
    </>
  );
}

export interface QuestionProps {
  readonly question: QuestionShown;
  readonly talk: TalkShown;
  readonly isOpen: boolean;
}

/** What stands under a question, and its answer where that is uncovered. */
export const Question = ({ question, talk, isOpen }: QuestionProps) => (
  <>
    <p class="task">{question.task}</p>
    <TalkParts parts={question.shown} />
    {isOpen && question.answer.length > 0 && (
      <section class="answer" aria-label={talk.answer}>
        <h2>{talk.answer}</h2>
        <TalkParts parts={question.answer} />
      </section>
    )}
  </>
);

import { useEffect } from 'preact/hooks';
import type { TalkShown } from '../engine/talk-wire.ts';
import { Question } from './wall-view.tsx';

export interface TalkOnPaperProps {
  readonly talk: TalkShown;
  /** Told when the browser's own window for printing is closed again. */
  readonly done: () => void;
}

/** All questions with their answers, a page each: there for as long as they are printed. */
export function TalkOnPaper({ talk, done }: TalkOnPaperProps) {
  useEffect(() => {
    print();
    done();
  }, []);
  return (
    <div class="on-paper">
      {talk.questions.map((question) => (
        <section key={question.kind} class="wall">
          <p class="over">
            {question.number}. {talk.about}
          </p>
          <h2>{question.ask}</h2>
          <Question question={question} talk={talk} isOpen />
        </section>
      ))}
    </div>
  );
}

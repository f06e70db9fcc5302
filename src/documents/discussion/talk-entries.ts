import type { Say } from '../sheets/say.ts';
import type { TalkPage } from './talk-page.ts';

/** One line of the notes: what to do, and the words for it. */
export interface TalkEntry {
  readonly term: string;
  readonly texts: readonly string[];
  /** The question itself. */
  readonly isAsk: boolean;
}

/** A question's notes in the order in which they are wanted. */
export function talkEntries({ ask, task, notes }: TalkPage, say: Say): readonly TalkEntry[] {
  const { wait, answer, idea, back } = notes;
  const entry = (key: string, texts: readonly string[]): TalkEntry => ({
    term: say(key),
    texts,
    isAsk: key === 'talk.you-ask',
  });
  return [
    entry('talk.you-ask', [ask]),
    entry('talk.then', [task, say('talk.wait', { seconds: wait })]),
    entry('talk.you-answer', answer),
    entry('talk.idea', [idea]),
    entry('talk.back', [back]),
  ];
}

/** Which of the questions it is, and how long it takes. */
export const talkCount = ({ number, of, notes: { minutes } }: TalkPage, say: Say): string =>
  `${say('talk.number', { number, of })}, ${say('talk.minutes', { minutes })}`;

import { type Discussion, type DiscussionOptions, discuss } from '../../core/discuss.ts';
import { titleIn } from '../../core/files/titles.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { Review } from '../../core/review.ts';
import { type TalkFacts, talkNotes, talkWall } from '../pages/talk-sheets.ts';
import type { Language } from '../sentences/language.ts';
import { sayIn } from '../sheets/say.ts';
import { type Talk, talkOf } from './talk-pages.ts';

/** A class's talk, and the words of it in one language: command, page and paper tell this one. */
export interface ToldTalk {
  readonly discussion: Discussion;
  readonly talk: Talk;
  /** Whose numbers these are. */
  readonly about: string;
  readonly facts: TalkFacts;
}

/** What is prepared and reviewed -> the talk about it, as it is told in this language. */
export function toldTalk(
  language: Language,
  prepared: Prepared,
  review: Pick<Review, 'judged' | 'tables'>,
  options: DiscussionOptions,
): ToldTalk {
  const say = sayIn(language);
  const discussion = discuss(prepared, review, options);
  const { activity, visit } = prepared;
  return {
    discussion,
    talk: talkOf(language, prepared, review.judged, discussion),
    about: say(`talk.about.${options.of}`),
    facts: [
      ...(activity === null ? [] : [[say('page.activity'), titleIn(language, activity)] as const]),
      ...(visit?.date == null || options.of === 'rehearsal'
        ? []
        : [[say('page.visit'), visit.date] as const]),
      [say('talk.fact.groups'), String(discussion.groups)],
      [say('talk.fact.readings'), String(discussion.readings)],
    ],
  };
}

/** Its pages to print or keep: the wall, and the notes of whoever leads it. */
export const talkSheets = (language: Language, { talk, about, facts }: ToldTalk) => ({
  wall: talkWall(language, talk, about),
  notes: talkNotes(language, talk, about, facts),
});

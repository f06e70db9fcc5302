import { isNotDefined } from '../../core/description/not-defined.ts';
import { type Discussion, isAsked } from '../../core/discuss.ts';
import type { OpenQuestion, QuestionKind } from '../../core/discussion/question.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { JudgedReading } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { sayIn } from '../sheets/say.ts';
import { reasonText } from '../text/class-figure-text.ts';
import { easePage } from './ease-page.ts';
import { guessPage } from './guess-page.ts';
import { limitsPage } from './limits-page.ts';
import { machinesPage } from './machines-page.ts';
import { restPage } from './rest-page.ts';
import { savedPage } from './saved-page.ts';
import { surprisedPage } from './surprised-page.ts';
import type { TalkContent, TalkPage, TalkWords } from './talk-page.ts';
import { tradedPage } from './traded-page.ts';

/** The talk in one language: its pages, what was left out and why, and which pages a short time holds. */
export interface Talk {
  readonly pages: readonly TalkPage[];
  readonly leftOut: readonly { readonly ask: string; readonly because: string }[];
  /** Sentences on how to lead it, which pages fit and which do where little time is left. */
  readonly how: readonly string[];
}

/** A discussion -> what stands on wall, paper and screen; only questions that the numbers say something to. */
export function talkOf(
  language: Language,
  prepared: Prepared,
  judged: readonly JudgedReading[],
  discussion: Discussion,
): Talk {
  const words: TalkWords = { language, say: sayIn(language), prepared, judged, discussion };
  const { say } = words;
  const open = discussion.questions.filter(isAsked);
  const pages = open.map((question, n): TalkPage => {
    const { kind, wait, minutes } = question;
    const { shown, answer, model } = contentOf(question, words);
    return {
      kind,
      number: n + 1,
      of: open.length,
      ask: say(`talk.${kind}.ask`),
      task: say(`talk.${kind}.do`),
      shown,
      answer,
      notes: {
        wait,
        minutes,
        answer: model ?? answer.flatMap((each) => (each.part === 'line' ? [each.text] : [])),
        idea: say(`talk.${kind}.idea`),
        back: say(`talk.${kind}.back`),
      },
    };
  });
  const numbersOf = (kinds: readonly QuestionKind[]): readonly string[] =>
    pages.filter(({ kind }) => kinds.includes(kind)).map(({ number }) => String(number));
  return {
    pages,
    leftOut: discussion.questions.flatMap(({ kind, found }) =>
      isNotDefined(found) ? [{ ask: say(`talk.${kind}.ask`), because: reasonText(language, found) }] : [],
    ),
    how: [
      say('talk.how'),
      say('talk.how.words'),
      ...(discussion.within.length === pages.length
        ? []
        : [say('talk.within', { minutes: discussion.minutes, numbers: numbersOf(discussion.within) })]),
      ...(discussion.inFive.length === 0
        ? []
        : [say('talk.in-five', { numbers: numbersOf(discussion.inFive) })]),
    ],
  };
}

function contentOf(question: OpenQuestion, words: TalkWords): TalkContent {
  switch (question.kind) {
    case 'machines':
      return machinesPage(question.found, words);
    case 'guess':
      return guessPage(question.found, words);
    case 'traded':
      return tradedPage(question.found, words);
    case 'saved':
      return savedPage(question.found, words);
    case 'rest':
      return restPage(question.found, words);
    case 'surprised':
      return surprisedPage(question.found, words);
    case 'ease':
      return easePage(question.found, words);
    case 'limits':
      return limitsPage(question.found, words);
  }
}

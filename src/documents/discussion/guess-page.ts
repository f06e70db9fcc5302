import { isNotDefined } from '../../core/description/not-defined.ts';
import type { GuessFound } from '../../core/discussion/guess-against-reading.ts';
import { setupsOf } from '../../core/review.ts';
import { NOTHING } from '../text/class-figure-text.ts';
import { fineFigureIn } from '../text/prediction-text.ts';
import { lines, type TalkContent, type TalkWords } from './talk-page.ts';

/** What was guessed before, beside what was read. */
export function guessPage(
  { setups, orders }: GuessFound,
  { say, language, prepared }: TalkWords,
): TalkContent {
  const rows = setups.flatMap(({ setup, middle, from, to, read }): readonly (readonly string[])[] => {
    const at = setupsOf(prepared).find((each) => each.setup.mark === setup);
    if (at === undefined) return [];
    const text = fineFigureIn(language, at.prediction);
    return [
      [
        setup,
        text(middle),
        say('guide.plan.from-to', { from: text(from), to: text(to) }),
        isNotDefined(read) ? NOTHING : text(read),
      ],
    ];
  });
  const told = orders.map(({ more, less, right, of }) => say('talk.guess.order', { more, less, right, of }));
  const column = (name: string): string => say(`talk.guess.${name}`);
  return {
    shown: [
      {
        part: 'table',
        head: [column('setup'), column('guessed'), column('between'), column('read')],
        rows,
      },
    ],
    answer: lines([...told, say('talk.guess.answer')]),
  };
}

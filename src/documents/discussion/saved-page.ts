import type { SavedFound } from '../../core/discussion/saved-work.ts';
import { intervalRows } from '../drawing/interval-rows.ts';
import { percentText } from '../text/class-figure-text.ts';
import { savedText } from '../text/class-work-text.ts';
import { accountFigure } from './account-figure.ts';
import { lines, PICTURE_WIDTH, type TalkContent, type TalkPart, type TalkWords } from './talk-page.ts';

/** Does it save work: the two shapes, then how much came out of what was put in, setup by setup. */
export function savedPage({ setups, shown }: SavedFound, words: TalkWords): TalkContent {
  const { say, language, discussion } = words;
  const at = setups.find(({ setup }) => setup === shown);
  const told = [...savedText(language, discussion.summary), say('talk.saved.rule')];
  return {
    shown: at === undefined ? [] : accountFigure(at, words, 'asked'),
    answer: [
      ...(at === undefined ? [] : accountFigure(at, words, 'saved')),
      efficiencies(setups, words),
      ...lines(told),
    ],
    model: told,
  };
}

/** To the right of this nothing is drawn: the arrow of a bar that goes on ends there. */
const FURTHEST = 1.2;

function efficiencies(setups: SavedFound['setups'], { say, language }: TalkWords): TalkPart {
  const caption = say('talk.saved.picture');
  const svg = intervalRows({
    axis: {
      from: 0,
      to: FURTHEST,
      // Numbers at every quarter: closer ones would touch each other.
      step: 0.25,
      text: (value) => say('talk.saved.percent', { value: Math.round(100 * value) }),
    },
    line: { at: 1, text: say('talk.saved.line') },
    rows: setups.map(({ setup, work: { efficiency }, saves }) => ({
      label: setup,
      value: efficiency.value,
      from: efficiency.from,
      to: efficiency.to,
      diamond: null,
      word: say(`talk.saved.${saves}`),
    })),
    legend: { dot: say('talk.saved.dot'), diamond: null },
    name: 'talk efficiencies',
    title: caption,
    description: setups
      .map(({ setup, work }) =>
        say('talk.saved.efficiency', { setup, percent: percentText(language, work.efficiency) }),
      )
      .join(' '),
    width: PICTURE_WIDTH,
  });
  return { part: 'figure', caption, svg };
}

import { isNotDefined } from '../../../core/description/not-defined.ts';
import type { SetupSheet, TableSheet } from '../../pages/sheet.ts';
import { unitLabel } from '../../printing/reading-text.ts';
import type { Language } from '../../sentences/language.ts';
import { hasSentence } from '../../sentences/sentence.ts';
import { whyText } from '../../text/key-table.ts';
import { goodRangeOf, marksOf, rangeText, textbookOnScale } from '../../text/prediction-text.ts';
import type { Say } from '../say.ts';
import { bestHelp, geometryText, sumText } from './easier.ts';
import { expectedOf, expectedWithUnit, plainFirst, timesText } from './figures.ts';
import { shiftOf } from './pencil.ts';

/** A question that pupils ask at a table, and an answer with this kit's numbers. */
export interface Question {
  readonly asks: string;
  readonly answer: string;
}

/** The questions of one table, those with a number first. */
export function pupilQuestions(table: TableSheet, language: Language, say: Say): readonly Question[] {
  const ask = (name: string, facts: Parameters<Say>[1] | null): readonly Question[] =>
    facts === null ? [] : [{ asks: say(`guide.ask.${name}`), answer: say(`guide.answer.${name}`, facts) }];
  const { setups } = table;
  const own = `guide.ask.own.${table.machine}`;
  return [
    ...ask('book', bookFacts(setups, language)),
    ...ask('other-group', rangeFacts(setups, language)),
    ...ask('help', helpFacts(setups, language, say)),
    ...ask('held', heldFacts(setups, language)),
    ...ask('upside-down', turnedFacts(setups, language)),
    ...ask('easier', easierFacts(setups)),
    ...(hasSentence(language, own)
      ? [{ asks: say(own), answer: say(`guide.answer.own.${table.machine}`) }]
      : []),
  ];
}

/** Where the schoolbook and this apparatus differ most. */
function bookFacts(setups: readonly SetupSheet[], language: Language) {
  const ranked = setups
    .flatMap((setup) => {
      const { textbook } = setup.prediction;
      const expected = expectedOf(setup.prediction);
      const shown = expectedWithUnit(language, setup.prediction);
      if (isNotDefined(textbook) || expected === null || shown === null || textbook.value === 0) return [];
      return [{ setup, textbook, shown, gap: Math.abs(expected / textbook.value - 1) }];
    })
    .sort((a, b) => b.gap - a.gap);
  const [most] = ranked;
  const why = most === undefined ? '' : whyText(language, most.setup);
  if (most === undefined || why === '') return null;
  return {
    setup: most.setup.mark,
    textbook: textbookOnScale(language, most.textbook, marksOf(most.setup.prediction)),
    expected: most.shown,
    why,
  };
}

/** The setup with the widest good range: there two honest groups differ most. */
function rangeFacts(setups: readonly SetupSheet[], language: Language) {
  const [widest] = setups
    .flatMap((setup) => {
      const { mark, prediction } = setup;
      const good = goodRangeOf(prediction);
      return good === null || good.to <= 0
        ? []
        : [
            {
              setup,
              mark,
              text: rangeText(language, prediction, good),
              width: (good.to - good.from) / good.to,
            },
          ];
    })
    .sort((one, other) => plainFirst(one.setup, other.setup) || other.width - one.width);
  return widest === undefined ? null : { setup: widest.mark, range: widest.text };
}

/** The setup that helps most, and what the hand pays for it: every "times" from figures that are printed. */
function helpFacts(setups: readonly SetupSheet[], language: Language, say: Say) {
  const best = bestHelp(setups, language);
  return best === null
    ? null
    : {
        setup: best.setup.mark,
        sum: sumText(best.times, say),
        ideal: timesText(language, best.ideal),
        travel: timesText(language, best.travel),
        geometry: geometryText(best.setup, language, say),
      };
}

function heldFacts(setups: readonly SetupSheet[], language: Language) {
  const held = setups.find(({ prediction }) => prediction.outcome.kind === 'band');
  const good = held === undefined ? null : goodRangeOf(held.prediction);
  return held === undefined || good === null
    ? null
    : { setup: held.mark, range: rangeText(language, held.prediction, good) };
}

/** What a scale that hangs upside down shows less, where its zero was set another way: in its own unit. */
function turnedFacts(setups: readonly SetupSheet[], language: Language) {
  for (const setup of setups) {
    const shift = shiftOf(language, setup);
    if (setup.scale?.hangs === 'upside down' && shift !== null && shift.value > 0)
      return {
        scale: setup.scale.label,
        shift: `${shift.text} ${unitLabel(marksOf(setup.prediction).unit)}`,
      };
  }
  return null;
}

/** Which is the easiest of those that are felt. */
function easierFacts(setups: readonly SetupSheet[]) {
  const felt = setups.flatMap(({ mark, prediction }) =>
    prediction.outcome.kind === 'ease' ? [{ mark, order: prediction.outcome.order }] : [],
  );
  const first = felt.filter(({ order }) => order === 1).map(({ mark }) => mark);
  return felt.length < 2 || first.length === felt.length ? null : { setups: first };
}

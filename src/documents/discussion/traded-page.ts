import type { TradedFound } from '../../core/discussion/traded.ts';
import { significant } from '../../core/quantities/print-quantity.ts';
import { intervalRows } from '../drawing/interval-rows.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { languagePack } from '../sentences/language.ts';
import { figureText } from '../text/class-figure-text.ts';
import { classDots } from './class-dots.ts';
import { lines, PICTURE_WIDTH, type TalkContent, type TalkPart, type TalkWords } from './talk-page.ts';

/** What got easier and what got longer: two strips with the class's dots, then force and way of every setup. */
export function tradedPage(found: TradedFound, words: TalkWords): TalkContent {
  const { say, language } = words;
  const { setups, pairs, shown } = found;
  const way = (value: number): string => trimmed(significant(value, 2, languagePack(language).decimal));
  const at = setups.find(({ setup }) => setup === shown);
  const pair = pairToTalkOf(found);
  const strips =
    pair === null ? [] : [pair.less, pair.more].flatMap((mark) => classDots(words, mark, mark, true));
  const told = [
    ...(at === undefined
      ? [say('talk.traded.none')]
      : [
          say('talk.traded.shown', {
            setup: at.setup,
            force: figureText(language, at.force, ''),
            way: way(at.way),
          }),
        ]),
    ...(pair === null
      ? []
      : [
          say('talk.traded.pair', {
            more: pair.more,
            less: pair.less,
            pull: figureText(language, pair.pull, ''),
            way: way(pair.way),
          }),
        ]),
    say('talk.traded.rule'),
  ];
  return {
    shown: [
      ...(pair === null ? [] : lines([say('talk.traded.strips', { less: pair.less, more: pair.more })])),
      ...strips,
    ],
    answer: [picture(setups, words, way), ...lines(told)],
    model: told,
  };

  /** Partners whose pulls differ while the load is the same: another load shows nothing of the machine. */
  function pairToTalkOf({ pairs: all }: TradedFound): (typeof pairs)[number] | null {
    const traded = all.filter((each) => each.way > 1.05 && each.pull.from > 1);
    return (
      traded.find(({ less, more }) => less === shown || more === shown) ??
      [...traded].sort((a, b) => b.pull.from - a.pull.from)[0] ??
      null
    );
  }
}

function picture(
  setups: TradedFound['setups'],
  { say, language }: TalkWords,
  way: (value: number) => string,
): TalkPart {
  const most = Math.max(...setups.flatMap(({ force, way: far }) => [force.to, far]));
  const step = most > 12 ? 5 : most > 6 ? 2 : 1;
  const svg = intervalRows({
    axis: {
      from: 0,
      to: Math.ceil(most / step) * step,
      step,
      text: (value) => say('talk.traded.times', { value }),
    },
    line: null,
    rows: setups.map(({ setup, force, way: far }) => ({
      label: setup,
      value: force.value,
      from: force.from,
      to: force.to,
      diamond: far,
      word: '',
    })),
    legend: { dot: say('talk.traded.dot'), diamond: say('talk.traded.diamond') },
    name: 'talk traded',
    title: say('talk.traded.picture'),
    description: setups
      .map(({ setup, force, way: far }) =>
        say('talk.traded.described', { setup, force: figureText(language, force, ''), way: way(far) }),
      )
      .join(' '),
    width: PICTURE_WIDTH,
  });
  return { part: 'figure', caption: say('talk.traded.picture'), svg };
}

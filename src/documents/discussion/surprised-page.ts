import type { SurprisedFound, SurprisingNumber } from '../../core/discussion/surprising-numbers.ts';
import { causeNamed } from '../text/cause-text.ts';
import { glued, percent } from '../text/class-figure-text.ts';
import { tableFindingText } from '../text/class-findings-text.ts';
import { writtenText } from '../text/written-text.ts';
import { classDots } from './class-dots.ts';
import { lines, type TalkContent, type TalkWords } from './talk-page.ts';

/** As many strips as a page holds that is read from the back of a room. */
const MOST_STRIPS = 3;

/** Which numbers surprise us: the dots, then what probably happened; no group is named unless that is wished. */
export function surprisedPage(found: SurprisedFound, words: TalkWords): TalkContent {
  const { say, language, prepared } = words;
  const { numbers, tooGood, tables, read, good } = found;
  const marks = [...new Set([...numbers, ...tooGood].map(({ setup }) => setup))];
  const setups = prepared.tables.flatMap((table) => table.setups);
  const told = [
    say('talk.surprised.share', { good, read }),
    ...tables.flatMap((finding) => tableFindingText(language, finding, setups).slice(0, 1)),
    ...stationsIn(numbers).map((alike) => stationText(alike, words)),
    ...numbers.filter(({ because }) => because !== 'station').map((each) => numberText(each, words)),
    ...tooGood.map(({ setup, written, efficiency, u, groups }) =>
      by(
        say('talk.surprised.too-good', {
          setup,
          written: glued(writtenText(language, written)),
          percent: percent(efficiency),
          u: percent(1.96 * u),
        }),
        groups,
        words,
      ),
    ),
    say('talk.surprised.rule'),
  ];
  return {
    shown: marks
      .slice(0, MOST_STRIPS)
      .flatMap((mark) => classDots(words, mark, say('talk.surprised.strip', { setup: mark }), false)),
    answer: lines(told),
  };
}

/** A table that was not as its card says is said once, for all its setups. */
function stationsIn(numbers: readonly SurprisingNumber[]): readonly (readonly SurprisingNumber[])[] {
  const byCause = new Map<string, SurprisingNumber[]>();
  for (const each of numbers.filter(({ because }) => because === 'station')) {
    const key = JSON.stringify([each.code, each.facts]);
    byCause.set(key, [...(byCause.get(key) ?? []), each]);
  }
  return [...byCause.values()];
}

function stationText(alike: readonly SurprisingNumber[], words: TalkWords): string {
  const [first] = alike;
  if (first === undefined) return '';
  const groups = [...new Set(alike.flatMap((each) => each.groups ?? []))];
  const said = words.say('talk.surprised.station', {
    setups: alike.map(({ setup }) => setup),
    count: alike.reduce((sum, { count }) => sum + count, 0),
    cause: causeOf(first, words),
  });
  return by(said, first.groups === null ? null : groups, words);
}

function numberText(each: SurprisingNumber, words: TalkWords): string {
  const { setup, written, count, groups } = each;
  const { language } = words;
  const said = words.say(`talk.surprised.${count === 1 ? 'one' : 'several'}`, {
    setup,
    written: written.map((text) => glued(writtenText(language, text))),
    cause: causeOf(each, words),
  });
  return by(said, groups, words);
}

const causeOf = ({ code, facts }: SurprisingNumber, { language }: TalkWords): string =>
  causeNamed(language, { code, ...(facts === undefined ? {} : { facts }) });

/** Behind what is said, whose it is; nothing where no group is named. */
const by = (said: string, groups: readonly string[] | null, { say }: TalkWords): string =>
  groups === null
    ? said
    : say('talk.surprised.by', {
        said,
        groups: groups.map((group) => say('talk.surprised.group', { group })),
      });

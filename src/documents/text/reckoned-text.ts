import { significant } from '../../core/quantities/print-quantity.ts';
import type { Reckoned } from '../../core/readings/reckoning.ts';
import type { ReckoningWay } from '../../core/readings/reckoning-ways.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { causeName, causeToSee, causeToTry } from './cause-text.ts';

/** Digits of what it should be: as many as a class reckons with. */
const DIGITS = 3;
/** More reckonings of one number than this tell nothing. */
const MOST_WAYS = 2;

/** What is said of one computed column: which reckoning gives the number, and of a slip what to do. */
export function reckonedText(language: Language, reckoned: Reckoned): readonly string[] {
  const [slip] = reckoned.verdict === 'slip' ? waysOf(reckoned) : [];
  return [
    reckonedLine(language, reckoned),
    ...(slip === undefined
      ? []
      : [
          sentence(language, 'review.to-group', { text: causeToTry(language, slip) }),
          sentence(language, 'review.to-teacher', { text: causeToSee(language, slip) }),
        ]),
  ];
}

function reckonedLine(language: Language, reckoned: Reckoned): string {
  const { column, written, verdict, because } = reckoned;
  const facts = { column: sentence(language, `reckoning.column.${column}`), written };
  const should = shouldBe(language, reckoned);
  switch (verdict) {
    case 'as the key':
    case 'another way':
      return sentence(language, 'reckoning.right', { ...facts, way: waysText(language, reckoned) });
    case 'slip':
      return `${sentence(language, 'reckoning.slip', { ...facts, way: waysText(language, reckoned) })}${should}`;
    case 'not found':
      return `${sentence(language, 'reckoning.not-found', facts)}${should}`;
    case 'unreadable':
    case 'not judged':
      return sentence(language, 'reckoning.left', {
        ...facts,
        because: because === null ? '' : sentence(language, because.because, because.facts),
      });
  }
}

/** The same for one cell of a table: the verdict, and which reckoning it is by or why there is none. */
export function reckonedCell(language: Language, reckoned: Reckoned): string {
  const verdict = sentence(language, `reckoning.verdict.${reckoned.verdict}`);
  const { because } = reckoned;
  const more =
    because === null ? waysText(language, reckoned) : sentence(language, because.because, because.facts);
  return more === '' ? verdict : `${verdict}: ${more}`;
}

/** The reckonings behind the verdict: of a number that is right in one way, what slips give it too is no matter. */
function waysOf({ verdict, ways }: Reckoned): readonly ReckoningWay[] {
  const is = verdict === 'another way' ? 'sound' : verdict;
  return ways.filter((way) => way.is === is).slice(0, MOST_WAYS);
}

const waysText = (language: Language, reckoned: Reckoned): string =>
  waysOf(reckoned)
    .map((way) => causeName(language, way))
    .join(sentence(language, 'reckoning.or'));

function shouldBe(language: Language, { column, shouldBe: value }: Reckoned): string {
  if (value === null) return '';
  const number = trimmed(significant(value, DIGITS, languagePack(language).decimal));
  const should = column === 'advantage' ? number : `${number} J`;
  return `; ${sentence(language, 'reckoning.should-be', { should })}`;
}

import { isNotDefined } from '../../core/description/not-defined.ts';
import type { CardLevel } from '../reading-level/card-level.ts';
import type { ReadingLevel } from '../reading-level/reading-level.ts';
import { MOST_WORDS_IN_A_STEP, type ReadingLimit } from '../reading-level/reading-limit.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { columns } from './columns.ts';

/** Of each card so many of its hardest sentences are told. */
const HARDEST = 3;

/** A line a card: what was counted, what the formula says, whether the youngest can read it; then what is hardest. */
export function readingLevelText(language: Language, activity: string, cards: readonly CardLevel[]): string {
  const say = (key: string, facts = {}) => sentence(language, `reading-level.${key}`, facts);
  const limit = cards[0]?.limit;
  const measure = limit?.leastScore == null ? ['grade'] : ['score', 'perspicuity'];
  const head = [
    'card',
    'sentences',
    'words',
    'figures',
    'syllables',
    'longest-step',
    ...measure,
    'limit',
  ].map((key) => say(`column.${key}`));
  const rows = cards.map((card) => [
    `${card.table}  ${card.title}`,
    ...[card.level.counted.sentences, card.level.counted.words, card.level.counted.figures].map(String),
    String(card.level.counted.syllables),
    String(card.longestStep?.words ?? 0),
    ...scores(language, card.level, measure.length),
    String(card.limit.leastScore ?? card.limit.grade),
    say(`verdict.${card.verdict}`),
  ]);
  const sides = ['left' as const, ...head.slice(1).map(() => 'right' as const), 'left' as const];
  return [
    say('title', { activity }),
    ...(limit === undefined ? [] : limitLines(language, limit)),
    say('figures'),
    '',
    ...columns([[...head, ''], ...rows], sides),
    '',
    say('hardest'),
    ...cards.flatMap((card) => [
      `  ${card.table}  ${card.title}`,
      ...card.level.sentences.slice(0, HARDEST).map(({ text, words, syllablesPerWord }) => {
        const syllables = oneDecimal(language, syllablesPerWord);
        return `      ${say('sentence', { words, syllables, text })}`;
      }),
    ]),
    '',
  ].join('\n');
}

function limitLines(language: Language, limit: ReadingLimit): readonly string[] {
  const { age, grade, leastScore, isAssumed } = limit;
  const words = MOST_WORDS_IN_A_STEP;
  return [
    leastScore === null
      ? sentence(language, 'reading-level.limit.grade', { age, grade, words })
      : sentence(language, 'reading-level.limit.score', { age, score: leastScore, words }),
    ...(isAssumed ? [sentence(language, 'reading-level.age-assumed', { age })] : []),
  ];
}

/** The deciding number first; a card without words has dashes. */
function scores(language: Language, { score }: ReadingLevel, count: number): readonly string[] {
  if (isNotDefined(score)) return Array.from({ length: count }, () => '–');
  return (score.by === 'grade' ? [score.grade] : [score.score, score.perspicuity]).map((value) =>
    oneDecimal(language, value),
  );
}

/** A grade below the first is printed as it is; a nought has no sign. */
function oneDecimal(language: Language, value: number): string {
  const text = (Math.round(value * 10) / 10 + 0).toFixed(1);
  return languagePack(language).decimal === 'comma' ? text.replace('.', ',') : text;
}

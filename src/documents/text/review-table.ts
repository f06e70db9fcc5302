import type { JudgedReading, Review } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { causeName, causeToTry } from './cause-text.ts';
import { columns, wrapped } from './columns.ts';
import { goodRangeOf, rangeText } from './prediction-text.ts';

const WIDTH = 100;
/** Causes less probable than this are not worth a teacher's minute. */
const WORTH_SAYING = 0.1;

/** All readings of a file, a line each; what to look at again stands below its reading. */
export function reviewTable(language: Language, review: Review, file: string): string {
  const head = ['line', 'group', 'setup', 'written', 'good', 'verdict'].map((key) =>
    sentence(language, `review.column.${key}`),
  );
  const rows = review.judged.map(({ judgement, at }) => [
    judgement.reading.line === null ? '' : String(judgement.reading.line),
    judgement.reading.group,
    at.setup.mark,
    judgement.reading.written,
    goodText(language, at),
    sentence(language, `verdict.${judgement.verdict}`),
  ]);
  const [first = '', ...lines] = columns([head, ...rows], ['right', 'left', 'left', 'left', 'left', 'left']);
  return [
    sentence(language, 'review.title', { file }),
    '',
    first,
    ...review.judged.flatMap((judged, n) => [
      lines[n] ?? '',
      ...remarks(language, judged).map((each) => `      ${each}`),
    ]),
    ...(review.refused.length === 0
      ? []
      : [
          '',
          sentence(language, 'review.refused', { count: review.refused.length }),
          ...review.refused.flatMap((row) => [
            `  ${sentence(language, 'review.line', { line: row.line })}  ${row.text}`,
            `      ${sentence(language, row.because)}${
              row.nearest === undefined
                ? ''
                : ` ${sentence(language, 'review.nearest', { nearest: row.nearest })}`
            }`,
          ]),
        ]),
    '',
    tally(language, review),
    '',
  ].join('\n');
}

/** One reading, as it is told at the table. */
export function judgedText(language: Language, judged: JudgedReading): string {
  const { judgement, at } = judged;
  return [
    sentence(language, 'review.one', {
      setup: at.setup.mark,
      written: judgement.reading.written,
      verdict: sentence(language, `verdict.${judgement.verdict}`),
    }),
    ...(goodRangeOf(at.prediction) === null
      ? []
      : [`  ${sentence(language, 'review.good-range', { range: goodText(language, at) })}`]),
    ...remarks(language, judged).map((each) => `  ${each}`),
    '',
  ].join('\n');
}

const goodText = (language: Language, at: JudgedReading['at']): string => {
  const good = goodRangeOf(at.prediction);
  return good === null ? '–' : rangeText(language, at.prediction, good);
};

/** What to say: likely causes with how likely, and the one thing to try. */
function remarks(language: Language, { judgement }: JudgedReading): readonly string[] {
  if (judgement.because !== null && hasSentence(language, judgement.because.because))
    return wrapped(sentence(language, judgement.because.because, judgement.because.facts), WIDTH - 6);
  if (judgement.verdict !== 'look again') return [];
  const likely = judgement.causes.filter(
    (cause) => cause.kind !== 'good' && cause.probability >= WORTH_SAYING,
  );
  const first = likely[0];
  return [
    ...likely.flatMap((cause) =>
      wrapped(
        sentence(language, 'review.cause', {
          cause: causeName(language, cause),
          percent: Math.round(cause.probability * 100),
        }),
        WIDTH - 6,
      ),
    ),
    ...(first === undefined ? [] : wrapped(causeToTry(language, first), WIDTH - 6)),
  ];
}

function tally(language: Language, { judged, refused }: Review): string {
  const counts = new Map<string, number>();
  for (const { judgement } of judged) counts.set(judgement.verdict, (counts.get(judgement.verdict) ?? 0) + 1);
  const parts = [...counts].map(([verdict, count]) => `${count} ${sentence(language, `verdict.${verdict}`)}`);
  if (refused.length > 0) parts.push(`${refused.length} ${sentence(language, 'review.not-used')}`);
  return parts.join(', ');
}

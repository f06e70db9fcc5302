import type { Judgement } from '../../core/readings/judgement.ts';
import { reckonedAt } from '../../core/readings/reckoned-reading.ts';
import type { JudgedReading, Review } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { causeNamed } from './cause-text.ts';
import { habitText, tableFindingText, tieText } from './class-findings-text.ts';
import { classSummaryText } from './class-summary-text.ts';
import { columns, wrapped } from './columns.ts';
import { goodRangeOf, rangeText } from './prediction-text.ts';
import { likelyCauses, queriedText } from './queried-text.ts';
import { reckonedText } from './reckoned-text.ts';
import { noteText, writtenRemarks } from './written-remarks.ts';

const WIDTH = 100;

/**
 * All readings of a file for a teacher with five minutes: how many are to be looked at, what whole tables and
 * groups have in common, then each reading on a line with what there is to say below it, and what the class found.
 */
export function reviewTable(language: Language, review: Review, file: string): string {
  const head = ['line', 'group', 'setup', 'written', 'good', 'verdict'].map((key) =>
    sentence(language, `review.column.${key}`),
  );
  const rows = review.judged.map(({ judgement, at }) => [
    judgement.reading.line === null ? '' : String(judgement.reading.line),
    onOneLine(judgement.reading.group),
    at.setup.mark,
    shortened(onOneLine(judgement.reading.written)),
    goodText(language, at),
    verdictText(language, judgement, at),
  ]);
  const setups = review.judged.map(({ at }) => at);
  const [first = '', ...lines] = columns([head, ...rows], ['right', 'left', 'left', 'left', 'left', 'left']);
  return [
    sentence(language, 'review.title', { file }),
    ...(review.judged.length === 0 && review.refused.length === 0
      ? wrapped(sentence(language, 'review.nothing'), WIDTH)
      : wrapped(tally(language, review), WIDTH)),
    ...section(
      sentence(language, 'review.tables'),
      review.tables.map((finding) => tableFindingText(language, finding, setups)),
    ),
    ...section(
      sentence(language, 'review.groups'),
      ownHabits(review).map((habit) => [habitText(language, habit)]),
    ),
    ...(review.judged.length === 0 ? [] : ['', first]),
    ...review.judged.flatMap((judged, n) => [
      lines[n] ?? '',
      ...remarks(language, judged, setups).map((each) => `      ${each}`),
    ]),
    ...section(
      sentence(language, 'review.notes'),
      [...review.notes]
        .sort((one, other) => (one.line ?? 0) - (other.line ?? 0))
        .map((note) => [onOneLine(noteText(language, note))]),
    ),
    ...(review.refused.length === 0
      ? []
      : [
          '',
          sentence(language, 'review.refused', { count: review.refused.length }),
          ...review.refused.flatMap((row) => [
            `  ${sentence(language, 'review.line', { line: row.line })}  ${onOneLine(row.text)}`,
            ...wrapped(whyRefused(language, row), WIDTH - 6).map((each) => `      ${each}`),
          ]),
        ]),
    ...classSummaryText(language, review).flatMap((line, n) => (n === 0 ? ['', line] : [line])),
    '',
  ].join('\n');
}

const whyRefused = (language: Language, { because, nearest }: Review['refused'][number]): string =>
  nearest === undefined
    ? sentence(language, because)
    : `${sentence(language, because)} ${sentence(language, 'review.nearest', { nearest })}`;

/** Paragraphs under a heading, each with its first line less far in than the others; nothing where there are none. */
function section(title: string, paragraphs: readonly (readonly string[])[]): readonly string[] {
  if (paragraphs.length === 0) return [];
  return [
    '',
    title,
    ...paragraphs.flatMap(([first = '', ...rest]) => [
      ...wrapped(first, WIDTH - 2).map((line) => `  ${line}`),
      ...rest.flatMap((each) => wrapped(each, WIDTH - 6).map((line) => `      ${line}`)),
    ]),
  ];
}

/** The verdict; where it isn't the card that a reading is held against, against what. */
export function verdictText(language: Language, judgement: Judgement, at: JudgedReading['at']): string {
  if (isFelt(judgement)) return sentence(language, 'review.felt');
  const verdict = sentence(language, `verdict.${judgement.verdict}`);
  return judgement.station === null
    ? verdict
    : sentence(language, 'review.by-station', {
        verdict,
        range: rangeText(language, at.prediction, judgement.station.good),
      });
}

/** A felt order is no fault of a reading: what the class felt is said at the end. */
const isFelt = ({ because }: Judgement): boolean => because?.because === 'outcome.ease';

/** What a whole table has in common is said once, and not of each group again; --json has all of it. */
const ownHabits = ({ groups, tables }: Review): Review['groups'] =>
  groups.filter(({ code }) => !tables.some((finding) => finding.code === code));

/** Text from a file on one line: a cell may hold line ends, and marks that a terminal would obey. */
const onOneLine = (text: string): string => text.replace(/[\p{Cc}\p{Cf}\s]+/gu, ' ');

/** A cell of the width that a line has room for; --json and --csv have all of it. */
const shortened = (text: string): string =>
  text.length <= 40 ? text : `${[...text].slice(0, 39).join('')}…`;

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
    ...(judged.judgement.station === null
      ? []
      : [
          `  ${sentence(language, 'review.station', { range: rangeText(language, at.prediction, judged.judgement.station.good) })}`,
        ]),
    ...remarks(language, judged, [at]).map((each) => `  ${each}`),
    '',
  ].join('\n');
}

const goodText = (language: Language, at: JudgedReading['at']): string => {
  const good = goodRangeOf(at.prediction);
  return good === null ? '–' : rangeText(language, at.prediction, good);
};

/** The remarks below a reading, as wide as the table has room for. */
const remarks = (
  language: Language,
  judged: JudgedReading,
  setups: readonly JudgedReading['at'][],
): readonly string[] =>
  judgedRemarks(language, judged, setups).flatMap((each) => wrapped(onOneLine(each), WIDTH - 6));

/**
 * What there is to say of a reading, a sentence each: how it was read, likely causes with how likely, the one
 * thing to try, and what tells them apart.
 */
export function judgedRemarks(
  language: Language,
  judged: JudgedReading,
  setups: readonly JudgedReading['at'][],
): readonly string[] {
  const { judgement } = judged;
  const { because } = judgement;
  const why =
    because !== null && !isFelt(judgement) && hasSentence(language, because.because)
      ? [sentence(language, because.because, because.facts)]
      : [];
  return [
    ...why,
    ...writtenRemarks(language, judgement.meaning),
    ...whatHappened(language, judgement, setups),
    ...reckonedAt(judged).flatMap((reckoned) => reckonedText(language, reckoned)),
  ];
}

function whatHappened(
  language: Language,
  judgement: JudgedReading['judgement'],
  setups: readonly JudgedReading['at'][],
): readonly string[] {
  const said = queriedText(language, judgement);
  if (said === null) return [];
  const test = judgement.tie === null ? '' : tieText(language, judgement.tie, setups);
  return [
    ...likelyCauses(judgement).map((cause) =>
      sentence(language, 'review.cause', {
        cause: causeNamed(language, cause),
        percent: Math.round(cause.probability * 100),
      }),
    ),
    sentence(language, 'review.to-group', { text: said.toGroup }),
    sentence(language, 'review.to-teacher', { text: said.toTeacher }),
    ...(test === '' ? [] : [test]),
  ];
}

function tally(language: Language, { judged, refused }: Review): string {
  const counts = new Map<string, number>();
  for (const { judgement } of judged) {
    const key = isFelt(judgement) ? 'review.felt' : `verdict.${judgement.verdict}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const parts = [...counts].map(([key, count]) => `${count} ${sentence(language, key)}`);
  if (refused.length > 0) parts.push(`${refused.length} ${sentence(language, 'review.not-used')}`);
  const byStation = judged.filter(({ judgement }) => judgement.station !== null).length;
  const said = parts.join(', ');
  return byStation === 0
    ? said
    : `${said}. ${sentence(language, 'review.counted-by-station', { count: byStation })}`;
}

import { withGuard } from '../../core/files/readings-table.ts';
import { unitWritten } from '../../core/readings/reading-units.ts';
import { reckonedAt } from '../../core/readings/reckoned-reading.ts';
import type { JudgedReading, Review } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { causeNamed } from './cause-text.ts';
import { goodRangeOf, marksOf, rangeText } from './prediction-text.ts';
import { likelyCauses, queriedText } from './queried-text.ts';
import { reckonedCell } from './reckoned-text.ts';
import { writtenRemarks } from './written-remarks.ts';

/**
 * Headings of the columns, the same in every language; the first ones are those of a readings file, so
 * that this one can be read again.
 */
const COLUMNS = [
  'group',
  'setup',
  'reading',
  'note',
  'line',
  'table',
  'meaning',
  'number',
  'unit',
  'from',
  'to',
  'unit of from and to',
  'verdict',
  'why',
  'likely cause',
  'probability',
  'second cause',
  'probability of it',
  'to the group',
  'for the teacher',
  'ease',
  'advantage',
  'work in',
  'work out',
  'advantage by',
  'work in by',
  'work out by',
  'row as it stands',
] as const;

const DIGITS = 12;

/**
 * A review as comma-separated values (RFC 4180), one row a reading: what was written, unchanged, beside
 * what it means. Numbers carry a decimal point whatever the language; no cell is a formula.
 */
export const reviewCsv = (language: Language, { judged, refused }: Review): string =>
  [
    [...COLUMNS],
    ...judged.map((each) => rowOf(language, each)),
    ...refused.map((row) => {
      const cells: Partial<Record<(typeof COLUMNS)[number], string>> = {
        line: String(row.line),
        verdict: sentence(language, 'review.not-used'),
        why: sentence(language, row.because),
        'row as it stands': withGuard(row.text),
      };
      return COLUMNS.map((column) => cells[column] ?? '');
    }),
  ]
    .map((row) => `${row.map(cell).join(',')}\r\n`)
    .join('');

function rowOf(language: Language, judged: JudgedReading): readonly string[] {
  const { judgement, at } = judged;
  const { reading, meaning } = judgement;
  const marks = marksOf(at.prediction);
  const good = judgement.station?.good ?? goodRangeOf(at.prediction);
  const [first, second] = likelyCauses(judgement);
  const said = queriedText(language, judgement);
  const reckoned = reckonedAt(judged);
  const isNumber = meaning.kind === 'number' || meaning.kind === 'bound';
  return [
    ...[reading.group, reading.setup, reading.written, reading.note].map(withGuard),
    reading.line === null ? '' : String(reading.line),
    withGuard(at.setup.table),
    meaning.kind === 'bound' ? `${meaning.kind} ${meaning.side}` : meaning.kind,
    isNumber ? figure(meaning.number) : '',
    isNumber ? (meaning.unit?.name ?? '') : '',
    good === null ? '' : figure(good.from / marks.unitSi),
    good === null ? '' : figure(good.to / marks.unitSi),
    good === null ? '' : (unitWritten(marks.unit)?.name ?? marks.unit),
    sentence(language, `verdict.${judgement.verdict}`),
    [
      ...whyNot(language, judgement),
      ...byStation(language, judged),
      ...writtenRemarks(language, meaning),
    ].join('; '),
    ...[first, second].flatMap((cause) =>
      cause === undefined ? ['', ''] : [causeNamed(language, cause), cause.probability.toFixed(2)],
    ),
    said?.toGroup ?? '',
    said?.toTeacher ?? '',
    ...[reading.ease, reading.computed?.advantage, reading.computed?.workIn, reading.computed?.workOut].map(
      (text) => withGuard(text ?? ''),
    ),
    ...(['advantage', 'workIn', 'workOut'] as const).map((column) => {
      const own = reckoned.find((each) => each.column === column);
      return own === undefined ? '' : reckonedCell(language, own);
    }),
    '',
  ];
}

const whyNot = (language: Language, { because }: JudgedReading['judgement']): readonly string[] =>
  because !== null && hasSentence(language, because.because)
    ? [sentence(language, because.because, because.facts)]
    : [];

/** A range that isn't the card's is said to be the station's. */
const byStation = (language: Language, { judgement: { station }, at }: JudgedReading): readonly string[] =>
  station === null
    ? []
    : [sentence(language, 'review.station', { range: rangeText(language, at.prediction, station.good) })];

/** Without the last bits of binary sums. */
const figure = (number: number): string => String(Number(number.toPrecision(DIGITS)));

/** A cell in quotes where it needs them. */
const cell = (text: string): string =>
  /[",;\t|\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;

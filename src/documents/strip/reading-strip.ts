import type { Graduations } from '../../core/instruments/graduations.ts';
import { nearestGraduation } from '../../core/instruments/graduations.ts';
import { hatching } from '../drawing/hatching.ts';
import { type Ink, path, together, words } from '../drawing/ink.ts';
import { svgSheet } from '../drawing/svg-sheet.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { dotInks, type StripDot } from './strip-dots.ts';
import { stripMarks } from './strip-marks.ts';

/** What a strip shows. All values in SI; the marks are the instrument's own. */
export interface Strip {
  readonly graduations: Graduations;
  /** First and last mark: a scale's stop and range; for turns and lengths what is worth showing. */
  readonly from: number;
  readonly to: number;
  /** Whether the instrument ends at `from` and `to`; a ruler or a count goes on. */
  readonly ends: boolean;
  readonly good: { readonly from: number; readonly to: number } | null;
  /** One expected reading, or the two limits of a band. */
  readonly expected: readonly number[];
  readonly dots: readonly StripDot[];
}

export interface StripOptions {
  readonly language: Language;
  /** Names the picture on its page. */
  readonly name: string;
  /** Length of the scale in millimetres of paper. */
  readonly length: number;
  /** A group's own strip tells neither the good range nor what is expected. */
  readonly hideGood: boolean;
}

const BAND = 3.8;

/**
 * The reading strip: the instrument's own graduations, true, with the good range hatched above them,
 * the expected reading pointed at from below, the ends of the scale, and a dot for each group.
 */
export function readingStrip(strip: Strip, options: StripOptions): string {
  const { language } = options;
  const span = strip.to - strip.from;
  const on = (si: number): number => ((si - strip.from) / span) * options.length;
  const good = options.hideGood ? null : strip.good;
  const inks: Ink[] = [
    ...(good === null ? [] : goodInks(on(good.from), on(good.to), options.length)),
    path(
      [
        [0, 0],
        [options.length, 0],
      ],
      'outline',
    ),
    ...markInks(strip, options),
    ...(options.hideGood ? [] : strip.expected.map((each) => pointer(on(each)))),
    ...dotInks(strip.dots, on, options.length),
    ...(strip.ends ? endInks(options.length) : []),
    words([options.length + 2.5, 1], unitWords(language, strip.graduations.unit), {
      anchor: 'start',
      bold: true,
    }),
  ];
  return svgSheet(together(inks.filter((ink) => ink.svg !== '' || ink.letters !== undefined)), 1, {
    name: options.name,
    title: sentence(language, 'strip.title', { unit: unitWords(language, strip.graduations.unit) }),
    description: describe(strip, options),
  });
}

/** Hatched band between two upright ends, cut where the strip ends. */
function goodInks(from: number, to: number, length: number): readonly Ink[] {
  const [left, right] = [Math.max(0, from), Math.min(length, Math.max(to, from + 0.6))];
  return [
    hatching(
      [
        [left, -BAND],
        [right, -BAND],
        [right, 0],
        [left, 0],
      ],
      1.1,
    ),
    path(
      [
        [left, 0],
        [left, -BAND],
        [right, -BAND],
        [right, 0],
      ],
      'cord',
    ),
  ];
}

function markInks(strip: Strip, options: StripOptions): readonly Ink[] {
  const { decimal } = languagePack(options.language);
  return stripMarks(strip, options.length).flatMap(({ at, si, rank }) => {
    const long = rank === 'numbered' ? 3.4 : rank === 'middle' ? 2.5 : 1.6;
    const line = path(
      [
        [at, 0],
        [at, long],
      ],
      rank === 'numbered' ? 'cord' : 'thin',
    );
    if (rank !== 'numbered') return [line];
    const plain = trimmed(markText(strip.graduations, si, decimal));
    return [line, words([at, long + 2.9], plain, { size: 'small' })];
  });
}

/** A wedge that points at the expected reading from above, through the hatching. */
const pointer = (at: number): Ink =>
  together([
    path(
      [
        [at, 0],
        [at, -BAND - 0.4],
      ],
      'accent',
    ),
    path(
      [
        [at, -BAND - 0.2],
        [at - 1.4, -BAND - 2.6],
        [at + 1.4, -BAND - 2.6],
      ],
      'accent',
      true,
      'paper',
    ),
  ]);

/** Beyond these two bars the instrument says nothing. */
const endInks = (length: number): readonly Ink[] =>
  [0, length].map((x) =>
    path(
      [
        [x, -2.2],
        [x, 3.4],
      ],
      'outline',
    ),
  );

function describe(strip: Strip, { language, hideGood }: StripOptions): string {
  const { decimal } = languagePack(language);
  const { graduations } = strip;
  const unit = unitWords(language, graduations.unit);
  const mark = (si: number): string => markText(graduations, nearestGraduation(graduations, si), decimal);
  const good = hideGood ? null : strip.good;
  return [
    sentence(language, 'strip.desc.range', {
      from: mark(strip.from),
      to: mark(strip.to),
      step: mark(graduations.step),
      unit,
    }),
    ...(good === null
      ? []
      : [sentence(language, 'strip.desc.good', { from: mark(good.from), to: mark(good.to), unit })]),
    ...(hideGood
      ? []
      : strip.expected.map((each) =>
          sentence(language, 'strip.desc.expected', { expected: mark(each), unit }),
        )),
    ...strip.dots.map((dot) =>
      sentence(language, dot.label === '' ? 'strip.desc.dot.unnamed' : 'strip.desc.dot', {
        label: dot.label,
        reading: mark(dot.si),
        unit,
      }),
    ),
  ].join(' ');
}

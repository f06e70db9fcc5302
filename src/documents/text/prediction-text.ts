import { isNotDefined, type NotDefined } from '../../core/description/not-defined.ts';
import type { Graduations } from '../../core/instruments/graduations.ts';
import { decimalText, significant } from '../../core/quantities/print-quantity.ts';
import type { GoodRange, Prediction, Textbook } from '../../core/setups/prediction.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { gramMarks, markText, newtonMarks, otherDecimals, readingText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { unknownName } from '../sentences/unknown-name.ts';

/** Marks for a prediction whose instrument isn't known: tenths of a newton, quarter turns, millimetres. */
const PLAIN_MARKS: Readonly<Record<Prediction['watched'], Graduations>> = {
  pull: { step: 0.1, unit: 'N', unitSi: 1 },
  turns: { step: 0.25, unit: 'turns', unitSi: 1 },
  travel: { step: 0.001, unit: 'mm', unitSi: 0.001 },
  ease: { step: 1, unit: '', unitSi: 1 },
};

export const marksOf = (prediction: Prediction): Graduations =>
  prediction.graduations ?? PLAIN_MARKS[prediction.watched];

/** A figure in the marks of the instrument, to a tenth of one. */
export function fineFigureIn(language: Language, prediction: Prediction): (si: number) => string {
  const { decimal } = languagePack(language);
  const marks = marksOf(prediction);
  const step = marks.step / marks.unitSi;
  const decimals = Math.min(6, Math.max(0, Math.ceil(1 - Math.log10(step) - 1e-9)));
  return (si) => `${decimalText(si / marks.unitSi, decimals, decimal)} ${unitWords(language, marks.unit)}`;
}

/** The range that a group's reading is held against; `null` where there is no number to hold. */
export const goodRangeOf = ({ outcome }: Prediction): GoodRange | null =>
  'good' in outcome ? outcome.good : null;

/** What the instrument is expected to show, in its own graduations, without the unit; `null` where that is no number. */
export function expectedText(language: Language, prediction: Prediction): string | null {
  const { decimal } = languagePack(language);
  const marks = marksOf(prediction);
  const { outcome } = prediction;
  switch (outcome.kind) {
    case 'reading':
      return readingText(marks, outcome.expected, outcome.u, decimal);
    case 'band': {
      // A band narrower than the marks is one figure.
      const [lower, upper] = [outcome.lower, outcome.upper].map((end) =>
        readingText(marks, end, outcome.u, decimal),
      );
      return lower === upper ? `${lower}` : `${lower}–${upper}`;
    }
    case 'moves under the scale':
      return readingText(marks, outcome.shows, outcome.u, decimal);
    default:
      return null;
  }
}

/** The good range "from - to" in the instrument's own graduations, with its unit. */
export function rangeText(language: Language, prediction: Prediction, good: GoodRange): string {
  const marks = marksOf(prediction);
  return `${rangeEnds(language, marks, good)} ${unitWords(language, marks.unit)}`;
}

const rangeEnds = (language: Language, marks: Graduations, good: GoodRange): string => {
  const { decimal } = languagePack(language);
  return sentence(language, 'range.from-to', {
    from: markText(marks, good.from, decimal),
    to: markText(marks, good.to, decimal),
  });
};

/**
 * The good range in newtons and in grams, side by side, as fine as the instrument's own marks allow.
 * `null` where no pull is read.
 */
export function bothUnits(
  language: Language,
  prediction: Prediction,
  good: GoodRange,
): { readonly newtons: string; readonly grams: string } | null {
  if (prediction.watched !== 'pull') return null;
  const { decimal } = languagePack(language);
  const marks = marksOf(prediction);
  const inUnit = (other: Graduations): string => {
    if (other.unit === marks.unit) return rangeEnds(language, marks, good);
    const decimals = otherDecimals(marks, other);
    return sentence(language, 'range.from-to', {
      from: decimalText(good.from / other.unitSi, decimals, decimal),
      to: decimalText(good.to / other.unitSi, decimals, decimal),
    });
  };
  return { newtons: `${inUnit(newtonMarks)} N`, grams: `${inUnit(gramMarks)} g` };
}

/** The outcome as one sentence, whatever its kind. */
export function outcomeText(language: Language, prediction: Prediction): string {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const marks = marksOf(prediction);
  const { decimal } = languagePack(language);
  const unit = unitWords(language, marks.unit);
  const shown = (si: number) => `${readingText(marks, si, marks.step, decimal)} ${unit}`;
  const { outcome } = prediction;
  const expected = expectedText(language, prediction) ?? '';
  switch (outcome.kind) {
    case 'reading':
    case 'band':
      return `${say('key.expected-is', { value: `${expected} ${unit}` })}; ${say('key.good').toLowerCase()} ${rangeText(language, prediction, outcome.good)}${outcome.cutAtOwnWeight ? `. ${say('found.cut-at-own-weight')}` : ''}`;
    case 'on its stop':
      return say('found.on its stop.long', {
        // A hair below the stop must not print as the stop itself.
        shows: `${trimmed(significant(outcome.wouldShow / marks.unitSi, 2, decimal))} ${unit}`,
        stop: `${markText(marks, outcome.stop, decimal)} ${unit}`,
      });
    case 'off the scale':
      return `${say('found.off the scale.long', {
        shows: shown(outcome.wouldShow),
        range: `${markText(marks, outcome.range, decimal)} ${unit}`,
      })}${outcome.overloads ? ` ${say('found.off the scale.harms')}` : ''}`;
    case 'moves under the scale':
      return say('found.moves under the scale.long', {
        needed: { si: outcome.needed, dimension: 'force' },
        weight: { si: outcome.ownWeight, dimension: 'force' },
        shows: `${expected} ${unit}`,
        from: markText(marks, outcome.good.from, decimal),
        to: `${markText(marks, outcome.good.to, decimal)} ${unit}`,
      });
    case 'scale on the other side':
      return say('found.scale on the other side.long', {
        force: { si: outcome.force, dimension: 'force' },
      });
    case 'ease':
      return say('found.ease', { order: outcome.order, of: outcome.of });
    case 'not-defined':
      return notDefinedText(language, outcome);
  }
}

/** The outcome in a word or two, for the narrow column of a table. */
export function outcomeShort(language: Language, prediction: Prediction): string {
  const { outcome } = prediction;
  switch (outcome.kind) {
    case 'reading':
    case 'band':
      return rangeText(language, prediction, outcome.good);
    case 'ease':
      return sentence(language, 'found.ease.short', { order: outcome.order, of: outcome.of });
    case 'not-defined':
      return sentence(language, 'found.not-defined.short');
    default:
      return sentence(language, `found.${outcome.kind}`);
  }
}

/** "Not defined here, because ...". */
export const notDefinedText = (language: Language, value: NotDefined): string =>
  sentence(language, 'found.not-defined', {
    because: hasSentence(language, value.because)
      ? sentence(language, value.because, value.facts)
      : sentence(language, 'not-defined.reason.unknown'),
  });

/** The schoolbook's figure as a sentence. */
export function textbookText(
  language: Language,
  textbook: Textbook | NotDefined,
  marks?: Graduations | null,
): string {
  if (isNotDefined(textbook))
    return sentence(language, 'key.textbook-undefined', {
      because: sentence(language, textbook.because, textbook.facts),
    });
  return sentence(language, 'key.textbook-is', { value: textbookValue(language, textbook, marks) });
}

/** The schoolbook's figure to three digits, with its unit; a pull in newtons and in grams. */
export function textbookValue(language: Language, textbook: Textbook, marks?: Graduations | null): string {
  const { newtons, grams } = textbookInBoth(language, textbook, marks);
  return grams === null ? newtons : `${newtons} (${grams})`;
}

/**
 * The same in two parts, for two lines of a column; turns and lengths have no grams. A length is told in
 * the unit of its ruler, where one is known.
 */
export function textbookInBoth(
  language: Language,
  { value, unit }: Textbook,
  marks?: Graduations | null,
): { readonly newtons: string; readonly grams: string | null } {
  const { decimal } = languagePack(language);
  const digits = (number: number) => significant(number, 3, decimal);
  switch (unit) {
    case 'N':
      return { newtons: `${digits(value)} N`, grams: `${trimmed(digits(value / gramMarks.unitSi))} g` };
    case 'turns':
      return { newtons: `${digits(value)} ${unitWords(language, unit)}`, grams: null };
    case 'm':
      return {
        newtons: `${trimmed(digits(value / (marks?.unitSi ?? 0.001)))} ${unitWords(language, marks?.unit ?? 'mm')}`,
        grams: null,
      };
  }
}

/** The schoolbook's figure in the unit of the instrument that is read, so that both can be set side by side. */
export function textbookOnScale(language: Language, textbook: Textbook, marks: Graduations): string {
  if (textbook.unit !== 'N' || marks.unit === 'N') return textbookValue(language, textbook, marks);
  const { decimal } = languagePack(language);
  return `${trimmed(significant(textbook.value / marks.unitSi, 3, decimal))} ${unitWords(language, marks.unit)}`;
}

/** The one measurement that would narrow the range most. Empty where there is none. */
export function narrowingText(language: Language, prediction: Prediction): string {
  const { narrows } = prediction;
  if (narrows === null) return '';
  const marks = marksOf(prediction);
  const { decimal } = languagePack(language);
  const what = unknownName(language, narrows.unknown);
  const shrinks = narrows.before.to - narrows.before.from - (narrows.after.to - narrows.after.from);
  if (shrinks < marks.step / 2) return sentence(language, 'narrows.little', { what });
  return sentence(language, 'narrows.advice', {
    what,
    from: markText(marks, narrows.before.from, decimal),
    to: markText(marks, narrows.before.to, decimal),
    closerFrom: markText(marks, narrows.after.from, decimal),
    closerTo: `${markText(marks, narrows.after.to, decimal)} ${unitWords(language, marks.unit)}`,
  });
}

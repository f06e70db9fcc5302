import type { FileNote } from '../../core/files/readings-file.ts';
import { significant } from '../../core/quantities/print-quantity.ts';
import type { Meaning, Told } from '../../core/readings/written-reading.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';

/** Digits that nobody writes on a scale: more are the last bits of a sum. */
const DIGITS = 6;

/** What had to be decided to read a cell, a sentence each: several readings, a doubt, two meanings. */
export function writtenRemarks(language: Language, meaning: Meaning): readonly string[] {
  if (meaning.kind !== 'number') return [];
  const { number, halfWidth, repeats, hedged, told = [] } = meaning;
  const middle = numberText(language, number);
  return [
    ...(repeats === undefined
      ? []
      : [sentence(language, 'review.repeats', { count: repeats.length, middle })]),
    ...(halfWidth === undefined
      ? []
      : [sentence(language, 'review.range', { middle, half: numberText(language, halfWidth) })]),
    ...(hedged === true ? [sentence(language, 'review.hedged')] : []),
    ...told.map((each) => toldText(language, each)),
  ];
}

/** The figures of two meanings carry the decimal mark of the language; words stand as they were written. */
function toldText(language: Language, { key, facts }: Told): string {
  if (key !== 'reading.two-meanings') return sentence(language, key, facts);
  const figure = (name: string): string => numberText(language, Number(facts[name]));
  return sentence(language, key, { used: figure('used'), otherwise: figure('otherwise') });
}

const numberText = (language: Language, number: number): string =>
  trimmed(
    significant(number, Math.abs(number) >= 10 ** DIGITS ? 12 : DIGITS, languagePack(language).decimal),
  );

/** A note about the file, with the line it is about. */
export const noteText = (language: Language, { line, key, facts }: FileNote): string =>
  line === null
    ? sentence(language, key, facts)
    : `${sentence(language, 'review.line', { line })}: ${sentence(language, key, facts)}`;

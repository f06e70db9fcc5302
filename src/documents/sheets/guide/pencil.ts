import { isNotDefined } from '../../../core/description/not-defined.ts';
import { decimalText, significant } from '../../../core/quantities/print-quantity.ts';
import { STANDARD_GRAVITY } from '../../../core/sources/gravity.ts';
import type { SetupSheet } from '../../pages/sheet.ts';
import { trimmed } from '../../printing/quantity-text.ts';
import { unitLabel } from '../../printing/reading-text.ts';
import { shiftText } from '../../printing/shift-text.ts';
import { type Language, languagePack } from '../../sentences/language.ts';
import { expectedText, marksOf } from '../../text/prediction-text.ts';
import type { PaperJob } from '../paper-job.ts';
import { expectedOf, timesText } from './figures.ts';

/**
 * A figure as it is printed, and the number that those digits are: whatever follows from it is reckoned
 * from the digits, so that a teacher with a pencil gets the same.
 */
export interface Printed {
  readonly text: string;
  readonly value: number;
}

/** The pull of a setup as a class gets it: what the scale shows, and its own shift where that counts. */
export interface PencilPull {
  readonly shown: Printed;
  /** To be added to what is shown (negative: taken off); `null` where the scale shows the pull itself. */
  readonly shift: Printed | null;
  readonly pull: Printed;
  /** The scale's own unit, as its label has it, and one of it in newtons. */
  readonly unit: string;
  readonly unitSi: number;
  /** The printed pull in newtons. */
  readonly newtons: Printed;
}

/** How many times easier: load over pull, both in the scale's unit and as printed. */
export interface PencilTimes extends PencilPull {
  readonly load: Printed;
  readonly actual: Printed;
}

/** The digits of a text as a number, whatever its decimal mark. */
export const printed = (text: string): Printed => ({ text, value: Number(text.replace(',', '.')) });

/** To three digits, without zeros that say nothing: as values of the kit are printed everywhere. */
export const threeDigits = (language: Language, value: number): Printed =>
  printed(trimmed(significant(value, 3, languagePack(language).decimal)));

/** Newtons of a kilogram at the place of the visit, as guide and charts print it. */
export const gravityText = ({ prepared }: PaperJob, language: Language): string =>
  threeDigits(language, prepared.gravity?.gravity.value ?? STANDARD_GRAVITY).text;

/** What a class has of a setup that is read as one number or as a band (its middle); `null` where it has none. */
export function pencilPull(language: Language, setup: SetupSheet): PencilPull | null {
  const { prediction } = setup;
  const middle = expectedOf(prediction);
  if (prediction.watched !== 'pull' || middle === null || prediction.outcome.kind !== 'reading') return null;
  const shown = printed(expectedText(language, prediction) ?? '');
  const { unit, unitSi } = marksOf(prediction);
  const shift = shiftOf(language, setup);
  const pull = shift === null ? shown : sumOf(language, shown, shift);
  const newtons = unit === 'N' ? pull : threeDigits(language, pull.value * unitSi);
  return { shown, shift, pull, unit: unitLabel(unit), unitSi, newtons };
}

/** What the scale shows less than the pull, in its own unit; `null` below half a graduation, where nobody sees it. */
export function shiftOf(language: Language, { prediction, scale }: SetupSheet): Printed | null {
  const marks = marksOf(prediction);
  const less = scale === null || scale.zeroed === 'in place' ? 0 : scale.showsLess;
  if (Math.abs(less) < marks.step / 2) return null;
  return printed(`${less < 0 ? '-' : ''}${shiftText(language, less, marks)}`);
}

/** Load over pull; `null` where no load is raised or no number is read. */
export function pencilTimes(language: Language, setup: SetupSheet): PencilTimes | null {
  const pull = pencilPull(language, setup);
  const against = loadOf(setup);
  if (pull === null || against === null || pull.pull.value <= 0) return null;
  const load = threeDigits(language, against / pull.unitSi);
  return { ...pull, load, actual: printed(timesText(language, load.value / pull.pull.value)) };
}

/** The force that the job is done against, newtons: the load, or the side force of a wedge. */
export function loadOf({ prediction: { textbook, idealAdvantage } }: SetupSheet): number | null {
  if (isNotDefined(textbook) || isNotDefined(idealAdvantage) || textbook.unit !== 'N') return null;
  return textbook.value * idealAdvantage > 0 ? textbook.value * idealAdvantage : null;
}

/** A sum of two printed figures, with the digits of the finer one. */
function sumOf(language: Language, one: Printed, other: Printed): Printed {
  const decimals = Math.max(decimalsOf(one), decimalsOf(other));
  return printed(decimalText(one.value + other.value, decimals, languagePack(language).decimal));
}

const decimalsOf = ({ text }: Printed): number => /[.,](\d+)$/.exec(text)?.[1]?.length ?? 0;

import { isNotDefined, type NotDefined } from '../../../core/description/not-defined.ts';
import { significant } from '../../../core/quantities/print-quantity.ts';
import type { Prediction } from '../../../core/setups/prediction.ts';
import type { SetupSheet, TableSheet } from '../../pages/sheet.ts';
import { trimmed } from '../../printing/quantity-text.ts';
import { type Language, languagePack } from '../../sentences/language.ts';
import { unitWords } from '../../sentences/unit-words.ts';
import { expectedText, marksOf } from '../../text/prediction-text.ts';

/** What the instrument is expected to show, with its unit; `null` where that is no number. */
export function expectedWithUnit(language: Language, prediction: Prediction): string | null {
  const text = expectedText(language, prediction);
  return text === null ? null : `${text} ${unitWords(language, marksOf(prediction).unit)}`;
}

/** The figure in the middle of what is expected, SI; `null` where that is no number. */
export function expectedOf({ outcome }: Prediction): number | null {
  switch (outcome.kind) {
    case 'reading':
      return outcome.expected;
    case 'band':
      return (outcome.lower + outcome.upper) / 2;
    default:
      return null;
  }
}

/** How many times: two digits are as many as a class can use. */
export const timesText = (language: Language, ratio: number): string =>
  trimmed(significant(ratio, 2, languagePack(language).decimal));

/** A figure that may be not defined, as `null` there. */
export const definedOr = (value: number | NotDefined): number | null => (isNotDefined(value) ? null : value);

/** Setups with their table, in the order of the tables. */
export const setupsWithTable = (
  tables: readonly TableSheet[],
): readonly { readonly table: TableSheet; readonly setup: SetupSheet }[] =>
  tables.flatMap((table) => table.setups.map((setup) => ({ table, setup })));

/** What is nothing to talk about comes last: a setup with findings, where a number says less. */
export const plainFirst = (a: SetupSheet, b: SetupSheet): number =>
  Number(a.prediction.diagnostics.length > 0) - Number(b.prediction.diagnostics.length > 0);

/** Setups that are pulled and read as one number, moving up. */
export const raised = (setups: readonly SetupSheet[]): readonly SetupSheet[] =>
  setups.filter(
    ({ prediction }) =>
      prediction.watched === 'pull' && prediction.way === 'raise' && prediction.outcome.kind === 'reading',
  );

import { isNotDefined } from '../../core/description/not-defined.ts';
import { decimalText, significant } from '../../core/quantities/print-quantity.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import { trimmed } from '../printing/quantity-text.ts';
import {
  gramMarks,
  newtonMarks,
  otherDecimals,
  readingText,
  stepDecimals,
} from '../printing/reading-text.ts';
import { expectedText, goodRangeOf, marksOf } from './prediction-text.ts';

/** Headings of the columns: the same whatever the tables hold, so that a sheet can be built on them. */
const COLUMNS = [
  'table',
  'setup',
  'machine',
  'watched',
  'way',
  'outcome',
  'expected',
  'lower',
  'upper',
  'from',
  'to',
  'unit',
  'from N',
  'to N',
  'from gf',
  'to gf',
  'textbook',
  'textbook unit',
  'assumed',
] as const;

/**
 * The answer key as comma-separated values (RFC 4180), one row a setup. Numbers carry a decimal
 * point whatever the language; a cell is empty where there is no such number.
 */
export const keyCsv = (predictions: readonly Prediction[]): string =>
  [COLUMNS, ...predictions.map(rowOf)].map((row) => `${row.map(cell).join(',')}\r\n`).join('');

function rowOf(prediction: Prediction): readonly string[] {
  const marks = marksOf(prediction);
  const good = goodRangeOf(prediction);
  const isPull = prediction.watched === 'pull';
  const inMarks = (si: number | undefined, other: typeof marks): string => {
    if (si === undefined || (other !== marks && !isPull)) return '';
    const decimals =
      other === marks || other.unit === marks.unit ? stepDecimals(marks) : otherDecimals(marks, other);
    return decimalText(si / other.unitSi, decimals);
  };
  const { textbook } = prediction;
  return [
    prediction.table,
    prediction.setup,
    prediction.machine,
    prediction.watched,
    prediction.way,
    prediction.outcome.kind,
    prediction.outcome.kind === 'band' ? '' : (expectedText('en', prediction) ?? ''),
    ...limits(prediction),
    inMarks(good?.from, marks),
    inMarks(good?.to, marks),
    marks.unit,
    inMarks(good?.from, newtonMarks),
    inMarks(good?.to, newtonMarks),
    inMarks(good?.from, gramMarks),
    inMarks(good?.to, gramMarks),
    isNotDefined(textbook) ? '' : trimmed(significant(textbook.value, 4)),
    isNotDefined(textbook) ? '' : textbook.unit,
    String(prediction.assumed.length),
  ];
}

/** Held still there is no one expected reading, but two limits. */
const limits = (prediction: Prediction): readonly string[] => {
  const { outcome } = prediction;
  if (outcome.kind !== 'band') return ['', ''];
  const marks = marksOf(prediction);
  return [readingText(marks, outcome.lower, outcome.u), readingText(marks, outcome.upper, outcome.u)];
};

/** A cell in quotes where it needs them. */
const cell = (text: string): string => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

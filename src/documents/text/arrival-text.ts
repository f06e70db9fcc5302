import type { TableSheet } from '../pages/sheet.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { marksOf } from './prediction-text.ts';

/** The bench and arrival readings that the figures of a table follow, in words; `null` where there are none. */
export function arrivalText(language: Language, table: TableSheet): string | null {
  const told = [benchText(language, table), arrivedText(language, table)].filter((each) => each !== null);
  return told.length === 0 ? null : told.join(' ');
}

function benchText(language: Language, table: TableSheet): string | null {
  const since = table.setups.find(({ prediction }) => prediction.benchSince !== undefined)?.prediction;
  return since?.benchSince === undefined
    ? null
    : sentence(language, 'bench.since', { since: since.benchSince });
}

function arrivedText(language: Language, table: TableSheet): string | null {
  for (const { mark, prediction } of table.setups) {
    const { rekeyedBy } = prediction;
    if (rekeyedBy === null || rekeyedBy.setup !== mark) continue;
    const marks = marksOf(prediction);
    const reading = `${markText(marks, rekeyedBy.reading, languagePack(language).decimal)} ${unitWords(language, marks.unit)}`;
    return sentence(language, 'arrival.followed', { setup: mark, reading });
  }
  return null;
}

import type { TableSheet } from '../pages/sheet.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { marksOf } from './prediction-text.ts';

/** The arrival reading that the figures of a table follow, as one sentence; `null` where there is none. */
export function arrivalText(language: Language, table: TableSheet): string | null {
  for (const { mark, prediction } of table.setups) {
    const { rekeyedBy } = prediction;
    if (rekeyedBy === null || rekeyedBy.setup !== mark) continue;
    const marks = marksOf(prediction);
    const reading = `${markText(marks, rekeyedBy.reading, languagePack(language).decimal)} ${unitWords(language, marks.unit)}`;
    return sentence(language, 'arrival.followed', { setup: mark, reading });
  }
  return null;
}

import { ownWordsIn, titleIn } from '../../core/files/titles.ts';
import type { Language } from '../sentences/language.ts';
import type { Sheet, TableSheet } from './sheet.ts';

/** The same preparation with the titles and words that its activity has in this language. */
export const sheetIn = (language: Language, sheet: Sheet): Sheet => ({
  ...sheet,
  activity: titleIn(language, sheet.activityTitled),
  tables: sheet.tables.map((table) => tableIn(language, table)),
});

/** One table with its title and words in this language. */
export const tableIn = (language: Language, table: TableSheet): TableSheet => ({
  ...table,
  title: titleIn(language, table.titled),
  setups: table.setups.map((setup) => ({ ...setup, shows: ownWordsIn(language, setup.showsWords) })),
});

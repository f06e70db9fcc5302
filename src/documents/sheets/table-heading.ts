import { titleIn } from '../../core/files/titles.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import type { Language } from '../sentences/language.ts';
import { sayIn } from './say.ts';

/** A table's mark and the title that it bears in the language of the sheet: the same on every sheet. */
export const tableHeading = (
  language: Language,
  table: Pick<PreparedTable, 'mark' | 'title' | 'titles'>,
): string => sayIn(language)('key.text.table', { mark: table.mark, title: titleIn(language, table) });

import type { Prepared } from '../../core/prepare.ts';
import { rehearse } from '../../core/rehearse.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { rehearsalOnPaper, usualRehearsal } from '../../documents/sheets/rehearsal-sheet.ts';
import { sheetsOf, usualWishes } from '../../documents/sheets/sheets-of.ts';
import type { AskedStudy } from './study-wire.ts';

/** The sheets of paper that were asked for, as they are set; none where what was asked for is no sheet. */
export function studySheets({ language, of }: AskedStudy, prepared: Prepared): readonly SheetOfPaper[] {
  switch (of.kind) {
    case 'timetable':
      return sheetsNamed(prepared, language, 'rotation');
    case 'sheets':
      return sheetsNamed(prepared, language, of.name);
    case 'rehearsal': {
      const rehearsal = rehearse(prepared, { ...usualRehearsal(prepared), ...of.asked });
      const job = {
        prepared,
        sheet: sheetIn(language, sheetOf(prepared)),
        paper: usualWishes(prepared).paper,
        period: null,
        languages: { cards: language, key: language },
      };
      return [rehearsalOnPaper(job, rehearsal)];
    }
    case 'advice':
    case 'next':
      return [];
  }
}

/** What pupils read is in the language that the visit says; the rest is in that of the page. */
const sheetsNamed = (
  prepared: Prepared,
  language: AskedStudy['language'],
  name: string,
): readonly SheetOfPaper[] => sheetsOf(prepared, { ...usualWishes(prepared), key: language, only: [name] });

import { type Language, languagePack } from '../sentences/language.ts';
import type { Paper, SheetOfPaper } from './block.ts';
import type { PaperJob } from './paper-job.ts';

/**
 * A sheet that is laminated once. Its foot names the kit with its serial and nothing else, so that the
 * next school can use it too.
 */
export const kitSheet = (
  job: PaperJob,
  language: Language,
  own: Pick<SheetOfPaper, 'name' | 'title' | 'blocks'> &
    Partial<Pick<SheetOfPaper, 'isLandscape' | 'size' | 'mostSides'>>,
): SheetOfPaper => ({
  language: languagePack(language).tag,
  paper: job.paper,
  size: 'usual',
  foot: job.sheet.kit,
  ...own,
});

/** Width between the margins of the template, in millimetres. */
const WIDTHS: Readonly<Record<Paper, number>> = { a4: 182, 'us-letter': 187.9 };

/** Room across an upright page. */
export const paperWidth = (paper: Paper): number => WIDTHS[paper];

import type { TableSheet } from '../pages/sheet.ts';
import { tableIn } from '../pages/sheet-in.ts';
import { machineName } from '../text/explain-text.ts';
import type { Block, SheetOfPaper } from './block.ts';
import { drawingFigure, heightOf, unmeasured } from './drawing-figure.ts';
import { fileWords } from './file-words.ts';
import { kitSheet } from './kit-sheet.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { sayIn } from './say.ts';

/** Room for the machine before it is made larger, millimetres: lettering grows with it, and so do signs. */
const ROOM = { width: 116, height: 46 };
/** Room on a sheet that lies on its side, below two lines of the name. */
const BELOW = { width: 250, height: 86 };

/** A sign for each table: its number and name are read from the back of the room. */
export const tableSigns: SheetKind = {
  name: 'signs',
  of: 'kit',
  build: (job) => {
    const words = fileWords(job.sheet.tables.map(({ mark }) => mark));
    return job.sheet.tables.map((table, n) =>
      tableSign(job, tableIn(job.languages.cards, table), `sign-${words[n]}`),
    );
  },
};

function tableSign(job: PaperJob, table: TableSheet, name: string): SheetOfPaper {
  const language = job.languages.cards;
  const say = sayIn(language);
  const machine = machineName(language, table.machine);
  return kitSheet(job, language, {
    name,
    title: `${say('page.table', { mark: table.mark })}: ${table.title}`,
    size: 'sign',
    isLandscape: true,
    blocks: [
      { block: 'sign', word: say('sheet.table'), mark: table.mark, text: table.title, about: machine },
      ...picture(job, table, machine),
    ],
  });
}

/** The machine at work under a bare hand, without lengths; of several pictures the first shows which table it is. */
function picture(job: PaperJob, table: TableSheet, what: string): readonly Block[] {
  const [setup] = table.setups;
  const [figure] = setup?.figures ?? [];
  if (setup === undefined || figure === undefined) return [];
  const { load } = setup;
  const drawing = unmeasured(figure.drawing);
  const language = job.languages.cards;
  const drawn = drawingFigure(language, { what, drawing, load, scale: null, ...ROOM, isUnscaled: true });
  const larger = Math.min(BELOW.width / drawn.width, BELOW.height / heightOf(drawn.svg));
  return [{ ...drawn, width: drawn.width * larger, isCentred: true }];
}

import { advise } from '../../core/advise.ts';
import { measureNextAtTables } from '../../core/bench.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { rehearse } from '../../core/rehearse.ts';
import { COPIES, USUALLY_WANTED } from '../../core/setups/chance-to-see.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { onScreen } from '../../documents/sheets/on-screen.ts';
import { rehearsalOnPaper, usualRehearsal } from '../../documents/sheets/rehearsal-sheet.ts';
import { sheetsOf, usualWishes } from '../../documents/sheets/sheets-of.ts';
import { adviceAbout, adviceNotSearched, adviceOutlines } from '../../documents/text/advice-text.ts';
import { findingsText } from '../../documents/text/findings-text.ts';
import { nextAbout, nextOutlines } from '../../documents/text/next-text.ts';
import type { AnsweredStudy, AskedStudy, Studied } from './study-wire.ts';
import { withOffer } from './use-offer.ts';

const NOTHING: Studied = { about: [], outlines: [], sheets: [], remarks: [] };
/** Where nobody asks for another one. */
const SEED = 1;

/** From the files to what was asked for; what takes a while is told table by table. */
export function studyBench(asked: AskedStudy, tell: (answer: AnsweredStudy) => void): void {
  const { language, texts } = asked;
  const prepared = prepare({ ...texts });
  const faults = findingsText(language, prepared.sources, prepared.diagnostics.filter(isError));
  const done = (found: Partial<Studied>): void =>
    tell({ answer: 'done', found: { ...NOTHING, remarks: faults, ...found } });
  if (prepared.tables.length === 0) done({});
  else if (asked.of.kind === 'advice') done(adviceFound(asked, prepared, asked.of.table, tell));
  else done(foundIn(asked, prepared));
}

function foundIn({ language, of }: AskedStudy, prepared: Prepared): Partial<Studied> {
  switch (of.kind) {
    case 'timetable':
      return { sheets: sheetsNamed(prepared, language, 'rotation') };
    case 'sheets':
      return { sheets: sheetsNamed(prepared, language, of.name) };
    case 'next':
      return {
        about: [nextAbout(language)],
        outlines: nextOutlines(language, prepared, measureNextAtTables(prepared)),
      };
    case 'rehearsal': {
      const rehearsal = rehearse(prepared, { ...usualRehearsal(prepared), ...of.asked });
      const job = {
        prepared,
        sheet: sheetIn(language, sheetOf(prepared)),
        paper: usualWishes(prepared).paper,
        period: null,
        languages: { cards: language, key: language },
      };
      return { sheets: [onScreen(rehearsalOnPaper(job, rehearsal))] };
    }
    case 'advice':
      return {};
  }
}

/** What pupils read is in the language that the visit says; the rest is in that of the page. */
const sheetsNamed = (prepared: Prepared, language: AskedStudy['language'], name: string): Studied['sheets'] =>
  sheetsOf(prepared, { ...usualWishes(prepared), key: language, only: [name] }).map(onScreen);

function adviceFound(
  { language, texts }: AskedStudy,
  prepared: Prepared,
  table: string | null,
  tell: (answer: AnsweredStudy) => void,
): Partial<Studied> {
  const head = { wanted: USUALLY_WANTED, seed: SEED, copies: COPIES };
  const about = [adviceAbout(language, head)];
  const marks = prepared.tables.map(({ mark }) => mark).filter((mark) => table === null || mark === table);
  const outlines: Studied['outlines'][number][] = [];
  for (const [n, mark] of marks.entries()) {
    if (marks.length > 1)
      tell({ answer: 'so far', done: n, all: marks.length, found: { ...NOTHING, about, outlines } });
    const advice = advise(prepared, { wanted: head.wanted, seed: head.seed, tables: [mark] });
    for (const { heading, lines } of adviceOutlines(language, prepared, advice))
      outlines.push({
        heading,
        lines: lines.map(({ offers, ...line }) => ({
          ...line,
          ...(offers === undefined ? {} : { use: withOffer(texts, prepared, offers) }),
        })),
      });
  }
  return { about: [...about, adviceNotSearched(language, COPIES)], outlines };
}

import { advise } from '../../core/advise.ts';
import { measureNextAtTables } from '../../core/bench.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { COPIES, USUALLY_WANTED } from '../../core/setups/chance-to-see.ts';
import { onScreen } from '../../documents/sheets/on-screen.ts';
import { adviceAbout, adviceNotSearched, adviceOutlines } from '../../documents/text/advice-text.ts';
import { findingsText } from '../../documents/text/findings-text.ts';
import { nextAbout, nextOutlines } from '../../documents/text/next-text.ts';
import { studySheets } from './study-sheets.ts';
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

function foundIn(asked: AskedStudy, prepared: Prepared): Partial<Studied> {
  if (asked.of.kind !== 'next') return { sheets: studySheets(asked, prepared).map(onScreen) };
  return {
    about: [nextAbout(asked.language)],
    outlines: nextOutlines(asked.language, prepared, measureNextAtTables(prepared)),
  };
}

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

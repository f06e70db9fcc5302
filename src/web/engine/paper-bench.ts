import { zipSync } from 'fflate';
import { prepare } from '../../core/prepare.ts';
import type { AnsweredPaper, PaperFile } from './paper-wire.ts';
import { studySheets } from './study-sheets.ts';
import type { AskedStudy } from './study-wire.ts';
import type { Typesetter } from './typesetter.ts';

/** From the files to the PDF of each sheet that was asked for; one sheet after the other is told. */
export async function paperBench(
  asked: AskedStudy,
  open: () => Promise<Typesetter>,
  tell: (answer: AnsweredPaper) => void,
): Promise<void> {
  const sheets = studySheets(asked, prepare({ ...asked.texts }));
  tell({ answer: 'so far', done: 0, all: sheets.length });
  const set = await open();
  const files: PaperFile[] = [];
  for (const sheet of sheets) {
    files.push({ name: `${sheet.name}.pdf`, type: 'application/pdf', bytes: set(sheet) });
    tell({ answer: 'so far', done: files.length, all: sheets.length });
  }
  tell({ answer: 'done', files: files.length > 1 ? [together(asked, files), ...files] : files });
}

/** PDF is packed already: the archive only holds the files together. */
function together({ of }: AskedStudy, files: readonly PaperFile[]): PaperFile {
  const name = of.kind === 'sheets' ? of.name : of.kind;
  const entries = Object.fromEntries(files.map((file) => [file.name, file.bytes]));
  return {
    name: `handspike-${name}.zip`,
    type: 'application/zip',
    bytes: new Uint8Array(zipSync(entries, { level: 0 })),
  };
}

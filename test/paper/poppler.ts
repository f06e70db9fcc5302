import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestContext } from 'vitest';
import { notRun } from '../not-run.ts';

/** What an independent reader of PDFs finds in one: poppler's own tools, run as a user would. */
export interface ReadPdf {
  readonly pages: number;
  readonly isTagged: boolean;
  readonly title: string;
  /** Size of the first page as poppler names it: `A4`, `letter`, or its points. */
  readonly size: string;
  readonly fonts: readonly { readonly name: string; readonly isEmbedded: boolean }[];
  /** Text in reading order, page by page. */
  readonly text: readonly string[];
  /** The tree of tags, as poppler prints it. */
  readonly structure: string;
  /** What somebody hears who has the page read out: the words in the order of the tags. */
  readonly said: string;
}

const isThere = (): boolean => spawnSync('pdfinfo', ['-v']).error === undefined;

/** Reads a PDF, or ends the test and says so where poppler is not installed. The tags, which take long, only when asked for. */
export function readPdf(pdf: Uint8Array, context: TestContext): ReadPdf {
  if (!isThere()) notRun('paper', 'poppler is not installed (apt-get install poppler-utils)', context);
  const { info, fonts, text } = inFile(pdf, (file) => ({
    info: run('pdfinfo', [file]),
    fonts: run('pdffonts', [file]),
    text: run('pdftotext', ['-enc', 'UTF-8', file, '-']),
  }));
  const fact = (name: string): string => new RegExp(`^${name}:\\s*(.*)$`, 'm').exec(info)?.[1]?.trim() ?? '';
  let tags: string | null = null;
  const structure = (): string => {
    tags ??= inFile(pdf, (file) => run('pdfinfo', ['-struct-text', file]));
    return tags;
  };
  return {
    pages: Number(fact('Pages')),
    isTagged: fact('Tagged') === 'yes',
    title: fact('Title'),
    size: /\((.*)\)/.exec(fact('Page size'))?.[1] ?? fact('Page size'),
    fonts: fontsIn(fonts),
    text: text.split('\f').slice(0, -1),
    get structure() {
      return structure();
    },
    get said() {
      return saidIn(structure());
    },
  };
}

function inFile<T>(pdf: Uint8Array, use: (file: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'handspike-paper-'));
  try {
    const file = join(folder, 'sheet.pdf');
    writeFileSync(file, pdf);
    return use(file);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function run(command: string, args: readonly string[]): string {
  const done = spawnSync(command, args, { encoding: 'utf8', maxBuffer: 64e6 });
  if (done.status !== 0) throw new Error(`${command}: ${done.stderr}`);
  return done.stdout;
}

/** Words stand in quotes on lines of their own; those of one line end in a space where they go on. */
const saidIn = (structure: string): string =>
  structure
    .split('\n')
    .flatMap((line) => /^\s+"(.*)"$/.exec(line)?.[1] ?? [])
    .map((words) => (words.endsWith(' ') ? words : `${words}\n`))
    .join('');

/** Columns are as wide as the dashes below their names. */
function fontsIn(table: string): ReadPdf['fonts'] {
  const [head = '', dashes = '', ...rows] = table.split('\n');
  const widths = dashes.split(' ').map((each) => each.length);
  const from = head.indexOf('emb');
  return rows
    .filter((row) => row.trim() !== '')
    .map((row) => ({
      name: row.slice(0, widths[0]).trim(),
      isEmbedded: row.slice(from, from + 3) === 'yes',
    }));
}

import { confusedOnBench, scalesOnBench } from '../../core/bench.ts';
import { lineOfSetup, withBenchLine } from '../../core/bench-line.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import type { BenchEntry } from '../../core/files/bench-book-file.ts';
import { isCalendarDate } from '../../core/files/calendar-date.ts';
import { type PreparationFiles, type Prepared, prepare } from '../../core/prepare.ts';
import { setupNamed } from '../../core/review.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { benchJson, benchText } from '../../documents/text/bench-text.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal, UsageFault } from '../command.ts';
import { appendText, preparationFiles } from '../files.ts';
import { hasErrors, tellErrors, tellFindings } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { unknownSetup } from '../unknown-setup.ts';

export const bench: Command = {
  name: 'bench',
  usage: 'bench [VISIT | KIT ACTIVITY] [(--setup SETUP | --what WHAT) --reading READING --by LABEL] [--json]',
  summary: "print what the kit's bench readings tell, or add one to its bench book",
  options: [
    '--setup SETUP      add a line: a reading at this setup',
    '--way WAY          raise, lower or start, where not as the setup is read',
    '--what WHAT        instead of a setup: "amber with W500", "amber turned over", "oar mass"',
    '--reading READING  what was read, with its unit',
    '--by LABEL         who read it: a label, no name; every line needs one',
    '--date DATE        year-month-day (today)',
    '--replaces LINE    the line of the book that this one stands for',
    '--use yes|no       take it in, or leave it out, however well it fits',
    '--note NOTE        anything worth knowing',
    '--json             the readings and what they tell as JSON (SI)',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, {
      setup: 'text',
      way: 'text',
      what: 'text',
      reading: 'text',
      by: 'text',
      date: 'text',
      replaces: 'text',
      use: 'text',
      note: 'text',
      json: 'switch',
      language: 'text',
    });
    const language = languageIn(found, 'language');
    const files = preparationFiles(terminal.folder, found.files);
    const before = prepare(files);
    if (before.tables.length === 0) {
      tellErrors(terminal, before, language);
      return EXIT.findings;
    }
    if (before.bench === null || files.bench === null || files.bench === undefined)
      throw new UsageFault(sentence(language, 'bench.none', { file: files.kit.name }));
    const entry = entryOf(found, before);
    if (entry === null) return print(terminal, before, found, language);
    const after = added(terminal, files, files.bench, entry, language);
    return after === null ? EXIT.findings : print(terminal, after, found, language);
  },
};

function print(terminal: Terminal, prepared: Prepared, found: Arguments, language: Language): number {
  tellErrors(terminal, prepared, language);
  if (prepared.bench === null) return EXIT.findings;
  const confused = confusedOnBench(prepared);
  const scales = scalesOnBench(prepared);
  terminal.print(
    found.isOn('json')
      ? benchJson(prepared.bench, confused, scales)
      : benchText(language, prepared, prepared.bench, confused, scales),
  );
  return hasErrors(prepared) ? EXIT.findings : EXIT.done;
}

const ABOUT_A_LINE = ['way', 'reading', 'by', 'date', 'replaces', 'use', 'note'] as const;

/** The line that the command asks for; `null` where it asks for none. */
function entryOf(found: Arguments, prepared: Prepared): BenchEntry | null {
  const setup = found.text('setup');
  const what = found.text('what');
  const reading = found.text('reading');
  if (setup === null && what === null) {
    const stray = ABOUT_A_LINE.find((name) => found.text(name) !== null);
    if (stray !== undefined) throw new UsageFault(`--${stray} goes with --setup or --what: what was read?`);
    return null;
  }
  if (setup !== null && what !== null) throw new UsageFault('--setup and --what: name one of them');
  if (reading === null) throw new UsageFault('--reading: what was read, with its unit, as "2.2 N"');
  const by = found.text('by')?.trim() ?? '';
  if (by === '')
    throw new UsageFault('--by: who read it? A label, no name, as --by "bench helper": years later it tells');
  const date = found.text('date') ?? today();
  if (!isCalendarDate(date)) throw new UsageFault(`--date ${date} is no day: write it as 2026-04-30`);
  const way = found.text('way');
  if (way !== null && !['raise', 'lower', 'start'].includes(way))
    throw new UsageFault(`--way is raise, lower or start, not "${way}"`);
  return {
    date,
    kit: prepared.kit?.serial ?? '',
    by,
    reading,
    use: found.text('use') ?? '',
    replaces: found.text('replaces') ?? '',
    note: found.text('note') ?? '',
    ...(setup === null ? { what: what ?? '' } : ofSetup(prepared, setup, way)),
  };
}

function ofSetup(prepared: Prepared, mark: string, way: string | null): BenchEntry {
  const at = setupNamed(prepared, mark);
  if (at === null) throw unknownSetup(prepared, mark);
  return lineOfSetup(prepared, at, way);
}

/** Adds the line where it is sound; where not, says why and leaves the book alone. */
function added(
  terminal: Terminal,
  files: PreparationFiles,
  book: NonNullable<PreparationFiles['bench']>,
  entry: BenchEntry,
  language: Language,
): Prepared | null {
  const { line, number, after, found } = withBenchLine(files, book, entry);
  tellFindings(terminal, after.sources, found, language);
  if (found.some(isError)) return null;
  appendText(terminal.folder, book.name, line);
  terminal.tell(sentence(language, 'bench.added', { file: book.name, line: number }));
  return after;
}

function today(): string {
  const now = new Date();
  const two = (n: number): string => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

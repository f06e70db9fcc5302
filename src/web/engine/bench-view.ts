import { trialOnArrival } from '../../core/arrival.ts';
import { confusedOnBench, scalesOnBench } from '../../core/bench.ts';
import {
  type BenchTask,
  benchTasksAt,
  lineInstead,
  withBenchLine,
  withBookNamed,
} from '../../core/bench-line.ts';
import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { isError } from '../../core/diagnostics/diagnostic.ts';
import type { BenchEntry, BenchLine } from '../../core/files/bench-book-file.ts';
import { titleIn } from '../../core/files/titles.ts';
import { trialWithUnit } from '../../core/files/trials-on-arrival.ts';
import { baseName } from '../../core/files/written-under.ts';
import { type Prepared, type PreparedTable, prepare } from '../../core/prepare.ts';
import { READING_EXAMPLE } from '../../core/readings/reading-example.ts';
import { setupNamed } from '../../core/review.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { arrivedTold, checkTold } from '../../documents/text/arrival-check-text.ts';
import { benchRemarks, readingTold, unknownsTold } from '../../documents/text/bench-told.ts';
import { findingSaid } from '../../documents/text/findings-text.ts';
import { keyMoved } from '../../documents/text/key-moved.ts';
import { measurementText } from '../../documents/text/measurement-text.ts';
import { keptBook, serialIn, withBench } from './bench-texts.ts';
import type {
  ArrivalCheckView,
  AskedBench,
  BenchAtSetup,
  BenchFound,
  BenchLineAdded,
  BenchLineView,
  BenchTaskView,
  BenchTold,
  TrialRead,
} from './bench-wire.ts';
import type { Texts } from './prepare-wire.ts';

type Language = AskedBench['language'];

/** What the page asks about readings on the bench and on arrival; by the same functions as the commands. */
export function benchFound({ texts, language, of }: Omit<AskedBench, 'job' | 'number'>): BenchFound | null {
  if (of.kind === 'book') return { found: 'book', texts: withBook(texts, of.text, of.name) };
  const prepared = prepare({ ...texts });
  if (prepared.tables.length === 0) return null;
  switch (of.kind) {
    case 'setup':
      return atSetup(language, prepared, of.setup);
    case 'line':
      return added(language, texts, prepared, of.entry);
    case 'instead': {
      const line = prepared.bench?.lines.find((each) => each.line === of.line);
      if (line === undefined) return null;
      return added(language, texts, prepared, { ...lineInstead(line), ...of.entry });
    }
    case 'arrival':
      return { found: 'arrival', tables: prepared.tables.map((each) => checkAt(language, prepared, each)) };
    case 'trial':
      return trial(language, prepared, of.setup, of.written);
  }
}

function atSetup(language: Language, prepared: Prepared, mark: string): BenchAtSetup | null {
  const at = setupNamed(prepared, mark);
  if (at === null) return null;
  const tasks = benchTasksAt(prepared, mark);
  const whats = new Set([...tasks.map(({ of }) => of.what), `${at.setup.mark} ${at.setup.way}`]);
  const activity = baseName(prepared.activity?.file ?? '');
  const isHere = (line: BenchLine): boolean =>
    whats.has(line.what) && (line.activity === '' || baseName(line.activity) === activity);
  const lines = prepared.bench?.lines ?? [];
  const here = lines.filter(isHere);
  return {
    found: 'setup',
    setup: mark,
    tasks: tasks.map((task) => taskView(language, task)),
    lines: here.map((line) => lineView(language, prepared, line)),
    others: lines.length - here.length,
    told: toldBy(language, prepared),
  };
}

const GROUP = {
  reading: 'setup',
  'turn over': 'scale',
  'hung load': 'scale',
  weigh: 'parts',
  ruler: 'parts',
} as const;

const taskView = (language: Language, { measurement, of, example }: BenchTask): BenchTaskView => ({
  what: of.what ?? '',
  of: GROUP[measurement.kind],
  words: measurementText(language, measurement),
  example,
  entry: of,
});

function lineView(language: Language, { bench }: Prepared, line: BenchLine): BenchLineView {
  const { date, by, what, reading, note, replacedBy } = line;
  const fitted = bench?.fit.readings.find(({ observation }) => observation.name === String(line.line));
  const told = bench === null || fitted === undefined ? null : readingTold(language, bench, fitted);
  const state =
    replacedBy === null
      ? (told?.used ?? sentence(language, 'bench.used.unusable'))
      : sentence(language, 'bench.used.replaced', { line: replacedBy });
  return {
    ...{ line: line.line, date, by, what, reading, note, state },
    expected: replacedBy === null ? (told?.expected ?? null) : null,
    isUsed: fitted?.isUsed === true,
    isReplaced: replacedBy !== null,
    mayBeUsed: fitted?.isUsed === false && fitted.because !== 'no figure',
  };
}

function toldBy(language: Language, prepared: Prepared): BenchTold | null {
  const { bench } = prepared;
  if (bench === null || bench.lines.length === 0) return null;
  const { readings } = bench.fit;
  const count = (key: string, n: number): string => (n === 0 ? '' : sentence(language, key, { count: n }));
  const left = `${count('bench.elsewhere', bench.elsewhere)}${count('bench.unusable.page', bench.unusable)}`;
  const used = readings.filter(({ isUsed }) => isUsed).length;
  return {
    head: sentence(language, 'bench.head', { file: bench.file, used, readings: readings.length, left }),
    unknowns: unknownsTold(language, prepared, bench),
    remarks: benchRemarks(language, prepared, bench, confusedOnBench(prepared), scalesOnBench(prepared)),
  };
}

/** The line added where it is sound; a kit that named no book names one from now on. */
function added(
  language: Language,
  texts: Texts,
  prepared: Prepared,
  entry: BenchEntry,
): BenchLineAdded | null {
  const begun = withBook(texts, keptBook(texts));
  if (begun?.bench === undefined || begun.bench === null) return null;
  const line = { ...entry, kit: prepared.kit?.serial ?? '' };
  const { files, number, before, after, found } = withBenchLine({ ...begun }, begun.bench, line);
  const isSound = !found.some(isError);
  return {
    found: 'line',
    texts: isSound ? withBook(begun, files.bench?.text ?? '') : null,
    added: isSound ? sentence(language, 'bench.added', { file: begun.bench.name, line: number }) : '',
    faults: found.map((each) => findingSaid(language, each)),
    moved: isSound ? keyMoved(language, before, after) : [],
  };
}

/** The texts with another text in the kit's bench book, which is begun where the kit names none. */
function withBook(texts: Texts, text: string, name?: string): Texts | null {
  const named = withBench(texts);
  const kit = named.bench === null ? withBookNamed(texts.kit, name) : texts.kit;
  return kit === null
    ? null
    : withBench({ ...texts, kit, books: { ...texts.books, [serialIn(texts)]: text } });
}

function checkAt(language: Language, { visit }: Prepared, table: PreparedTable): ArrivalCheckView {
  const at = arrivalCheckOf(table.setups);
  const marks = [...table.setups.map(({ setup }) => setup.mark), ...table.notPrepared];
  const entries = visit?.arrival ?? [];
  const entry = entries.find(({ setup }) => marks.includes(setup));
  return {
    table: table.mark,
    title: titleIn(language, table),
    check: checkTold(language, table),
    example: READING_EXAMPLE[at?.setup.watched ?? 'pull'],
    written:
      entry === undefined
        ? null
        : {
            setup: entry.setup,
            reading: entry.written,
            // The last reading takes its heading with it.
            path: entries.length === 1 ? ['arrival'] : ['arrival', entry.setup],
          },
  };
}

function trial(language: Language, prepared: Prepared, mark: string, written: string): TrialRead {
  const found = trialOnArrival(prepared, mark, written);
  const at = setupNamed(prepared, mark);
  return {
    found: 'trial',
    setup: mark,
    written: at === null ? written : trialWithUnit(at, written),
    told: found.kind === 'taken' ? arrivedTold(language, found.table, found.at, found.reading) : null,
  };
}

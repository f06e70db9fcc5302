import { candidatesAt, type Measurement } from './calibration/candidate.ts';
import { lawOfHungLoad } from './calibration/observation.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { addedLine, type BenchEntry, type BenchLine } from './files/bench-book-file.ts';
import { withValue } from './files/edit-text.ts';
import type { SourceText } from './files/source-text.ts';
import { baseName } from './files/written-under.ts';
import { readYaml } from './files/yaml-tree.ts';
import type { KitPart } from './kit/kit.ts';
import { loadOf } from './parts/weight.ts';
import { type PreparationFiles, type Prepared, type PreparedSetup, prepare } from './prepare.ts';
import { READING_EXAMPLE } from './readings/reading-example.ts';
import { setupNamed } from './review.ts';

/** Something that may be read on the bench at a setup, with what its line in the book says of it. */
export interface BenchTask {
  readonly measurement: Measurement;
  readonly of: Pick<BenchEntry, 'activity' | 'what' | 'with'>;
  /** A reading of it as somebody would write one. */
  readonly example: string;
}

/**
 * All that may be read on the bench at one setup: the setup itself each way that gives one figure, its scale
 * turned over and against every mass of the kit that it can carry, its parts on a balance or beside a ruler.
 */
export function benchTasksAt(prepared: Prepared, mark: string): readonly BenchTask[] {
  const at = setupNamed(prepared, mark);
  if (at === null) return [];
  const parts = prepared.kit?.parts ?? [];
  const found = candidatesAt([at], parts).map(({ measurement }) => measurement);
  const single = found.filter((each) => each.kind !== 'hung load' && isOnce(each));
  const rank = ORDER.flatMap((kind) => [
    ...single.filter((each) => each.kind === kind),
    ...(kind === 'turn over' ? hungFrom(at, parts) : []),
  ]);
  return rank.map((measurement) => ({
    measurement,
    of: lineOf(prepared, at, measurement),
    example: exampleOf(at, parts, measurement),
  }));
}

const ORDER: readonly Measurement['kind'][] = ['reading', 'turn over', 'weigh', 'ruler'];

/** A line of the book is one reading, though the mean of several may be written in it. */
const isOnce = (measurement: Measurement): boolean =>
  measurement.kind !== 'reading' || measurement.times === 1;

function hungFrom({ setup }: PreparedSetup, parts: readonly KitPart[]): readonly Measurement[] {
  const { scale, gravity } = setup;
  if (scale === null || setup.watched !== 'pull') return [];
  return parts
    .filter(({ kind, isFaulty }) => kind === 'weight' && !isFaulty)
    .filter(({ fields }) => {
      const shows = lawOfHungLoad(scale, loadOf(fields), gravity).figureAt(new Map());
      return shows !== null && shows.value <= scale.range;
    })
    .map(({ mark }) => ({ kind: 'hung load', scale: scale.mark, load: mark }));
}

function lineOf(prepared: Prepared, at: PreparedSetup, measurement: Measurement): BenchTask['of'] {
  switch (measurement.kind) {
    case 'reading': {
      const isOwnWay = measurement.way === at.setup.way;
      return lineOfSetup(prepared, at, isOwnWay ? null : measurement.way);
    }
    case 'hung load':
      return { what: `${measurement.scale} with ${measurement.load}` };
    case 'turn over':
      return { what: `${measurement.scale} turned over` };
    default:
      return { what: `${measurement.part} ${measurement.field}` };
  }
}

/** A setup with its activity and its parts: what its mark alone does not say years later. */
export const lineOfSetup = (prepared: Prepared, at: PreparedSetup, way: string | null): BenchTask['of'] => ({
  activity: baseName(prepared.activity?.file ?? ''),
  what: way === null ? at.setup.mark : `${at.setup.mark} ${way}`,
  with: at.parts.join('; '),
});

function exampleOf({ setup }: PreparedSetup, parts: readonly KitPart[], measurement: Measurement): string {
  if (measurement.kind !== 'weigh' && measurement.kind !== 'ruler') return READING_EXAMPLE[setup.watched];
  const field = parts.find(({ mark }) => mark === measurement.part)?.fields[measurement.field];
  return field?.type === 'quantity' ? field.written : '';
}

/** The same reading once more, to be said otherwise: what stands in the new line for that of an older one. */
export const lineInstead = (line: BenchLine): BenchEntry => ({
  activity: line.activity,
  what: line.what,
  with: line.parts.join('; '),
  reading: line.reading,
  note: line.note,
  replaces: String(line.line),
});

/** The files with one line more in the bench book, and what is found in it that was not there before. */
export interface LineAdded {
  readonly files: PreparationFiles;
  /** The text to put behind the book. */
  readonly line: string;
  readonly number: number;
  readonly before: Prepared;
  readonly after: Prepared;
  readonly found: readonly Diagnostic[];
}

/** One line more in a bench book. Whether it is sound is for whoever writes the book to look at, in `found`. */
export function withBenchLine(files: PreparationFiles, book: SourceText, entry: BenchEntry): LineAdded {
  const line = addedLine(book.text, entry);
  const text = `${book.text}${line}`;
  const next = { ...files, bench: { ...book, text } };
  const before = prepare({ ...files, bench: book });
  const after = prepare(next);
  const inBook = (prepared: Prepared) => prepared.diagnostics.filter(({ at }) => at.file === book.name);
  const told = new Set(inBook(before).map((each) => JSON.stringify(each)));
  return {
    files: next,
    line,
    number: text.replace(/\r\n?/g, '\n').trimEnd().split('\n').length,
    before,
    after,
    found: inBook(after).filter((each) => !told.has(JSON.stringify(each))),
  };
}

/** The kit with the name of its bench book written into it; `null` where its file can't be read. */
export function withBookNamed(kit: SourceText, name = bookNameFor(kit)): SourceText | null {
  const text = withValue(readYaml(kit).source, ['bench book'], name);
  return text === null ? null : { ...kit, text };
}

/**
 * A bench book stands beside its kit, under the same name.
 *
 * @example bookNameFor({ name: 'boathouse.kit.yaml', text: '' }) // => 'boathouse.bench.csv'
 */
export const bookNameFor = (kit: SourceText): string =>
  `${baseName(kit.name).replace(/(\.kit)?\.ya?ml$/, '')}.bench.csv`;

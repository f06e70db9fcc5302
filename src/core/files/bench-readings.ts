import { type BenchFit, benchFit, type FittedReading, type Observation } from '../calibration/bench-fit.ts';
import type { Knowledge } from '../calibration/knowledge.ts';
import type { Diagnostic, Fact, Facts } from '../diagnostics/diagnostic.ts';
import type { Kit } from '../kit/kit.ts';
import { type BenchLine, readBenchBook } from './bench-book-file.ts';
import { type BenchKit, type Figure, figureOf } from './bench-figure.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import { baseName } from './written-under.ts';

/** The bench book of a kit, and what its readings tell of the apparatus of one activity. */
export interface Bench {
  readonly file: string;
  readonly lines: readonly BenchLine[];
  readonly fit: BenchFit;
  /** `null` where no reading tells anything yet. */
  readonly known: Known | null;
  /** How many lines are about other activities, or about setups that can't be built today. */
  readonly elsewhere: number;
  /** How many lines are of today's setups and still can't be used: the findings say why. */
  readonly unusable: number;
  /** A figure as the instrument of a reading has it, in its own marks. */
  readonly factOf: (reading: FittedReading, si: number) => Fact;
}

/** What is known by the bench readings, and the day of the last of them. */
export interface Known {
  readonly knowledge: Knowledge;
  readonly since: string;
}

export interface ReadBench {
  readonly source: SourceFile;
  readonly bench: Bench;
  readonly diagnostics: readonly Diagnostic[];
}

interface Taken extends Figure {
  readonly line: BenchLine;
  readonly observation: Observation;
}

/** Bench book -> readings with their laws -> what they tell; what can't be used is told and stays in the book. */
export function readBench(file: SourceText, kit: Kit, at: BenchKit): ReadBench {
  const { source, lines, diagnostics: found } = readBenchBook(file, kit.serial);
  const diagnostics = [...found];
  // A name that was misspelt looks just like a book that nobody has begun.
  if (file.text.trim() === '') {
    const place = { file: kit.file, path: ['bench book'], on: 'value' } as const;
    diagnostics.push(fileFinding('bench-not-begun', place, { book: kit.benchBook ?? file.name }, 'note'));
  }
  const say: Say = (line, column, code, facts = {}, severity = 'error') => {
    const place = { file: file.name, path: [...line.path, column], on: 'value' } as const;
    diagnostics.push(fileFinding(code, place, facts, severity));
  };
  const standing = lines.filter((line) => line.replacedBy === null);
  const here = standing.filter(
    ({ activity, what }) =>
      (activity === '' || baseName(activity) === baseName(at.activity)) &&
      !at.notPrepared.some((mark) => what === mark || what.startsWith(`${mark} `)),
  );
  const taken = here.flatMap((line): readonly Taken[] => {
    const figure = figureOf(line, kit, at, (...told) => say(line, ...told));
    if (figure === null) return [];
    const { date, decided } = line;
    const observation = { ...figure.law, name: String(line.line), date, value: figure.value, decided };
    return [{ ...figure, line, observation }];
  });
  const fit = benchFit(taken.map(({ observation }) => observation));
  tellSetAside(fit, taken, say);
  const used = fit.readings.filter(({ isUsed }) => isUsed).map(({ observation }) => observation.date);
  const since = [...used].sort().at(-1) ?? '';
  const isKnown = fit.knowledge.unknowns.length > 0;
  return {
    source,
    diagnostics,
    bench: {
      file: file.name,
      lines,
      fit,
      known: isKnown ? { knowledge: fit.knowledge, since } : null,
      elsewhere: standing.length - here.length,
      unusable: here.length - taken.length,
      factOf: ({ observation }, si) => taken.find((each) => each.observation === observation)?.fact(si) ?? si,
    },
  };
}

type Say = (
  line: BenchLine,
  column: string,
  code: FileCode,
  facts?: Facts,
  severity?: Diagnostic['severity'],
) => void;

/** How far from its middle a range is told: beyond it a reading is set aside. */
const FAR = 3;

/** A reading that was set aside is told with what would have been believed, and whether others agree with it. */
function tellSetAside(fit: BenchFit, taken: readonly Taken[], say: Say): void {
  for (const reading of fit.readings) {
    const { because, observation } = reading;
    const at = taken.find((each) => each.observation === observation);
    if (at === undefined || (because !== 'far from the files' && because !== 'at odds with the others'))
      continue;
    const code = because === 'far from the files' ? 'bench-far' : 'bench-at-odds';
    say(at.line, 'reading', code, { ...rangeFacts(reading, at), ...agreeing(fit, reading) }, 'warning');
  }
}

function rangeFacts(reading: FittedReading, { fact }: Taken): Facts {
  const { expected, u, observation, because, offOthers } = reading;
  if (because === 'far from the files')
    return {
      reading: fact(observation.value),
      from: fact(expected - FAR * u),
      to: fact(expected + FAR * u),
    };
  const times = Math.round(Math.abs(offOthers ?? 0) * 10) / 10;
  return { reading: fact(observation.value), fitted: fact(reading.fitted), times };
}

/** Lines of the other far readings that it agrees with. */
function agreeing(fit: BenchFit, reading: FittedReading): Facts {
  if (!fit.agreeing.includes(reading)) return {};
  const others = fit.agreeing.filter((each) => each !== reading).map(({ observation }) => observation.name);
  return { others };
}

import {
  type Law,
  lawOfField,
  lawOfHungLoad,
  lawOfSetup,
  lawOfTurnOver,
} from '../calibration/observation.ts';
import { figureFact } from '../calibration/rekey-table.ts';
import type { Diagnostic, Fact, Facts } from '../diagnostics/diagnostic.ts';
import { forceFact } from '../diagnostics/facts.ts';
import { type SpringScale, springScaleOf } from '../instruments/spring-scale.ts';
import type { Kit, KitPart } from '../kit/kit.ts';
import { loadOf } from '../parts/weight.ts';
import type { MetresPerSecondSquared } from '../quantities/brands.ts';
import { readQuantity } from '../quantities/read-quantity.ts';
import { arrivalReading } from '../readings/arrival-reading.ts';
import { READING_EXAMPLE } from '../readings/reading-example.ts';
import { readWritten } from '../readings/written-reading.ts';
import type { Predicted } from '../setups/difference.ts';
import type { WayOfReading } from '../setups/prediction.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { BenchLine } from './bench-book-file.ts';
import { nearestFact } from './context.ts';
import type { FileCode } from './file-code.ts';

/** What stands on the tables, as the files have it: what a bench reading may be of. */
export interface BenchKit {
  /** File of the activity. */
  readonly activity: string;
  readonly setups: readonly (Predicted & { readonly parts: readonly string[] })[];
  /** Marks of setups that can't be built today. */
  readonly notPrepared: readonly string[];
  /** Gravity where the kit is at home, and so its bench. */
  readonly gravity: Measured<MetresPerSecondSquared>;
}

/** A bench reading with the law of what it should show. */
export interface Figure {
  readonly law: Law;
  /** SI. */
  readonly value: number;
  /** A figure of the same sort, as a fact of a sentence. */
  readonly fact: (si: number) => Fact;
}

type Say = (column: string, code: FileCode, facts?: Facts, severity?: Diagnostic['severity']) => void;

const WAYS: readonly WayOfReading[] = ['raise', 'lower', 'start'];

/** What a line of the book is of, and what was read; `null` where it can't be used, which is told. */
export function figureOf(line: BenchLine, kit: Kit, at: BenchKit, say: Say): Figure | null {
  const known = at.setups.map(({ setup }) => setup.mark);
  const [, mark = line.what, way] = /^(.+) (raise|lower|start)$/.exec(line.what) ?? [];
  const found = at.setups.find(({ setup }) => setup.mark === mark);
  if (found !== undefined) return ofSetup(line, found, WAYS.find((each) => each === way) ?? null, at, say);
  const scale = /^(.+) (?:turned over|with (.+))$/.exec(line.what);
  if (scale !== null) return ofScale(line, scale[1] ?? '', scale[2] ?? null, kit, at, say);
  const part = kit.parts.find((each) => line.what.startsWith(`${each.mark} `));
  if (part !== undefined) return ofField(line, part, line.what.slice(part.mark.length + 1), kit, say);
  say('what', 'bench-unknown-what', { written: line.what, known, ...nearestFact(mark, known) });
  return null;
}

function ofSetup(
  line: BenchLine,
  found: BenchKit['setups'][number],
  way: WayOfReading | null,
  { gravity }: BenchKit,
  say: Say,
): Figure | null {
  const setup = { ...found.setup, gravity, ...(way === null ? {} : { way }) };
  const others = line.parts.filter((part) => !found.parts.includes(part));
  if (others.length > 0) {
    say('with', 'bench-other-parts', { setup: setup.mark, parts: others, today: found.parts }, 'warning');
    return null;
  }
  const law = lawOfSetup(setup);
  if (law.figureAt(new Map()) === null) {
    say('what', 'bench-no-figure', { written: line.what });
    return null;
  }
  const value = arrivalReading(found, line.reading);
  if (value === null) {
    say('reading', 'bench-not-a-reading', { written: line.reading, example: READING_EXAMPLE[setup.watched] });
    return null;
  }
  return { law, value, fact: (si) => figureFact(found, si) };
}

function ofScale(
  line: BenchLine,
  scaleMark: string,
  loadMark: string | null,
  kit: Kit,
  { gravity }: BenchKit,
  say: Say,
): Figure | null {
  const scale = partOf(kit, scaleMark, 'spring scale', say);
  const load = loadMark === null ? null : partOf(kit, loadMark, 'weight', say);
  if (scale === null || (loadMark !== null && load === null)) return null;
  const meaning = readWritten(line.reading, ['force']);
  if (meaning.kind !== 'number' || meaning.unit === null) {
    say('reading', 'bench-not-a-reading', { written: line.reading, example: READING_EXAMPLE.pull });
    return null;
  }
  const made = springScaleOf(scale);
  const law =
    load === null ? lawOfTurnOver(made, gravity) : lawOfHungLoad(made, loadOf(load.fields), gravity);
  return { law, value: meaning.number * meaning.unit.si, fact: inMarksOf(made) };
}

const inMarksOf =
  ({ graduations }: SpringScale) =>
  (si: number): Fact => ({ ...forceFact(si), unit: graduations.unit });

function partOf(kit: Kit, mark: string, kind: string, say: Say): KitPart | null {
  const of = kit.parts.filter((each) => each.kind === kind && !each.isFaulty);
  const found = of.find((each) => each.mark === mark);
  if (found !== undefined) return found;
  const known = of.map((each) => each.mark);
  say('what', 'unknown-part', { written: mark, known, ...nearestFact(mark, known) });
  return null;
}

/** A part's own field, weighed or measured: as well known as the way it is written says. */
function ofField(line: BenchLine, part: KitPart, field: string, kit: Kit, say: Say): Figure | null {
  const filled = part.fields[field];
  const known = Object.entries(part.fields).flatMap(([name, each]) =>
    each.type === 'quantity' ? [name] : [],
  );
  if (filled?.type !== 'quantity') {
    const facts = { written: field, part: part.kind, known, ...nearestFact(field, known) };
    say('what', 'unknown-field', facts);
    return null;
  }
  const { measured, dimension, written } = filled;
  const read = readQuantity(line.reading, { dimensions: [dimension], decimal: kit.decimal });
  if (read.kind !== 'written' || read.u === 0) {
    say('reading', 'bench-not-a-reading', { written: line.reading, example: written });
    return null;
  }
  const { u, shape, origin } = read;
  return {
    law: lawOfField(measured, { u, shape, origin }),
    value: read.value,
    fact: (si) => ({ si, dimension }),
  };
}

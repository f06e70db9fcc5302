import type { Facts } from '../diagnostics/diagnostic.ts';
import { measuredOf } from '../parts/weight.ts';
import type { WayOfReading } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { causeKey } from './causes.ts';
import { type DoingMistake, doingMistakes, isZeroMistake } from './doing-mistakes.ts';
import { tableKeyOf } from './explanation.ts';
import { type Figure, figureOf } from './figure.ts';
import type { LikelyCause } from './likely-cause.ts';
import { outcomeAt } from './outcome-at.ts';

/** Causes that one reading can't tell apart, and the one test that can. */
export interface Tie {
  readonly causes: readonly Named[];
  /** `null` where no test on the list tells them apart. */
  readonly test: TellingTest | null;
}

export interface Named {
  readonly code: string;
  readonly facts?: Facts;
}

/** A further reading, or a look, with what it shows under each cause. */
export interface TellingTest {
  readonly kind: TestKind;
  /** Mark of the setup that is read. */
  readonly setup: string;
  /** The way it is read, where that is another one than the card's. */
  readonly way: WayOfReading | null;
  /** Mark of the weight that is hung, where that is another one. */
  readonly load: string | null;
  /** What the instrument then shows, SI; `null` where it is looked at and not read. */
  readonly shows: readonly (Named & { readonly figure: number | null })[];
  /** The least distance between two of them in standard uncertainties; `null` for a look. */
  readonly apart: number | null;
}

export type TestKind =
  | 'read-again'
  | 'zero-again'
  | 'other-way'
  | 'partner'
  | 'other-load'
  | 'count-again'
  | 'look-at-unit'
  | 'check-card';

/** Probabilities within this factor are a tie, and so are figures that a reading can't tell apart. */
const FACTOR = 3;
const WORTH_NAMING = 0.08;
/** So far apart, one reading tells: the first test in the order of its trouble is taken. */
const PLAIN = 4;
/** Less far apart, a reading tells nothing: somebody has to look. */
const HARDLY = 2;

export function tieOf(setup: Setup, causes: readonly LikelyCause[]): Tie | null {
  const wrong = causes.filter(({ kind }) => kind !== 'good' && kind !== 'unexplained');
  const [first] = wrong;
  if (first === undefined || first.probability < WORTH_NAMING) return null;
  const tied = wrong.filter(
    (each) =>
      each === first ||
      (each.probability >= WORTH_NAMING &&
        (each.probability * FACTOR >= first.probability || isSameFigure(setup, each, first))),
  );
  if (tied.length < 2) return null;
  return {
    causes: tied.map(named),
    test: knownTest(setup, tied),
  };
}

const isSameFigure = (setup: Setup, a: LikelyCause, b: LikelyCause): boolean => {
  const step = (setup.marks ?? setup.scale?.graduations)?.step ?? 0;
  return a.wouldShow !== null && b.wouldShow !== null && Math.abs(a.wouldShow - b.wouldShow) < step;
};

const named = ({ code, facts }: LikelyCause): Named => ({ code, ...(facts === undefined ? {} : { facts }) });

const isCounted = (code: string): boolean => /hole|pin-|counted|turn|part-/.test(code);

/** Kept with the setup: the same ties come again with every reading of a class. */
const known = new WeakMap<Setup, Map<string, TellingTest>>();

function knownTest(setup: Setup, tied: readonly LikelyCause[]): TellingTest {
  const all = known.get(setup) ?? new Map<string, TellingTest>();
  known.set(setup, all);
  const name = tied.map(causeKey).join('\n');
  const found = all.get(name) ?? testFor(setup, tied);
  all.set(name, found);
  return found;
}

function testFor(setup: Setup, tied: readonly LikelyCause[]): TellingTest {
  const look = (kind: TestKind): TellingTest => ({
    kind,
    setup: setup.mark,
    way: null,
    load: null,
    shows: tied.map((each) => ({ ...named(each), figure: null })),
    apart: null,
  });
  // What was written is told from what was done by asking what stood beside the marks.
  if (tied.some(({ kind }) => kind === 'reading')) return look('look-at-unit');
  let [best, most]: [TellingTest | null, number] = [null, 0];
  for (const test of readingTests(setup)) {
    const found = shownBy(test, setup, tied);
    if (found === null || found.apart === null) continue;
    if (found.apart >= PLAIN) return found;
    if (found.apart > most) [best, most] = [found, found.apart];
  }
  if (best !== null && most >= HARDLY) return best;
  return look(tied.every(({ code }) => isCounted(code)) ? 'count-again' : 'check-card');
}

/** One further reading: the setup it is taken at, and what becomes of a mistake there. */
interface ReadingTest {
  readonly kind: TestKind;
  readonly setup: Setup;
  readonly way: WayOfReading | null;
  readonly load: string | null;
  /** Whether the mistake is put right by the test itself. */
  readonly mends: (mistake: DoingMistake) => boolean;
}

/** In the order of their trouble: the least first. */
function readingTests(setup: Setup): readonly ReadingTest[] {
  if (setup.watched !== 'pull') return [];
  const slip = ({ persists }: DoingMistake): boolean => persists === 'reading';
  const ofWay = ({ code }: DoingMistake): boolean => code.startsWith('way.');
  const isTurned = setup.zeroed !== 'hook down' || setup.hang !== 'hook down';
  const other = otherWay(setup.way);
  const twice = heavier(setup);
  const partners = setup.around?.partners ?? [];
  const test = (kind: TestKind, of: Setup, more: Partial<ReadingTest> = {}): ReadingTest => ({
    kind,
    setup: of,
    way: null,
    load: null,
    mends: slip,
    ...more,
  });
  return [
    test('read-again', setup),
    ...(isTurned ? [test('zero-again', setup, { mends: ({ code }) => isZeroMistake(code) })] : []),
    ...(other === null ? [] : [test('other-way', { ...setup, way: other }, { way: other, mends: ofWay })]),
    ...partners.map((partner) => test('partner', partner)),
    ...(twice === null ? [] : [test('other-load', { ...setup, load: twice.load }, { load: twice.mark })]),
  ];
}

const otherWay = (way: WayOfReading): WayOfReading | null =>
  way === 'raise' ? 'lower' : way === 'lower' ? 'raise' : null;

/** The weight of the kit that is nearest to twice the load. */
function heavier(setup: Setup) {
  const load = measuredOf(setup.load).value;
  const off = (each: { readonly load: Setup['load'] }): number =>
    Math.abs(Math.log(measuredOf(each.load).value / (2 * load)));
  const fitting = (setup.around?.weights ?? []).filter(
    ({ load: each }) => each.kind === setup.load.kind && measuredOf(each).value > 1.3 * load,
  );
  return [...fitting].sort((a, b) => off(a) - off(b))[0] ?? null;
}

/** What a test shows under each cause; `null` where one of them has no figure there. */
function shownBy(test: ReadingTest, setup: Setup, tied: readonly LikelyCause[]): TellingTest | null {
  const here = doingMistakes(setup);
  const there = test.setup === setup ? here : doingMistakes(test.setup);
  const figures = tied.map((cause): Figure | null => {
    const mistake = here.find((each) => causeKey(each) === causeKey(cause));
    if (mistake === undefined) return null;
    if (test.mends(mistake)) return shownAt(test.setup);
    const again = there.find((each) => tableKeyOf(each) === tableKeyOf(mistake));
    return shownAt(again?.changed ?? test.setup);
  });
  const known = figures.flatMap((each) => (each === null ? [] : [each]));
  if (known.length < tied.length) return null;
  return {
    kind: test.kind,
    setup: test.setup.mark,
    way: test.way,
    load: test.load,
    shows: tied.map((each, n) => ({ ...named(each), figure: middleOf(known[n]) })),
    apart: leastApart(known),
  };
}

const shownAt = (setup: Setup): Figure | null => figureOf(outcomeAt(setup));

const middleOf = (figure: Figure | undefined): number | null =>
  figure === undefined ? null : (figure.low + figure.high) / 2;

function leastApart(figures: readonly Figure[]): number {
  let least = Number.MAX_VALUE;
  for (const [n, a] of figures.entries())
    for (const b of figures.slice(n + 1)) {
      const gap = Math.max(a.low - b.high, b.low - a.high, 0);
      least = Math.min(least, gap / Math.hypot(a.u, b.u));
    }
  return least;
}

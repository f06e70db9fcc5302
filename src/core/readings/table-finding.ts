import type { Facts } from '../diagnostics/diagnostic.ts';
import type { CausePosterior } from './cause-posterior.ts';
import { isZeroMistake } from './doing-mistakes.ts';
import type { Explanation } from './explanation.ts';
import type { StationTable } from './station-table.ts';
import { byCard, stays } from './suspect-mistakes.ts';
import type { LiveHypothesis, TableWeights } from './table-weights.ts';

/** What most readings of a table have in common, and what may be behind it. */
export interface TableFinding {
  readonly table: string;
  /** `same mistake`: most groups are off in the same way; `off the list`: all are off, in no way that is known. */
  readonly kind: 'same mistake' | 'off the list';
  readonly code: string | null;
  readonly facts?: Facts;
  /** What may be behind it, most probable first; both are named where both can be. */
  readonly behind: readonly Behind[];
  /** Groups whose readings fit, of those that wrote a number where it could show. */
  readonly groups: number;
  readonly of: number;
  /** The figures, as the card has them and as they are found. */
  readonly figures: readonly FoundFigure[];
  /** What tells what is behind it; `null` where there is nothing to tell apart. */
  readonly test: FindingTest | null;
}

export interface Behind {
  readonly what: 'station' | 'card' | 'kit';
  readonly probability: number;
  /** The first group that found it so; `null` where it was so from the first one on. */
  readonly from: string | null;
}

export interface FoundFigure {
  readonly setup: string;
  /** SI. */
  readonly expected: number;
  readonly found: number;
  readonly u: number;
}

/** The teacher sets one setup up by its card and reads it once. */
export interface FindingTest {
  readonly kind: 'zero-again' | 'look-at-load' | 'look-at-signs' | 'set-up-again';
  readonly setup: string;
  /** What the instrument then shows if the station had changed, and stays so. SI. */
  readonly ifStation: number;
  /** What it shows if the station is sound, and the card or the habit led there. SI. */
  readonly ifCard: number;
}

const BELIEVED = 0.5;

export function tableFinding(
  table: StationTable,
  weights: TableWeights,
  alone: readonly CausePosterior[],
): TableFinding | null {
  const byKey = new Map<string, LiveHypothesis[]>();
  for (const live of weights.live) {
    const { change } = live.hypothesis;
    if (change !== null) byKey.set(change.key, [...(byKey.get(change.key) ?? []), live]);
  }
  const [key, believed] = [...byKey].find(([, all]) => sumOf(all) > BELIEVED) ?? ([null, []] as const);
  return key === null ? offTheList(table, weights) : sameMistake(table, weights, alone, key, believed);
}

const shareOf = (posterior: CausePosterior | undefined, key: string): number =>
  (posterior?.causes ?? []).reduce((sum, each) => (each.tableKey === key ? sum + each.probability : sum), 0);

const sumOf = (live: readonly LiveHypothesis[]): number =>
  live.reduce((sum, { probability }) => sum + probability, 0);

function sameMistake(
  table: StationTable,
  weights: TableWeights,
  alone: readonly CausePosterior[],
  key: string,
  live: readonly LiveHypothesis[],
): TableFinding | null {
  const [best] = [...live].sort((a, b) => b.probability - a.probability);
  if (best === undefined) return null;
  const scope = best.hypothesis.change?.setup ?? null;
  const hit = weights.numbers.flatMap(({ setup, reading, possible }, n) =>
    possible.has(key) && (scope === null || scope === setup)
      ? [{ setup, group: reading.group, fits: shareOf(alone[n], key) }]
      : [],
  );
  const example = exampleOf(live, key);
  if (example === null) return null;
  const figures = [...new Set(hit.map(({ setup }) => setup))].flatMap((setup) => {
    const at = table.apparatus.setups[setup];
    const there = exampleOf(live, key, setup);
    if (at === undefined || at.figure === null || there === null || there.fixed !== null) return [];
    const middle = (there.low + there.high) / 2;
    const shift = best.weighed.belief.mean[setup] ?? 0;
    const doubt = best.weighed.belief.spread[setup]?.[setup] ?? 0;
    return [
      {
        setup: at.at.setup.mark,
        expected: at.middle,
        found: middle + there.gain * shift,
        u: Math.abs(there.gain) * Math.sqrt(Math.max(doubt, 0)),
        // A setup where one reading shows the difference best.
        apart: Math.abs(middle - at.middle) / Math.sqrt(at.own + there.noise),
      },
    ];
  });
  const behind = behindOf(live, weights.groups, example);
  const [widest] = [...figures].sort((a, b) => b.apart - a.apart);
  return {
    table: table.mark,
    kind: 'same mistake',
    code: example.code,
    ...(example.facts === undefined ? {} : { facts: example.facts }),
    behind,
    ...counted(hit),
    figures: figures.map(({ setup, expected, found, u }) => ({ setup, expected, found, u })),
    test:
      behind.length < 2 || widest === undefined
        ? null
        : {
            kind: testFor(example.code),
            setup: widest.setup,
            ifStation: widest.found,
            ifCard: widest.expected,
          },
  };
}

function testFor(code: string): FindingTest['kind'] {
  if (isZeroMistake(code)) return 'zero-again';
  if (code === 'load.other-weight') return 'look-at-load';
  return code === 'setup.swapped' ? 'look-at-signs' : 'set-up-again';
}

/** A group fits where most of its readings do. */
function counted(hit: readonly { readonly group: string; readonly fits: number }[]) {
  const byGroup = new Map<string, number[]>();
  for (const { group, fits } of hit) byGroup.set(group, [...(byGroup.get(group) ?? []), fits]);
  const fitting = [...byGroup.values()].filter(
    (all) => all.reduce((sum, each) => sum + each, 0) > BELIEVED * all.length,
  );
  return { groups: fitting.length, of: byGroup.size };
}

function exampleOf(live: readonly LiveHypothesis[], key: string, setup?: number): Explanation | null {
  for (const { readings } of live)
    for (const reading of readings)
      if (setup === undefined || reading.setup === setup)
        for (const each of reading.explanations) if (each.tableKey === key) return each;
  return null;
}

/** However improbable, whatever can be behind it is named: the teacher has the test, the program has not. */
function behindOf(
  live: readonly LiveHypothesis[],
  groups: readonly string[],
  mistake: Explanation,
): readonly Behind[] {
  const total = sumOf(live);
  const canBe = { station: stays(mistake), card: byCard(mistake) };
  return (['station', 'card'] as const)
    .filter((what) => canBe[what])
    .map((what): Behind => {
      const of = live.filter(({ hypothesis }) => hypothesis.change?.kind === what);
      const [best] = [...of].sort((a, b) => b.probability - a.probability);
      const from = best?.hypothesis.change?.from ?? 0;
      return { what, probability: sumOf(of) / total, from: from === 0 ? null : (groups[from] ?? null) };
    })
    .sort((a, b) => b.probability - a.probability);
}

/** Farther than this many of the file's own doubts, a table is said to be off. */
const FAR = 2;

function offTheList(table: StationTable, weights: TableWeights): TableFinding | null {
  const off = weights.live.filter(({ hypothesis }) => hypothesis.apparatus !== 'as the file says');
  const probability = sumOf(off);
  const [best] = [...off].sort((a, b) => b.probability - a.probability);
  if (best === undefined || probability <= BELIEVED) return null;
  const { mean, spread } = best.weighed.belief;
  const read = new Set(weights.numbers.map(({ setup }) => setup));
  const figures = table.apparatus.setups.flatMap(({ at, middle, shared }, n): readonly FoundFigure[] => {
    const [shift, u] = [mean[n] ?? 0, Math.sqrt(Math.max(spread[n]?.[n] ?? 0, 0))];
    return read.has(n) && Math.abs(shift) > FAR * Math.hypot(Math.sqrt(shared), u)
      ? [{ setup: at.setup.mark, expected: middle, found: middle + shift, u }]
      : [];
  });
  if (figures.length === 0) return null;
  const groups = new Set(weights.numbers.map(({ reading }) => reading.group)).size;
  return {
    table: table.mark,
    kind: 'off the list',
    code: null,
    behind: [{ what: 'kit', probability, from: null }],
    groups,
    of: groups,
    figures,
    test: null,
  };
}

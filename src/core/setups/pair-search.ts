import { isNotDefined } from '../description/not-defined.ts';
import type { KitPart } from '../kit/kit.ts';
import { type ApparatusCopies, apparatusCopies } from '../uncertainty/apparatus-copies.ts';
import { normalShare } from '../uncertainty/probability.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { type Builder, builderFor, type CandidateSetup } from './candidate-setup.ts';
import { type ChanceToSee, chanceToSee, type Wanted } from './chance-to-see.ts';
import { contrastOf, contrastTurns, optionSets, type Turn } from './contrast.ts';
import { makeSetup, type SetupDescription } from './make-setup.ts';
import { balanceFor, effortOf } from './pull.ts';
import type { Setup } from './setup.ts';
import { optionsFor } from './setup-options.ts';
import { type Option, type Spot, spotKey, textAt } from './spot.ts';

/** What a search is given, whatever it looks for. */
export interface Search {
  /** Parts that may be put in: not faulty, there today, and on no other table. */
  readonly free: readonly KitPart[];
  readonly wanted: Wanted;
  readonly seed: number;
  /** Puts in what the bench readings tell. */
  readonly known: (setup: Setup) => Setup;
  /** Setups that may still be built. */
  readonly budget: { left: number };
}

/** One thing set otherwise, at one setup or at both. */
export interface SetOtherwise {
  readonly at: readonly string[];
  readonly option: Option;
  /** What stands there now, as written; `null` where nothing is. */
  readonly from: string | null;
}

export interface FoundPair {
  readonly changes: readonly SetOtherwise[];
  readonly setups: readonly [Setup, Setup];
  readonly chance: ChanceToSee;
  readonly worth: number;
  readonly turnsRound: boolean;
}

/** More things than this set otherwise make another activity: common practice, no source. */
export const MOST_CHANGES = 3;
/** Things that both setups share are changed at most so many at a time. */
const MOST_SHARED = 2;
/** One more change has to be worth so many groups in a hundred: common practice, no source. */
const CHANGE_COSTS = 0.03;
/** A difference twice as large is worth so many groups in a hundred: common practice, no source. */
const DOUBLE_IS_WORTH = 0.04;
/** How many are looked at closely, of those that sort best: two of each kind of change. */
const LOOKED_AT = 40;
const OF_A_KIND = 2;
const QUICK_COPIES = 40;
/** Once so many times as much is asked for, more is not needed; less than that shows little: common practice. */
export const LEAST_RATIO = 1.2;

/**
 * What a pair is worth: groups that see order and ratio, the size of the difference, less what it changes. A
 * pull that turns round is one change more.
 */
export const worthOf = (
  seen: number,
  ratio: number,
  changes: readonly Option[],
  turnsRound: boolean,
): number =>
  seen +
  DOUBLE_IS_WORTH * Math.log2(ratio) -
  CHANGE_COSTS * changes.reduce((sum, { spot }) => sum + costOf(spot), turnsRound ? 1 : 0);

/** Whether the pull goes another way than before, as the scale that hangs in it shows. */
export const turnsRound = (before: Setup['hang'] | null, now: Setup['hang']): boolean =>
  before !== null && wayOf(before) !== wayOf(now);

const wayOf = (hang: Setup['hang']): string => (typeof hang === 'string' ? hang : 'at an angle');

/** Only zeroed, tapped or carried otherwise is half a change; read in another way it shows something else. */
export const costOf = ({ kind, name }: Spot): number => {
  if (kind !== 'setup field') return 1;
  return name === 'read' ? 3 : 0.5;
};

/**
 * Other ways to set up a pair of partner setups that still show what they are there to show: what differs
 * between them stays what differs, in the same order, and everything else is changed in both alike. Best
 * first; each stands well on its scale, and the whole prediction finds nothing new against it.
 */
export function searchPairs(
  first: SetupDescription,
  second: SetupDescription,
  search: Search,
): readonly FoundPair[] {
  const contrast = contrastOf(first, second);
  const isContrast = (option: Option | undefined): boolean =>
    option !== undefined && contrast.some((spot) => spotKey(spot) === spotKey(option.spot));
  const shared = optionsFor(first, search.free).filter(([option]) => !isContrast(option));
  const turns = [
    ...contrastTurns(first, second, contrast, search.free),
    ...(contrast.some(isScale) ? [] : scaleTurns(first, shared)),
  ];
  const builders = [first, second].map((each) => builderFor(each, search.known, search.budget));
  const [forA, forB] = builders;
  if (forA === undefined || forB === undefined) return [];
  const kinds = new Map<string, readonly Sketch[]>();
  const pair: Pair = { more: asksMore(first, second, search), hang: makeSetup(first).setup?.hang ?? null };
  for (const both of optionSets(shared, MOST_SHARED))
    for (const turn of turns) {
      const sketch = sketched(forA, forB, both, turn, pair, search.wanted);
      if (sketch !== null) keepBest(kinds, sketch);
    }
  const copies = apparatusCopies(QUICK_COPIES, search.seed);
  return [...kinds.values()]
    .flat()
    .sort((one, other) => other.worth - one.worth)
    .slice(0, LOOKED_AT)
    .flatMap((sketch) => lookedAt(sketch, first, second, search.wanted, copies))
    .sort((one, other) => other.found.worth - one.found.worth)
    .filter(({ sketch }) => forA.holds(sketch.a) && forB.holds(sketch.b))
    .map(({ found }) => found);
}

/** Where one scale can't read both: another one for the first setup, or for the second. */
const scaleTurns = (first: SetupDescription, shared: readonly (readonly Option[])[]): readonly Turn[] =>
  shared
    .flat()
    .filter(({ spot }) => isScale(spot) && first.scale !== null)
    .flatMap((option) => [
      { a: [option], b: [] },
      { a: [], b: [option] },
    ]);

const isScale = ({ kind, name, stage }: Spot): boolean =>
  kind === 'part' && name === 'scale' && stage === null;

/** A pair that stands well at the best values, with what it is about worth. */
interface Sketch {
  readonly both: readonly Option[];
  readonly turn: Turn;
  readonly a: CandidateSetup;
  readonly b: CandidateSetup;
  readonly changes: readonly Option[];
  readonly turned: boolean;
  readonly worth: number;
}

/** A pair as it stands. */
interface Pair {
  readonly more: 'first' | 'second' | null;
  readonly hang: Setup['hang'] | null;
}

function sketched(
  forA: Builder,
  forB: Builder,
  both: readonly Option[],
  turn: Turn,
  { more, hang }: Pair,
  wanted: Wanted,
): Sketch | null {
  const changes = [...both, ...turn.a, ...turn.b];
  // A scale for one setup only has no sense beside another one for both.
  if (changes.filter(({ spot }) => isScale(spot)).length > 1) return null;
  if (changes.length === 0 || changes.length > MOST_CHANGES) return null;
  const a = forA.with([...both, ...turn.a]);
  const b = a === null ? null : forB.with([...both, ...turn.b]);
  if (a === null || b === null) return null;
  const isTurned = more !== null && a.best.figure > b.best.figure !== (more === 'first');
  const ratio = Math.max(a.best.figure, b.best.figure) / Math.min(a.best.figure, b.best.figure);
  if (isTurned || !(ratio >= LEAST_RATIO) || ratio === Number.POSITIVE_INFINITY) return null;
  const turned = turnsRound(hang, a.setup.hang);
  const worth = worthOf(quickChance(a, b, ratio, wanted), ratio, changes, turned);
  return { both, turn, a, b, changes, turned, worth };
}

/** Normal laws in place of sums over graduations, apparatus at its best values: to sort by only. */
function quickChance(a: CandidateSetup, b: CandidateSetup, ratio: number, wanted: Wanted): number {
  const [shownA, shownB] = [a, b].map(({ best }) => (best.lower + best.upper) / 2) as [number, number];
  const spread = Math.hypot(a.u / shownA, b.u / shownB);
  const off = Math.max(shownA, shownB) / Math.min(shownA, shownB) / ratio - 1;
  const order = normalShare(Math.abs(shownA - shownB) / Math.hypot(a.u, b.u));
  const within = normalShare((wanted.ratio - off) / spread) - normalShare((-wanted.ratio - off) / spread);
  return Math.min(order, within);
}

/** The same kind of change sets the same things otherwise, whatever to. */
function keepBest(kinds: Map<string, readonly Sketch[]>, sketch: Sketch): void {
  const kind = [...sketch.both, ...sketch.turn.a, ...sketch.turn.b]
    .map(({ spot }) => spotKey(spot))
    .join('|');
  const kept = [...(kinds.get(kind) ?? []), sketch].sort((one, other) => other.worth - one.worth);
  kinds.set(kind, kept.slice(0, OF_A_KIND));
}

function lookedAt(
  sketch: Sketch,
  first: SetupDescription,
  second: SetupDescription,
  wanted: Wanted,
  copies: ApparatusCopies,
): readonly { readonly sketch: Sketch; readonly found: FoundPair }[] {
  const setups = [sketch.a.setup, sketch.b.setup] as const;
  const chance = chanceToSee(...setups, { wanted, copies, onceOnly: true });
  if (isNotDefined(chance)) return [];
  const worth = worthOf(chance.once.ratio, chance.ratio, sketch.changes, sketch.turned);
  const set =
    (at: readonly string[], now: SetupDescription) =>
    (option: Option): SetOtherwise => ({ at, option, from: textAt(now, option.spot) });
  const changes = [
    ...sketch.both.map(set([first.mark, second.mark], first)),
    ...sketch.turn.a.map(set([first.mark], first)),
    ...sketch.turn.b.map(set([second.mark], second)),
  ];
  return [{ sketch, found: { changes, setups, chance, worth, turnsRound: sketch.turned } }];
}

/** Which of the two asks for more as it stands, on the stop or not; `null` where that can't be said. */
function asksMore(
  first: SetupDescription,
  second: SetupDescription,
  { known }: Search,
): 'first' | 'second' | null {
  const [a, b] = [first, second].map((each) => {
    const { setup } = makeSetup(each);
    return setup === null || setup.watched !== 'pull'
      ? null
      : effortOf(balanceFor(known(setup), atBest, setup.way));
  });
  if (a === null || b === null || a === undefined || b === undefined || a === b) return null;
  return a > b ? 'first' : 'second';
}

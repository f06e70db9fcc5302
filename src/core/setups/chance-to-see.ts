import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { type ApparatusCopies, apparatusCopies } from '../uncertainty/apparatus-copies.ts';
import { type BestFigure, bestFigure } from './best-figure.ts';
import { coarserOdds, type ReadingOdds, readingOdds, sumOdds } from './reading-odds.ts';
import type { Setup } from './setup.ts';

/** What a class is to see, and how sure. */
export interface Wanted {
  /** How far the ratio of two readings may be from that of the pulls, as a share of it. */
  readonly ratio: number;
  /** The share of the groups that are to see it. */
  readonly groups: number;
}

/** A ratio within 15 % for 19 of 20 groups, where the teacher names nothing else: common practice, no source. */
export const USUALLY_WANTED: Wanted = { ratio: 0.15, groups: 0.95 };

/** What partner setups show to a class: shares of groups, 0 to 1. */
export interface ChanceToSee {
  /** Marks of the setup that asks for more, and of the one that asks for less. */
  readonly more: string;
  readonly less: string;
  /** Larger pull (turns, travel) over smaller one, friction and all, at the best values. */
  readonly ratio: number;
  /** Groups that see it from one reading at each setup. */
  readonly once: Seen;
  /** The same at the apparatus that is worse than nine in ten of what it may be. */
  readonly unlucky: Seen;
  /** Readings at each setup whose means show it to the wanted share of the groups. */
  readonly repeats: {
    readonly order: number | NotDefined;
    readonly ratio: number | NotDefined;
  };
  readonly wanted: Wanted;
  readonly copies: number;
  readonly seed: number;
}

/** Shares of groups. */
export interface Seen {
  /** Which of the two asks for more. */
  readonly order: number;
  /** The ratio within the tolerance, and therefore the order. */
  readonly ratio: number;
  /** The schoolbook's ratio within the tolerance; `null` where it has none. */
  readonly schoolbook: number | null;
}

export interface ChanceOptions {
  readonly wanted?: Wanted;
  readonly seed?: number;
  readonly copies?: number | ApparatusCopies;
  /** Schoolbook's figure of the first over that of the second. */
  readonly schoolbook?: number;
  /** Repeats are not asked for: quicker. */
  readonly onceOnly?: true;
}

/** Copies of the apparatus that a chance is taken over. */
export const COPIES = 200;
/** More readings than this at one setup no group takes: common practice, no source. */
export const MOST_REPEATS = 12;
/** Pulls closer than this share are the same. */
const SAME = 1e-3;

/**
 * The chance that one group sees what two partner setups are there to show: which of them asks for more,
 * and how many times as much. The apparatus is the same for all groups, so it is drawn first (copies of it
 * as it may be, friction and all); then the groups' readings at it are summed exactly over the graduations,
 * with hand scatter, tube friction, stop and end of the scale.
 *
 * The right order and ratio are those of the forces at the hook by this model at the best values; equal
 * readings show no order. Holds for honest readings: usual mistakes are not in it.
 */
export function chanceToSee(
  first: Setup,
  second: Setup,
  options: ChanceOptions = {},
): ChanceToSee | NotDefined {
  const apart = inOrder(first, second);
  if (isNotDefined(apart)) return apart;
  const { more, less, ratio } = apart;
  const { wanted = USUALLY_WANTED, seed = 1, copies: asked = COPIES } = options;
  const copies = typeof asked === 'number' ? apparatusCopies(asked, seed) : asked;
  const schoolbook = schoolbookRatio(options.schoolbook, more === first);
  const pairs = Array.from({ length: copies.count }, (_, n): PairOdds => {
    const at = copies.at(n);
    return { more: readingOdds(more, at), less: readingOdds(less, at) };
  });
  const see = (pair: PairOdds): Seen => seenIn(pair, ratio, schoolbook, wanted.ratio);
  const each = pairs.map(see);
  return {
    more: more.mark,
    less: less.mark,
    ratio,
    once: overall(each, mean),
    unlucky: overall(each, tenth),
    repeats:
      options.onceOnly === true
        ? { order: notAsked, ratio: notAsked }
        : repeatsFor(pairs, see, wanted, overall(each, mean)),
    wanted,
    copies: copies.count,
    seed: copies.seed,
  };
}

const notAsked = notDefined('chance.not-asked');

interface Apart {
  readonly more: Setup;
  readonly less: Setup;
  readonly ratio: number;
}

/** Which of two setups asks for more by the model, and how many times. */
function inOrder(first: Setup, second: Setup): Apart | NotDefined {
  if (first.watched !== second.watched) return notDefined('chance.unlike');
  const [a, b] = [bestFigure(first), bestFigure(second)];
  if (isNotDefined(a)) return a;
  if (isNotDefined(b)) return b;
  const [more, less] = a.figure >= b.figure ? [first, second] : [second, first];
  const ratio = ratioOf(a, b);
  if (ratio === null) return notDefined('chance.no pull', { setup: less.mark });
  if (ratio < 1 + SAME) return notDefined('chance.same', { first: first.mark, second: second.mark });
  return { more, less, ratio };
}

const ratioOf = (a: BestFigure, b: BestFigure): number | null => {
  const least = Math.min(a.figure, b.figure);
  return least > 0 ? Math.max(a.figure, b.figure) / least : null;
};

const schoolbookRatio = (ratio: number | undefined, isFirst: boolean): number | null =>
  ratio === undefined || !(ratio > 0) ? null : isFirst ? ratio : 1 / ratio;

interface PairOdds {
  readonly more: ReadingOdds | null;
  readonly less: ReadingOdds | null;
}

/** Sums over all that two groups of readings may be; a reading that is missing shows nothing. */
function seenIn({ more, less }: PairOdds, ratio: number, schoolbook: number | null, tolerance: number): Seen {
  if (more === null || less === null)
    return { order: 0, ratio: 0, schoolbook: schoolbook === null ? null : 0 };
  const above = sharesAbove(more);
  let order = 0;
  let within = 0;
  let asInBook = 0;
  for (let n = 0; n < less.shares.length; n += 1) {
    const share = less.shares[n] ?? 0;
    const value = (less.low + n) * less.step;
    order += share * above(value, false);
    if (value <= 0) continue;
    within +=
      share *
      between(
        above,
        Math.max(value, ratio * (1 - tolerance) * value),
        ratio * (1 + tolerance) * value,
        value,
      );
    if (schoolbook !== null)
      asInBook +=
        share *
        (above(schoolbook * (1 - tolerance) * value, true) -
          above(schoolbook * (1 + tolerance) * value, false));
  }
  return { order, ratio: within, schoolbook: schoolbook === null ? null : asInBook };
}

type Above = (value: number, orEqual: boolean) => number;

/** Share of readings from `low` to `high`; what is no more than the other reading shows no order. */
const between = (above: Above, low: number, high: number, other: number): number =>
  Math.max(0, above(low, low > other) - above(high, false));

/** Share of readings above a figure; figures within a billionth are equal. */
function sharesAbove({ step, low, shares }: ReadingOdds): Above {
  const fromHere = new Float64Array(shares.length + 1);
  for (let n = shares.length - 1; n >= 0; n -= 1) fromHere[n] = (fromHere[n + 1] ?? 0) + (shares[n] ?? 0);
  return (value, orEqual) => {
    const place = value / step - low;
    const n = orEqual ? Math.ceil(place - 1e-9) : Math.floor(place + 1e-9) + 1;
    return fromHere[Math.min(Math.max(n, 0), shares.length)] ?? 0;
  };
}

function overall(each: readonly Seen[], of: (values: readonly number[]) => number): Seen {
  const books = each.map(({ schoolbook }) => schoolbook).filter((share) => share !== null);
  return {
    order: of(each.map(({ order }) => order)),
    ratio: of(each.map(({ ratio }) => ratio)),
    schoolbook: books.length === 0 ? null : of(books),
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1);

const tenth = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 10)] ?? 0;

/** The least number of readings at each setup whose means show it; more does not always help. */
function repeatsFor(
  pairs: readonly PairOdds[],
  see: (pair: PairOdds) => Seen,
  wanted: Wanted,
  once: Seen,
): ChanceToSee['repeats'] {
  const summed = pairs.map(({ more, less }): PairOdds => ({ more: coarser(more), less: coarser(less) }));
  let sums: readonly PairOdds[] = summed;
  let seen = once;
  let [order, ratio]: (number | null)[] = [null, null];
  for (let count = 1; count <= MOST_REPEATS; count += 1) {
    if (count > 1) {
      sums = sums.map((sum, n) => ({
        more: another(sum.more, summed[n]?.more ?? null),
        less: another(sum.less, summed[n]?.less ?? null),
      }));
      seen = overall(sums.map(see), mean);
    }
    order ??= seen.order >= wanted.groups ? count : null;
    ratio ??= seen.ratio >= wanted.groups ? count : null;
    if (order !== null && ratio !== null) break;
  }
  const never = notDefined('chance.apparatus-decides', { most: MOST_REPEATS });
  return { order: order ?? never, ratio: ratio ?? never };
}

const coarser = (odds: ReadingOdds | null): ReadingOdds | null => (odds === null ? null : coarserOdds(odds));

const another = (sum: ReadingOdds | null, one: ReadingOdds | null): ReadingOdds | null =>
  sum === null || one === null ? null : sumOdds(sum, one);

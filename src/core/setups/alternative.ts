import { isNotDefined } from '../description/not-defined.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import { apparatusCopies } from '../uncertainty/apparatus-copies.ts';
import { bestFigure } from './best-figure.ts';
import { type ChanceToSee, COPIES, chanceToSee } from './chance-to-see.ts';
import { type FoundSetup, READ_BY, shareRead } from './cure-search.ts';
import { type FoundPair, type Search, type SetOtherwise, worthOf } from './pair-search.ts';
import { predict } from './predict.ts';
import type { Prediction } from './prediction.ts';
import type { Setup } from './setup.ts';
import { type Spot, spotKey } from './spot.ts';
import { useOf } from './trouble.ts';

/** Another way to set up a pair or a setup, verified by the whole prediction and over what the apparatus may be. */
export interface Alternative {
  readonly changes: readonly ChangeMade[];
  readonly setups: readonly { readonly setup: Setup; readonly prediction: Prediction }[];
  readonly shows: Showing;
  /** What is gained and what it costs, as sentence keys with facts. */
  readonly gains: readonly Trade[];
  readonly costs: readonly Trade[];
}

/** One thing set otherwise, as it is written in the files. */
export interface ChangeMade {
  readonly at: readonly string[];
  readonly kind: Spot['kind'];
  readonly field: string;
  /** Stage of a compound, counted from 1 at the load. */
  readonly stage: number | null;
  readonly from: string | null;
  readonly to: string;
}

export interface Trade {
  readonly code: string;
  readonly facts: Facts;
}

/** How well some setups show on their instruments. */
export interface Showing {
  /** Of a pair; `null` where there is none, or none that can be compared. */
  readonly chance: ChanceToSee | null;
  /** Graduations above the stop, of the setup that has fewest. */
  readonly graduations: number | null;
  /** Share of the range, of the setup that uses most. */
  readonly ofRange: number | null;
  /** Share of readings that have a figure, of the setup that has fewest; over what the apparatus may be. */
  readonly isRead: number;
}

/** The best few, and no more: common practice, no source. */
const FEW = 3;
/** Worth less than this more than what stands is no alternative: two groups in a hundred. */
const WORTH_SAYING = 0.02;
/** Of those that were found best, so many are verified at most. */
const VERIFIED = 10;

/** What setups show as they stand. */
export function showingOf(setups: readonly Setup[], chance: ChanceToSee | null, seed: number): Showing {
  const copies = apparatusCopies(COPIES, seed);
  const uses = setups.flatMap((setup) => {
    const best = bestFigure(setup);
    const use = isNotDefined(best) ? null : useOf(setup, best.upper);
    return use === null ? [] : [use];
  });
  const whole = uses.length === setups.length;
  return {
    chance,
    graduations: whole ? Math.min(...uses.map(({ graduations }) => graduations)) : null,
    ofRange: whole ? Math.max(...uses.map(({ ofRange }) => ofRange)) : null,
    isRead: Math.min(...setups.map((setup) => shareRead(setup, copies))),
  };
}

/**
 * The best few of the pairs that were found, that are worth it: each verified with more copies of the
 * apparatus, and none that sets more things otherwise than one before it without being worth more.
 */
export function alternativePairs(
  found: readonly FoundPair[],
  now: Showing,
  isTroubled: boolean,
  search: Search,
): readonly Alternative[] {
  const standing =
    isTroubled || now.chance === null ? null : worthOf(now.chance.once.ratio, now.chance.ratio, [], false);
  return fewOf(found, (pair) => {
    const predicted = pair.setups.map((setup) => ({ setup, prediction: predict(setup) }));
    const { wanted, seed } = search;
    const chance = chanceToSee(...pair.setups, {
      wanted,
      seed,
      ...schoolbookOf(predicted.map(({ prediction }) => prediction)),
    });
    if (isNotDefined(chance)) return null;
    const set = pair.changes.map(({ option }) => option);
    const worth = worthOf(chance.once.ratio, chance.ratio, set, pair.turnsRound);
    if (standing !== null && worth < standing + WORTH_SAYING) return null;
    return alternative(pair.changes, predicted, showingOf(pair.setups, chance, seed), now, {
      isTroubled,
      turnsRound: pair.turnsRound,
    });
  });
}

/** The nearest few of the setups that were found. */
export const alternativeSetups = (
  found: readonly FoundSetup[],
  now: Showing,
  search: Search,
): readonly Alternative[] =>
  fewOf(found, ({ changes, setup, turnsRound }) =>
    alternative(
      changes,
      [{ setup, prediction: predict(setup) }],
      showingOf([setup], null, search.seed),
      now,
      { isTroubled: true, turnsRound },
    ),
  );

function fewOf<F extends { readonly changes: readonly SetOtherwise[] }>(
  found: readonly F[],
  verified: (each: F) => Alternative | null,
): readonly Alternative[] {
  const kept: { readonly spots: readonly string[]; readonly alternative: Alternative }[] = [];
  let looked = 0;
  for (const each of found) {
    const spots = each.changes.map(({ option }) => spotKey(option.spot));
    // What sets the same things otherwise as a better one, and perhaps more, is nothing new.
    if (kept.some((better) => better.spots.every((spot) => spots.includes(spot)))) continue;
    if (kept.length >= FEW || looked >= VERIFIED) break;
    looked += 1;
    const alternative = verified(each);
    if (alternative !== null && alternative.shows.isRead >= READ_BY) kept.push({ spots, alternative });
  }
  return kept.map(({ alternative }) => alternative);
}

function alternative(
  changes: readonly SetOtherwise[],
  setups: Alternative['setups'],
  shows: Showing,
  now: Showing,
  { isTroubled, turnsRound }: { readonly isTroubled: boolean; readonly turnsRound: boolean },
): Alternative {
  return {
    changes: changes.map(({ at, option: { spot, text }, from }) => ({
      at,
      kind: spot.kind,
      field: spot.name,
      stage: spot.stage === null ? null : spot.stage + 1,
      from,
      to: text,
    })),
    setups,
    shows,
    gains: gainsOf(now, shows, isTroubled),
    costs: [
      ...costsOf(now, shows, changes),
      ...(turnsRound ? [{ code: 'advice.cost.turns-round', facts: {} }] : []),
    ],
  };
}

/** Schoolbook's figure of the first over that of the second; nothing where one has none. */
export function schoolbookOf([a, b]: readonly Prediction[]): { readonly schoolbook?: number } {
  if (a === undefined || b === undefined || isNotDefined(a.textbook) || isNotDefined(b.textbook)) return {};
  return b.textbook.value > 0 ? { schoolbook: a.textbook.value / b.textbook.value } : {};
}

/** A share of groups has to move by this much to be told. */
const TOLD = 0.02;

function gainsOf(now: Showing, then: Showing, isTroubled: boolean): readonly Trade[] {
  const found: Trade[] = [];
  if (isTroubled)
    found.push({ code: `advice.gain.${now.graduations === null ? 'works' : 'clear'}`, facts: {} });
  const [a, b] = [now.chance, then.chance];
  if (b !== null) {
    if (a === null || b.once.order > a.once.order + TOLD)
      found.push(moved('advice.gain.order', a?.once.order ?? null, b.once.order));
    if (a === null || b.once.ratio > a.once.ratio + TOLD)
      found.push(moved('advice.gain.ratio', a?.once.ratio ?? null, b.once.ratio));
    if (a !== null && b.ratio > a.ratio * (1 + TOLD))
      found.push({ code: 'advice.gain.difference', facts: { from: a.ratio, to: b.ratio } });
  }
  const [few, many] = [now.graduations, then.graduations];
  if (many !== null && (few === null || many > few + 1))
    found.push({ code: 'advice.gain.graduations', facts: { graduations: Math.floor(many) } });
  return found;
}

const moved = (code: string, from: number | null, to: number): Trade =>
  from === null
    ? { code: `${code}.now`, facts: { to: percent(to) } }
    : { code, facts: { from: percent(from), to: percent(to) } };

function costsOf(now: Showing, then: Showing, changes: readonly SetOtherwise[]): readonly Trade[] {
  const count = changes.length;
  const found: Trade[] = [{ code: `advice.cost.${count === 1 ? 'change' : 'changes'}`, facts: { count } }];
  const parts = changes.filter(({ option }) => option.spot.kind === 'part').map(({ option }) => option.text);
  if (parts.length > 0) found.push({ code: 'advice.cost.parts', facts: { parts } });
  if (
    changes.some(({ at, option }) => at.length === 1 && option.spot.name === 'scale') &&
    then.chance !== null
  )
    found.push({ code: 'advice.cost.two-scales', facts: {} });
  if (changes.some(({ option }) => option.spot.name === 'read'))
    found.push({ code: 'advice.cost.way', facts: {} });
  if (now.chance !== null && then.chance !== null && then.chance.ratio < now.chance.ratio * (1 - TOLD))
    found.push({ code: 'advice.cost.difference', facts: { from: now.chance.ratio, to: then.chance.ratio } });
  if (now.graduations !== null && then.graduations !== null && then.graduations < now.graduations - 1)
    found.push({
      code: 'advice.cost.graduations',
      facts: { from: Math.floor(now.graduations), to: Math.floor(then.graduations) },
    });
  if (then.ofRange !== null && then.ofRange > Math.max(0.6, (now.ofRange ?? 0) + 0.1))
    found.push({ code: 'advice.cost.range', facts: { share: percent(then.ofRange) } });
  return found;
}

const percent = (share: number): string => `${Math.round(100 * share)}`;

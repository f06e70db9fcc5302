import { apparatusCopies } from '../uncertainty/apparatus-copies.ts';
import { builderFor, type CandidateSetup } from './candidate-setup.ts';
import { contrastOf, optionSets } from './contrast.ts';
import { makeSetup, type SetupDescription } from './make-setup.ts';
import { costOf, type Search, type SetOtherwise, turnsRound } from './pair-search.ts';
import { readingOdds } from './reading-odds.ts';
import type { Setup } from './setup.ts';
import { optionsFor } from './setup-options.ts';
import { type Option, spotKey, textAt } from './spot.ts';
import { useOf } from './trouble.ts';

export interface FoundSetup {
  readonly changes: readonly SetOtherwise[];
  readonly setup: Setup;
  /** Share of readings, over what the apparatus may be, that have a figure above the stop. */
  readonly isRead: number;
  readonly worth: number;
  /** The pull goes another way than before. */
  readonly turnsRound: boolean;
}

/** A setup alone is changed in at most so many things. */
const MOST_CHANGES = 2;
/** So many of the best are looked at closely. */
const LOOKED_AT = 24;
const QUICK_COPIES = 40;
/** Fewer readings than this with a figure: it does not work. Common practice, no source. */
export const READ_BY = 0.95;
/** More graduations than this are not better: common practice, no source. */
const ENOUGH = 20;
const CHANGE_COSTS = 1;

/**
 * The nearest setups that work, in place of one that does not: as few things set otherwise as may be, and
 * among those the most graduations. Each stands well on its scale at the best values, is read by 19 of 20
 * over what the apparatus may be, and the whole prediction finds nothing new against it. What it is compared
 * in with a partner is left alone, or there would be nothing to compare.
 */
export function searchCures(
  description: SetupDescription,
  partners: readonly SetupDescription[],
  search: Search,
): readonly FoundSetup[] {
  const builder = builderFor(description, search.known, search.budget);
  const found: { readonly options: readonly Option[]; readonly candidate: CandidateSetup; worth: number }[] =
    [];
  const compared = new Set(partners.flatMap((partner) => contrastOf(description, partner)).map(spotKey));
  const spots = optionsFor(description, search.free).filter(
    ([option]) => option !== undefined && !compared.has(spotKey(option.spot)),
  );
  for (const options of optionSets(spots, MOST_CHANGES)) {
    const candidate = options.length === 0 ? null : builder.with(options);
    if (candidate === null) continue;
    found.push({ options, candidate, worth: worthOf(candidate, options) });
  }
  const copies = apparatusCopies(QUICK_COPIES, search.seed);
  const hang = makeSetup(description).setup?.hang ?? null;
  return found
    .sort((one, other) => other.worth - one.worth)
    .slice(0, LOOKED_AT)
    .filter(({ candidate }) => builder.holds(candidate))
    .map(({ options, candidate: { setup }, worth }): FoundSetup => {
      const set = (option: Option): SetOtherwise => ({
        at: [description.mark],
        option,
        from: textAt(description, option.spot),
      });
      return {
        changes: options.map(set),
        setup,
        isRead: shareRead(setup, copies),
        worth,
        turnsRound: turnsRound(hang, setup.hang),
      };
    })
    .filter(({ isRead }) => isRead >= READ_BY);
}

const worthOf = ({ setup, best }: CandidateSetup, changes: readonly Option[]): number =>
  Math.min(1, (useOf(setup, best.upper)?.graduations ?? 0) / ENOUGH) -
  CHANGE_COSTS * changes.reduce((sum, { spot }) => sum + costOf(spot), 0);

/** Share of readings with a figure above the stop. */
export function shareRead(setup: Setup, copies: ReturnType<typeof apparatusCopies>): number {
  let sum = 0;
  for (let n = 0; n < copies.count; n += 1) {
    const odds = readingOdds(setup, copies.at(n));
    if (odds === null) continue;
    const stop = setup.watched === 'pull' ? Math.round((setup.scale?.stop ?? 0) / odds.step) : -1;
    odds.shares.forEach((share, k) => {
      if (odds.low + k > stop) sum += share;
    });
  }
  // The shares of one reading add up to 1 but for the last bits.
  return Math.min(1, sum / copies.count);
}

import { isNotDefined } from '../description/not-defined.ts';
import { apparatusCopies } from '../uncertainty/apparatus-copies.ts';
import { builderFor } from './candidate-setup.ts';
import { type ChanceToSee, COPIES, chanceToSee } from './chance-to-see.ts';
import type { SetupDescription } from './make-setup.ts';
import { LEAST_RATIO, type Search, worthOf } from './pair-search.ts';
import { fillings, optionsFor } from './setup-options.ts';
import type { Option, Spot } from './spot.ts';

/** What makes a second setup of a first, so that the two are worth comparing. */
export interface FoundPartner {
  /** Set otherwise in both: another load or another scale, where the first one's own shows too little. */
  readonly both: readonly Option[];
  /** Set otherwise in the second alone. */
  readonly options: readonly Option[];
  /** Whether the second asks for more than the first. */
  readonly asksMore: boolean;
  readonly chance: ChanceToSee;
  readonly worth: number;
}

/** Nobody overlooks half as much again; with less a pair is found where there is nothing better: common practice, no source. */
const CLEAR_RATIO = 1.5;

/** Another load or another scale shows nothing of the machine, and neither does another way of reading. */
const isInstrument = ({ kind, name }: Spot): boolean =>
  kind === 'part' && (name === 'load' || name === 'scale');
const isOfMachine = (spot: Spot): boolean => spot.kind !== 'setup field' && !isInstrument(spot);

/**
 * Setups that differ from one in a single thing of its machine, or in one that needs a part more, and show that to a class:
 * those whose difference is clear and is seen by most groups first. Each stands well on its scale, and the whole prediction
 * finds nothing new against it.
 */
export function searchPartners(first: SetupDescription, search: Search): readonly FoundPartner[] {
  const { known, budget, wanted, seed } = search;
  const builder = builderFor(first, known, budget);
  const copies = apparatusCopies(COPIES, seed);
  const all = optionsFor(first, search.free).flat();
  const single = all.filter(({ spot }) => isOfMachine(spot));
  const withPart = fillings(first, search.free).flatMap((filled) => single.map((option) => [filled, option]));
  const turns = [...single.map((option) => [option]), ...withPart];
  const shared = [[], ...all.filter(({ spot }) => isInstrument(spot)).map((option) => [option])];
  const found = shared.flatMap((both) =>
    turns.flatMap((options): readonly FoundPartner[] => {
      const [own, other] = [builder.with(both), builder.with([...both, ...options])];
      if (own === null || other === null || !builder.holds(own) || !builder.holds(other)) return [];
      const chance = chanceToSee(own.setup, other.setup, { wanted, copies, onceOnly: true });
      if (isNotDefined(chance) || chance.ratio < LEAST_RATIO) return [];
      const worth = worthOf(chance.once.ratio, chance.ratio, [...both, ...options], false);
      return [{ both, options, asksMore: other.best.figure > own.best.figure, chance, worth }];
    }),
  );
  const isClear = ({ chance }: FoundPartner): number => Number(chance.ratio >= CLEAR_RATIO);
  return found.toSorted((one, another) => isClear(another) - isClear(one) || another.worth - one.worth);
}

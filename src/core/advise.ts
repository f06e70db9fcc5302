import { isNotDefined, type NotDefined } from './description/not-defined.ts';
import { castRoles } from './files/casting.ts';
import { resolve } from './files/resolve.ts';
import type { OwnWords, Titled } from './files/titles.ts';
import type { KitPart } from './kit/kit.ts';
import {
  asKnown,
  descriptionOf,
  type Prepared,
  type PreparedSetup,
  type PreparedTable,
  readerOf,
} from './prepare.ts';
import {
  type Alternative,
  alternativePairs,
  alternativeSetups,
  type Showing,
  schoolbookOf,
  showingOf,
} from './setups/alternative.ts';
import { type ChanceToSee, chanceToSee, USUALLY_WANTED, type Wanted } from './setups/chance-to-see.ts';
import { searchCures } from './setups/cure-search.ts';
import type { SetupDescription } from './setups/make-setup.ts';
import { type Search, searchPairs } from './setups/pair-search.ts';
import { type FoundPartner, searchPartners } from './setups/partner-search.ts';
import { optionsFor } from './setups/setup-options.ts';
import { type Trouble, troublesOf } from './setups/trouble.ts';
import { type WantedScale, wantedScale } from './setups/wanted-scale.ts';
import { vocabulary } from './words.ts';

/** What a table shows to a class, what can't work there, and what would do better. */
export interface TableAdvice extends Titled {
  readonly table: string;
  readonly setups: readonly SetupAdvice[];
  readonly pairs: readonly PairAdvice[];
  readonly searched: Searched;
}

/** A setup that can't be used as it stands, or hardly, with the nearest that work; own cures only where no pair has one. */
export interface SetupAdvice {
  readonly at: PreparedSetup;
  readonly troubles: readonly Trouble[];
  readonly shows: Showing;
  readonly cures: readonly Alternative[];
  /** An alternative of one of its pairs cures it. */
  readonly isCuredWithPair: boolean;
  /** The scale that would do, where nothing in the kit does and another scale would. */
  readonly wants: WantedScale | null;
}

export interface PairAdvice {
  readonly first: string;
  readonly second: string;
  readonly shows: OwnWords | null;
  readonly chance: ChanceToSee | NotDefined;
  /** Nothing is in the way, and one reading at each setup shows order and ratio to the wanted share of groups. */
  readonly isGood: boolean;
  readonly now: Showing;
  /** Setups of the pair that others are compared with as well: what is changed in them changes there too. */
  readonly alsoWith: readonly { readonly setup: string; readonly others: readonly string[] }[];
  readonly alternatives: readonly Alternative[];
}

/** What the search went through, and where it stopped. */
export interface Searched {
  /** Setups that were built and looked at; 0 where nothing was searched. */
  readonly built: number;
  /** Everything within the bounds was looked at. */
  readonly isComplete: boolean;
  /** What could be set otherwise, with the number of its other values. */
  readonly spots: readonly {
    readonly field: string;
    readonly stage: number | null;
    readonly others: number;
  }[];
  /** Marks of the parts that were free to be put in. */
  readonly free: readonly string[];
}

export interface AdviceOptions {
  readonly wanted?: Wanted;
  readonly seed?: number;
  /** Only these tables; all where it is left out. */
  readonly tables?: readonly string[];
}

/** Setups that are built for one table at most, so that nobody waits. */
export const MOST_BUILT = 3000;

/**
 * Prepared tables -> what each pair shows to the class -> what stands in the way -> other setups from what is
 * in the kit that show it better, or that work where one does not.
 */
export function advise(prepared: Prepared, options: AdviceOptions = {}): readonly TableAdvice[] {
  const { kit, activity, visit, gravity } = prepared;
  if (kit === null || activity === null || gravity === null) return [];
  const resolved = resolve(kit, activity, visit, vocabulary);
  const reader = readerOf(activity);
  return prepared.tables
    .filter(({ mark }) => options.tables?.includes(mark) ?? true)
    .map((table) => {
      const found = resolved.tables.find((each) => each.table === table.mark);
      const descriptions = new Map(
        (found?.setups ?? []).map((setup) => [
          setup.mark,
          found === undefined ? null : descriptionOf(found, setup, gravity, reader),
        ]),
      );
      return adviceFor(table, descriptions, searchAt(prepared, table, options));
    });
}

/** What a search at a table is given. */
const searchAt = (prepared: Prepared, table: PreparedTable, { wanted, seed }: AdviceOptions): Search => ({
  free: freePartsAt(prepared, table),
  wanted: wanted ?? USUALLY_WANTED,
  seed: seed ?? 1,
  known: (setup) => asKnown(setup, prepared.bench?.known ?? null),
  budget: { left: MOST_BUILT },
});

/** A setup -> setups that differ from it in one thing and show a class the difference, best first. */
export function advisePartners(
  prepared: Prepared,
  mark: string,
  options: AdviceOptions = {},
): readonly FoundPartner[] {
  const { kit, activity, visit, gravity } = prepared;
  const table = prepared.tables.find(({ setups }) => setups.some(({ setup }) => setup.mark === mark));
  if (kit === null || activity === null || gravity === null || table === undefined) return [];
  const resolved = resolve(kit, activity, visit, vocabulary).tables.find((each) => each.table === table.mark);
  const setup = resolved?.setups.find((each) => each.mark === mark);
  if (resolved === undefined || setup === undefined) return [];
  const description = descriptionOf(resolved, setup, gravity, readerOf(activity));
  return description === null ? [] : searchPartners(description, searchAt(prepared, table, options));
}

type Descriptions = ReadonlyMap<string, SetupDescription | null>;

function adviceFor(table: PreparedTable, descriptions: Descriptions, search: Search): TableAdvice {
  const troubled = new Set(
    table.setups
      .filter(({ setup, prediction }) => troublesOf(setup, prediction).length > 0)
      .map(({ setup }) => setup.mark),
  );
  const pairs = pairsOf(table).map((pair) => pairAdvice(pair, table, troubled, descriptions, search));
  const cured = new Set(
    pairs
      .filter(({ alternatives }) => alternatives.length > 0)
      .flatMap(({ first, second }) => [first, second]),
  );
  const setups = table.setups
    .filter(({ setup }) => troubled.has(setup.mark))
    .map((at) => setupAdvice(at, cured.has(at.setup.mark), descriptions, search));
  return {
    table: table.mark,
    title: table.title,
    titles: table.titles,
    setups,
    pairs,
    searched: searchedAt(descriptions, search),
  };
}

interface Pair {
  readonly first: PreparedSetup;
  readonly second: PreparedSetup;
}

/** Partner setups, each pair once. */
function pairsOf({ setups }: PreparedTable): readonly Pair[] {
  return setups.flatMap((first, n): readonly Pair[] => {
    const second = setups.find(({ setup }) => setup.mark === first.setup.partner);
    if (second === undefined || second === first) return [];
    const isSaid = second.setup.partner === first.setup.mark && setups.indexOf(second) < n;
    return isSaid ? [] : [{ first, second }];
  });
}

function pairAdvice(
  { first, second }: Pair,
  table: PreparedTable,
  troubled: ReadonlySet<string>,
  descriptions: Descriptions,
  search: Search,
): PairAdvice {
  const { wanted, seed } = search;
  const setups = [first.setup, second.setup] as const;
  const chance = chanceToSee(...setups, {
    wanted,
    seed,
    ...schoolbookOf([first.prediction, second.prediction]),
  });
  const now = showingOf(setups, isNotDefined(chance) ? null : chance, seed);
  const isTroubled = setups.some(({ mark }) => troubled.has(mark)) || isNotDefined(chance);
  const isGood = !isTroubled && chance.once.order >= wanted.groups && chance.once.ratio >= wanted.groups;
  const [a, b] = setups.map(({ mark }) => descriptions.get(mark) ?? null);
  const isRead = setups.every(({ watched }) => watched !== 'ease');
  const alternatives =
    isGood || !isRead || a === null || a === undefined || b === null || b === undefined
      ? []
      : alternativePairs(searchPairs(a, b, search), now, isTroubled, search);
  return {
    first: first.setup.mark,
    second: second.setup.mark,
    shows: first.shows ?? second.shows,
    chance,
    isGood,
    now,
    alsoWith: setups.flatMap(({ mark, partner }) => {
      const others = table.setups
        .map((each) => each.setup)
        .filter((each) => !setups.includes(each) && (each.partner === mark || each.mark === partner))
        .map((each) => each.mark);
      return others.length === 0 ? [] : [{ setup: mark, others }];
    }),
    alternatives,
  };
}

function setupAdvice(
  at: PreparedSetup,
  isCured: boolean,
  descriptions: Descriptions,
  search: Search,
): SetupAdvice {
  const shows = showingOf([at.setup], null, search.seed);
  const description = descriptions.get(at.setup.mark) ?? null;
  const cures =
    isCured || description === null || at.setup.watched === 'ease'
      ? []
      : alternativeSetups(
          searchCures(description, partnersOf(description, descriptions), search),
          shows,
          search,
        );
  const wants = isCured || cures.length > 0 ? null : wantedScale(at.setup);
  return { at, troubles: troublesOf(at.setup, at.prediction), shows, cures, isCuredWithPair: isCured, wants };
}

/** The setups that one is compared with, either way. */
const partnersOf = ({ mark, partner }: SetupDescription, descriptions: Descriptions) =>
  [...descriptions.values()].filter(
    (each) => each !== null && (each.mark === partner || each.partner === mark),
  ) as readonly SetupDescription[];

/** Parts that nothing keeps from this table: there today, sound, no spare, and not on another table. */
function freePartsAt({ kit, activity, visit }: Prepared, table: PreparedTable): readonly KitPart[] {
  if (kit === null || activity === null) return [];
  const { casting } = castRoles(kit, activity, visit);
  const elsewhere = new Set(
    [...casting].flatMap(([mark, cast]) =>
      mark === table.mark ? [] : [...cast.values()].map((part) => part.mark),
    ),
  );
  const missing = new Set((visit?.missing ?? []).map(({ mark }) => mark));
  return kit.parts.filter(
    ({ mark, isFaulty, isSpare }) => !isFaulty && !isSpare && !missing.has(mark) && !elsewhere.has(mark),
  );
}

function searchedAt(descriptions: Descriptions, { free, budget }: Search): Searched {
  const built = MOST_BUILT - budget.left;
  const one = [...descriptions.values()].find((each) => each !== null) ?? null;
  return {
    built,
    isComplete: budget.left > 0,
    spots:
      one === null || built === 0
        ? []
        : optionsFor(one, free).flatMap((options) => {
            const spot = options[0]?.spot;
            if (spot === undefined) return [];
            return [
              {
                field: spot.name,
                stage: spot.stage === null ? null : spot.stage + 1,
                others: options.length,
              },
            ];
          }),
    free: free.map(({ mark }) => mark),
  };
}

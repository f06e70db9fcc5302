import type { Apparatus } from './apparatus.ts';

/**
 * One thing that may be true of a table as a whole. `apparatus`: how far the kit is from its file; `noisier`:
 * how much more readings scatter (as a variance) than a careful hand's; `change`: whether most readings are off in the
 * same way, because the station has changed or because the card leads everybody there.
 */
export interface TableHypothesis {
  readonly apparatus: ApparatusIs;
  readonly noisier: number;
  readonly change: TableChange | null;
  readonly prior: number;
}

export type ApparatusIs = 'as the file says' | 'farther off' | 'off the list';

export interface TableChange {
  readonly kind: 'station' | 'card';
  /** The mistake, as it is called for the whole table. */
  readonly key: string;
  /** Place of the setup in the table; `null` where it is all of them. */
  readonly setup: number | null;
  /** From this group on, in the order in which groups came to the table. */
  readonly from: number;
}

/** A mistake that several groups' readings point to, and the setups where they do. */
export interface Suspect {
  readonly key: string;
  /** Base rate, as a share of those of all mistakes at the table that a card can lead to. */
  readonly ofCard: number;
  /** The same of those that the station keeps for the next group; 0 where it can't. */
  readonly ofStation: number;
  readonly setups: readonly number[];
}

/** Shares of tables, all of them assumptions: common practice, no source. */
export const TABLE_RATES = {
  /** The kit is farther off its file than the file allows: three times its doubts. */
  'farther off': 0.1,
  /** Something is off that is not on any list: all figures move together, by half of themselves. */
  'off the list': 0.015,
  /** A group left the station changed. */
  station: 0.04,
  /** The card leads to the same mistake. */
  card: 0.04,
  /** Hands scatter more than the sourced share: half as much again. */
  noisier: 0.3,
} as const;

const FARTHER = 3;
const OFF_TOGETHER = 0.4;
const OFF_EACH = 0.15;
const NOISIER = 2.25;

/** A change with its prior; `null` is none. */
export interface PossibleChange {
  readonly change: TableChange | null;
  readonly prior: number;
}

/** Everything that may have changed at a table for so many groups, and that nothing has. */
export function possibleChanges(suspects: readonly Suspect[], groups: number): readonly PossibleChange[] {
  const changes = suspects.flatMap((suspect) => changesOf(suspect, groups));
  const plain = 1 - changes.reduce((sum, { prior }) => sum + prior, 0);
  return [{ change: null, prior: plain }, ...changes];
}

/** A change under every state of the kit and of the hands. */
export const hypothesesOf = ({ change, prior }: PossibleChange): readonly TableHypothesis[] =>
  apparatusCases.flatMap(([apparatus, share]) =>
    noiseCases.map(([noisier, often]) => ({ apparatus, noisier, change, prior: prior * share * often })),
  );

const apparatusCases: readonly (readonly [ApparatusIs, number])[] = [
  ['as the file says', 1 - TABLE_RATES['farther off'] - TABLE_RATES['off the list']],
  ['farther off', TABLE_RATES['farther off']],
  ['off the list', TABLE_RATES['off the list']],
];
const noiseCases: readonly (readonly [number, number])[] = [
  [1, 1 - TABLE_RATES.noisier],
  [NOISIER, TABLE_RATES.noisier],
];

/** A change of the whole table or of one setup; by the station from any group on, by the card from the first. */
function changesOf({ key, ofCard, ofStation, setups }: Suspect, groups: number) {
  const scopes = setups.length < 2 ? [null] : [null, ...setups];
  return scopes.flatMap((setup) => {
    const wide = scopes.length === 1 ? 1 : setup === null ? 0.5 : 0.5 / setups.length;
    const card = {
      change: { kind: 'card' as const, key, setup, from: 0 },
      prior: TABLE_RATES.card * ofCard * wide,
    };
    const cards = ofCard > 0 ? [card] : [];
    if (ofStation === 0) return cards;
    // Half of them stood so from the first group on.
    const froms = Array.from({ length: Math.max(groups - 1, 1) }, (_, from) => from);
    return [
      ...cards,
      ...froms.map((from) => ({
        change: { kind: 'station' as const, key, setup, from },
        prior:
          TABLE_RATES.station *
          ofStation *
          wide *
          (froms.length === 1 ? 1 : from === 0 ? 0.5 : 0.5 / (froms.length - 1)),
      })),
    ];
  });
}

/** Prior covariance of the figures' distances from their best values. */
export function priorOf({ setups, prior }: Apparatus, is: ApparatusIs): readonly (readonly number[])[] {
  if (is === 'as the file says') return prior;
  if (is === 'farther off') return prior.map((row) => row.map((each) => each * FARTHER ** 2));
  // What is off moves the figures the way they go together; where they have nothing in common, each by itself.
  const signs = setups.map((_, i) => Math.sign(prior[0]?.[i] ?? 0));
  return prior.map((row, i) =>
    row.map((each, j) => {
      const [a, b] = [setups[i]?.middle ?? 0, setups[j]?.middle ?? 0];
      const together = i === j ? 1 : (signs[i] ?? 0) * (signs[j] ?? 0);
      return each + OFF_TOGETHER ** 2 * together * a * b + (i === j ? (OFF_EACH * a) ** 2 : 0);
    }),
  );
}

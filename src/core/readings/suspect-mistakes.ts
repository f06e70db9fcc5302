import type { Cause } from './causes.ts';
import { isZeroMistake } from './doing-mistakes.ts';
import { tableKeyOf } from './explanation.ts';
import type { TakenReading } from './station-table.ts';
import type { Suspect } from './table-hypothesis.ts';

/** More mistakes than this are not held to be everybody's. */
const MOST_SUSPECTS = 3;

/** Mistakes that the readings of at least two groups point to, the most often pointed to first. */
export function suspectsOf(readings: readonly TakenReading[]): readonly Suspect[] {
  const found = new Map<string, Map<number, Set<string>>>();
  for (const { points, setup, reading } of readings)
    for (const key of points) {
      const at = found.get(key) ?? new Map<number, Set<string>>();
      at.set(setup, (at.get(setup) ?? new Set<string>()).add(reading.group));
      found.set(key, at);
    }
  const several = [...found].filter(
    ([, at]) => new Set([...at.values()].flatMap((each) => [...each])).size >= 2,
  );
  if (several.length === 0) return [];
  const rates = ratesOf(readings);
  const all = [...rates.values()];
  const ofCard = sumOf(all.filter(({ byCard }) => byCard));
  const ofStation = sumOf(all.filter(({ stays }) => stays));
  return several
    .map(([key, at]) => {
      const { rate = 0, stays = false, byCard = false } = rates.get(key) ?? {};
      return {
        key,
        count: [...at.values()].reduce((sum, groups) => sum + groups.size, 0),
        // A table has one scale: its zero is the same at all of them.
        setups: isZeroMistake(key)
          ? []
          : [...at].flatMap(([setup, groups]) => (groups.size >= 2 ? [setup] : [])),
        ofCard: byCard ? rate / ofCard : 0,
        ofStation: stays ? rate / ofStation : 0,
      };
    })
    .filter(({ ofCard: card, ofStation: station }) => card + station > 0)
    .sort(
      (a, b) =>
        b.count - a.count || b.ofCard + b.ofStation - a.ofCard - a.ofStation || (a.key < b.key ? -1 : 1),
    )
    .slice(0, MOST_SUSPECTS);
}

interface Possible {
  readonly rate: number;
  /** Whether the station can keep it for the next group. */
  readonly stays: boolean;
  /** Whether a card can lead there: no card swaps digits. */
  readonly byCard: boolean;
}

const sumOf = (all: readonly Possible[]): number => all.reduce((sum, { rate }) => sum + rate, 0);

/** Base rates of the mistakes that can be made at the setups of these readings. */
function ratesOf(readings: readonly TakenReading[]): ReadonlyMap<string, Possible> {
  const rates = new Map<string, Possible>();
  const seen = new Set<number>();
  for (const { setup, causes } of readings) {
    if (seen.has(setup)) continue;
    seen.add(setup);
    for (const cause of causes) {
      if (cause.kind === 'good') continue;
      rates.set(tableKeyOf(cause), { rate: cause.rate, stays: stays(cause), byCard: byCard(cause) });
    }
  }
  return rates;
}

/** What a group can leave behind: weights, pins, line, the zero of a scale, two setups in each other's place. */
export const stays = ({ code, persists }: Pick<Cause, 'code' | 'persists'>): boolean =>
  persists === 'station' || isZeroMistake(code) || code === 'setup.swapped';

/** A slip of one pen is no card's. */
export const byCard = ({ kind, persists }: Pick<Cause, 'kind' | 'persists'>): boolean =>
  kind === 'doing' || persists !== 'reading';

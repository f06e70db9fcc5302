import type { GoodRange } from '../setups/prediction.ts';
import type { ChangedStation, Judgement, LikelyCause } from './judgement.ts';
import type { StationTable, TakenReading } from './station-table.ts';
import { tieOf } from './telling-test.ts';

const LEAST_SHOWN = 0.01;

/** A reading with its verdict, once the probabilities of its causes are known. */
export function judgementOf(
  table: StationTable,
  taken: TakenReading,
  causes: readonly LikelyCause[],
  changed: ChangedStation | null,
): Judgement {
  const { opened } = taken;
  if (opened.written === null) return opened.settled;
  const { base } = opened;
  // Who put it right, or was not led astray, is judged by the card.
  const isByCard = causes.some(({ kind, probability }) => kind === 'good' && probability > 0.5);
  const station = isByCard ? null : changed;
  const verdict = verdictOf(base, causes, station);
  const setup = table.apparatus.setups[taken.setup]?.at.setup;
  return {
    ...base,
    causes: causes.filter(({ probability }) => probability >= LEAST_SHOWN).map(told),
    station,
    verdict,
    tie: verdict === 'look again' && setup !== undefined ? tieOf(setup, causes) : null,
  };
}

/**
 * What the paper calls good is never queried: a mistake that lies within the range can't be told apart.
 * Outside it a reading is queried where mistakes and "unexplained" together are more probable than a
 * reading that was taken well, be it from a changed station.
 */
function verdictOf(
  base: Judgement,
  causes: readonly LikelyCause[],
  station: ChangedStation | null,
): Judgement['verdict'] {
  const isIn = (range: GoodRange | null): boolean => {
    const slack = 1e-9 * Math.abs(base.value ?? 0);
    return range !== null && (base.value ?? 0) >= range.from - slack && (base.value ?? 0) <= range.to + slack;
  };
  const well = causes.reduce(
    (sum, { kind, probability, ofStation }) => sum + (kind === 'good' ? probability : ofStation),
    0,
  );
  // Where the pointer rests on its stop or stands beyond its marks there is nothing to be a little off by.
  if (base.value === null) return well > 0.5 ? 'good' : 'look again';
  if (station !== null && (isIn(station.good) || well > 0.5))
    return isIn(station.good) || isIn(base.good) ? 'good' : 'a little off';
  if (station !== null) return 'look again';
  // No range: the pointer rests on its stop, and so it was written.
  if (base.good === null) return causes[0]?.kind === 'good' ? 'good' : 'look again';
  if (isIn(base.good)) return 'good';
  return well > 0.5 ? 'a little off' : 'look again';
}

/** Without what only the reckoning needs. */
const told = ({ code, facts, kind, probability, wouldShow, ofStation }: LikelyCause): LikelyCause =>
  facts === undefined
    ? { code, kind, probability, wouldShow, ofStation }
    : { code, facts, kind, probability, wouldShow, ofStation };

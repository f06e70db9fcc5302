import { type Seconds, seconds } from '../quantities/brands.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { studentShare } from '../uncertainty/probability.ts';
import { SPREAD_OF_GROUPS } from './assumed-times.ts';
import { ASSUMED_SPLIT, deviationOf, logNormalOf } from './chance-times.ts';

/** How long one group was at a table, or one reset took, on a day. */
export interface PastTime {
  /** Year-month-day, or anything else that is the same for one visit. */
  readonly date: string;
  readonly lasted: Seconds;
}

/** What past visits make of a table's time. */
export interface TimeFromVisits {
  /** What to plan with: as often sooner as later, and how far a group of a coming visit may be from it. */
  readonly time: Measured<Seconds>;
  /** ln of that time follows t: what is known after few visits. */
  readonly law: StudentLaw;
  readonly used: number;
  /** Places in the list of times that were left aside: far off from what all others say. */
  readonly setAside: readonly number[];
}

export interface StudentLaw {
  readonly centre: number;
  readonly scale: number;
  readonly freedom: number;
}

/** The activity's time counts as much as so many visits of one group each. Common practice, no source. */
const WORTH = 6;
/** What is rarer than this by what all others say is left aside: a fire drill, a slip of the pen. */
const TOO_RARE = 0.001;

/**
 * A table's time from past visits. ln t is normal about a centre that varies by the day (the table's share of the
 * variance, `ASSUMED_SPLIT`); the activity's time is the prior, worth six stays. With y the logarithms and V their
 * correlation (1, and the share a between two of one day), the posterior is normal-inverse-gamma (conjugate; Gelman and
 * others, Bayesian Data Analysis, ch. 3; from memory): κ = κ0 + Σ w, centre = (κ0 μ0 + Σ w ȳ)/κ with the weight
 * w = n/(1 + (n - 1) a) of a day with n stays, ν = ν0 + n. A coming stay is then t with scale s √(1 + 1/κ).
 * Without past times it gives the activity's time back.
 *
 * Times that the others would call rarer than one in a thousand are set aside: a quarter of them at most and at least
 * one, and one whole day where there are three or more.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * timeFromVisits(exactly(seconds(360)), [{ date: '2026-05-12', lasted: seconds(480) }]).time.value // => 375
 */
export function timeFromVisits(expected: Measured<Seconds>, past: readonly PastTime[]): TimeFromVisits {
  const prior = priorOf(expected);
  const noTimes = past.flatMap(({ lasted }, n) => (lasted > 0 ? [] : [n]));
  const setAside = new Set(noTimes);
  const most = Math.max(1, Math.floor((past.length - noTimes.length) / 4));
  for (let wasDay = false; ; ) {
    const odd = oddest(prior, past, setAside, wasDay);
    if (odd === null || odd.chance >= TOO_RARE) break;
    if (odd.places.length === 1 && setAside.size - noTimes.length >= most) break;
    wasDay ||= odd.places.length > 1;
    for (const place of odd.places) setAside.add(place);
  }
  const used = past.filter((_, n) => !setAside.has(n));
  const law = lawOf(posterior(prior, used));
  return {
    time: timeOf(expected, law, used),
    law,
    used: used.length,
    setAside: [...setAside].sort((a, b) => a - b),
  };
}

/** Normal-inverse-gamma: ln t is about `centre`, known as from `worth` stays; `squares`/`freedom` is its variance. */
interface Belief {
  readonly centre: number;
  readonly worth: number;
  readonly freedom: number;
  readonly squares: number;
}

function priorOf(expected: Measured<Seconds>): Belief {
  const { median, sigma } = logNormalOf(expected);
  const spread = sigma === 0 ? SPREAD_OF_GROUPS : sigma;
  return {
    centre: Math.log(Math.max(median, 1)),
    worth: WORTH,
    freedom: WORTH,
    squares: (WORTH * spread * spread) / (1 + 1 / WORTH),
  };
}

function posterior(prior: Belief, times: readonly PastTime[]): Belief {
  const share = ASSUMED_SPLIT.table;
  const days = [...new Set(times.map(({ date }) => date))].map((day) => {
    const logs = times.filter(({ date }) => date === day).map(({ lasted }) => Math.log(lasted));
    const mean = logs.reduce((sum, each) => sum + each, 0) / logs.length;
    return {
      mean,
      weight: logs.length / (1 + (logs.length - 1) * share),
      within: logs.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (1 - share),
    };
  });
  const worth = prior.worth + days.reduce((sum, { weight }) => sum + weight, 0);
  const centre =
    (prior.worth * prior.centre + days.reduce((sum, { weight, mean }) => sum + weight * mean, 0)) / worth;
  const squares = days.reduce(
    (sum, { weight, mean, within }) => sum + within + weight * (mean - centre) ** 2,
    prior.squares + prior.worth * (prior.centre - centre) ** 2,
  );
  return { centre, worth, freedom: prior.freedom + times.length, squares };
}

/** Of the mean of `count` stays of a coming day. */
function lawOf({ centre, worth, freedom, squares }: Belief, count = 1): StudentLaw {
  const ofMean = (1 + (count - 1) * ASSUMED_SPLIT.table) / count;
  return { centre, scale: Math.sqrt((squares / freedom) * (ofMean + 1 / worth)), freedom };
}

interface Odd {
  readonly places: readonly number[];
  readonly chance: number;
}

/** The time, or the day, that is rarest by what all others say. */
function oddest(
  prior: Belief,
  past: readonly PastTime[],
  setAside: ReadonlySet<number>,
  wasDay: boolean,
): Odd | null {
  const kept = past.flatMap((_, n) => (setAside.has(n) ? [] : [n]));
  const days = [...new Set(kept.map((n) => past[n]?.date))];
  const ofDay = days.map((day) => kept.filter((n) => past[n]?.date === day));
  const candidates = [
    ...kept.map((n) => [n]),
    ...(days.length > 2 && !wasDay ? ofDay.filter((places) => places.length > 1) : []),
  ];
  const odds = candidates.map((places): Odd => {
    const others = kept.filter((n) => !places.includes(n)).map((n) => past[n] as PastTime);
    const law = lawOf(posterior(prior, others), places.length);
    const mean = places.reduce((sum, n) => sum + Math.log((past[n] as PastTime).lasted), 0) / places.length;
    const chance = 2 * studentShare(-Math.abs(mean - law.centre) / law.scale, law.freedom);
    return { places, chance };
  });
  return odds.reduce<Odd | null>(
    (least, odd) => (least === null || odd.chance < least.chance ? odd : least),
    null,
  );
}

/** The law as a written time: its middle as the value, its scale as the spread. */
function timeOf(
  expected: Measured<Seconds>,
  { centre, scale }: StudentLaw,
  used: readonly PastTime[],
): Measured<Seconds> {
  if (used.length === 0) return expected;
  const value = seconds(Math.max(1, Math.round(Math.exp(centre))));
  return measured(value, {
    id: expected.parts[0]?.unknown.id ?? 'past visits',
    u: deviationOf({ median: value, sigma: scale }),
    shape: 'normal',
    origin: 'stated',
    source: 'past visits',
  });
}

import type { Seconds } from '../quantities/brands.ts';
import { seconds } from '../quantities/brands.ts';
import type { DayTime } from './day-time.ts';
import type { DayWords } from './day-words.ts';
import type { Visit } from './visit-file.ts';

/** One class of a visit with its own words, and the visit's where it has none. */
export interface ClassOfDay {
  /** `null` where the visit is of one class. */
  readonly label: string | null;
  /** Since midnight; `null` where nobody says. */
  readonly starts: Seconds | null;
  /** `null` where nobody says. */
  readonly lasts: Seconds | null;
  readonly pupils: number | null;
  readonly groups: number | null;
  readonly day: DayWords;
  readonly visit: Visit | null;
}

/** The classes of a visit in the order of the day; one without a label where it lists none. */
export function classesOf(visit: Visit | null, day: DayWords): readonly ClassOfDay[] {
  const whole = (time: number | undefined): Seconds | null =>
    time === undefined ? null : seconds(Math.round(time));
  const shared = { day, visit };
  if (day.classes.length === 0)
    return [
      {
        ...shared,
        label: null,
        starts: day.starts,
        lasts: whole(visit?.period?.value),
        pupils: visit?.pupils ?? null,
        groups: visit?.groups ?? null,
      },
    ];
  return day.classes.map((each) => ({
    ...shared,
    label: each.label,
    starts: each.starts,
    lasts: whole((each.period ?? visit?.period)?.value),
    pupils: each.pupils ?? visit?.pupils ?? null,
    // A class that says only how many pupils it has is not in as many groups as another one.
    groups: each.groups ?? (each.pupils === null || day.groupSize === null ? (visit?.groups ?? null) : null),
  }));
}

/** A time of the day as seconds since the class began; `null` where it is not within its period. */
export function intoPeriod(
  time: DayTime,
  { starts, lasts }: { readonly starts: Seconds | null; readonly lasts: Seconds },
): Seconds | null {
  if (time.since === 'midnight' && starts === null) return null;
  const at = time.since === 'start' ? time.time : time.time - (starts ?? 0);
  return at < 0 || at > lasts ? null : seconds(at);
}

/** A stretch of the day within the class's period; `null` where the two do not meet. */
export function stretchOf(
  from: DayTime | null,
  until: DayTime | null,
  period: { readonly starts: Seconds | null; readonly lasts: Seconds },
): { readonly from: Seconds; readonly to: Seconds | null } | null {
  const into = (time: DayTime): number =>
    time.since === 'start' ? time.time : time.time - (period.starts ?? 0);
  const begin = from === null ? 0 : into(from);
  const end = until === null ? null : into(until);
  if (begin >= period.lasts || (end !== null && end <= 0)) return null;
  return { from: seconds(Math.max(0, begin)), to: end === null || end >= period.lasts ? null : seconds(end) };
}

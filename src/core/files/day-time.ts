import { type Seconds, seconds } from '../quantities/brands.ts';
import { readQuantity } from '../quantities/read-quantity.ts';
import { atValue, type Context, type Path } from './context.ts';

/** A time of the day, as on a clock or as what has passed of the period. */
export interface DayTime {
  /** `midnight`: by the clock. `start`: since the period began. */
  readonly since: 'midnight' | 'start';
  readonly time: Seconds;
  readonly path: Path;
}

/**
 * Seconds since midnight of a time on a 24-hour clock; `null` where it is none.
 *
 * @example clockTime('9:15') // => 33300
 * @example clockTime('24:00') // => null
 */
export function clockTime(text: string): Seconds | null {
  const found = /^(\d{1,2}):(\d{2})$/.exec(text);
  const [hours, minutes] = [Number(found?.[1]), Number(found?.[2])];
  return found === null || hours > 23 || minutes > 59 ? null : seconds(3600 * hours + 60 * minutes);
}

/** A clock time alone, as a period starts; says so where it is none. */
export function readClockTime(text: string, path: Path, context: Context): Seconds | null {
  const time = clockTime(text);
  if (time === null) atValue(context, path, 'not-a-clock-time', { written: text });
  return time;
}

/** A clock time, or minutes since the period began; says so where it is neither. */
export function readDayTime(text: string, path: Path, context: Context): DayTime | null {
  const clock = clockTime(text);
  if (clock !== null) return { since: 'midnight', time: clock, path };
  const read = readQuantity(text, { dimensions: ['time'], decimal: context.decimal });
  if (read.kind === 'written' && read.value >= 0)
    return { since: 'start', time: seconds(Math.round(read.value)), path };
  atValue(context, path, 'not-a-time', { written: text });
  return null;
}

/** Says so where a time with a beginning and an end runs backwards, as far as the two can be compared. */
export function refuseBackwards(from: DayTime | null, until: DayTime | null, context: Context): void {
  if (from !== null && until !== null && from.since === until.since && until.time <= from.time)
    atValue(context, until.path, 'ends-before-it-begins');
}

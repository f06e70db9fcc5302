import { type Seconds, seconds } from '../quantities/brands.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';

const MINUTE = 60;

/**
 * What is taken where nobody says how long something lasts. All of it common practice without a source;
 * each use is told as assumed, so that somebody writes down what is true of her tables.
 */
export const assumedTimes = {
  introduction: seconds(5 * MINUTE),
  talkAtTheEnd: seconds(5 * MINUTE),
  walk: seconds(30),
  reset: seconds(MINUTE),
  /** To find the table, read the card and share out who pulls, reads, writes and checks. */
  settling: seconds(2 * MINUTE),
  /** To set up, take and write one reading with its computed columns. */
  perSetup: seconds(2 * MINUTE),
  period: seconds(45 * MINUTE),
  groups: 6,
  adults: 1,
} as const;

/** How far groups differ in how long they take: standard deviation as a share. Common practice, no source. */
export const SPREAD_OF_GROUPS = 0.15;

/**
 * How long a group is at a table with so many setups to read, where the activity doesn't say.
 *
 * @example assumedStay('7', 3).value // => 480
 */
export const assumedStay = (table: string, setups: number): Measured<Seconds> =>
  spread(`${table}/takes`, seconds(assumedTimes.settling + setups * assumedTimes.perSetup));

/** A reset of which nothing is said. */
export const assumedReset = (table: string): Measured<Seconds> =>
  spread(`${table}/reset`, assumedTimes.reset);

/**
 * A time in whole seconds. Where it was written without ± or range, how far groups differ is assumed: the
 * last digit of "6 min" tells how it was rounded, and nothing of the groups.
 */
export function groupTime(id: string, written: Measured<Seconds>): Measured<Seconds> {
  const value = seconds(Math.round(written.value));
  const isBare = written.parts.some(({ unknown }) => unknown.origin === 'bare');
  return isBare ? spread(id, value) : { ...written, value };
}

const spread = (id: string, value: Seconds): Measured<Seconds> =>
  measured(value, {
    id,
    u: SPREAD_OF_GROUPS * value,
    shape: 'normal',
    origin: 'assumed',
    source: 'common practice, no source',
  });

import type { PeriodClock } from '../../core/rotation/class-period.ts';

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

/**
 * How long something lasts, to the second: minutes also beyond an hour, as a period is counted.
 *
 * @example lengthText(390) // => '6 min 30 s'
 * @example lengthText(4200) // => '70 min'
 */
export function lengthText(time: number): string {
  const whole = Math.round(Math.abs(time));
  const [minutes, rest] = [Math.floor(whole / MINUTE), whole % MINUTE];
  const sign = time < 0 && whole > 0 ? '-' : '';
  if (minutes === 0 && rest > 0) return `${sign}${rest} s`;
  return `${sign}${minutes} min${rest === 0 ? '' : ` ${rest} s`}`;
}

/**
 * A time of day on a 24-hour clock; seconds only where they are not 0.
 *
 * @example clockText(32700) // => '9:05'
 * @example clockText(32730) // => '9:05:30'
 */
export function clockText(sinceMidnight: number): string {
  const whole = ((Math.round(sinceMidnight) % DAY) + DAY) % DAY;
  const two = (number: number): string => String(number).padStart(2, '0');
  const rest = whole % MINUTE;
  return `${Math.floor(whole / HOUR)}:${two(Math.floor((whole % HOUR) / MINUTE))}${rest === 0 ? '' : `:${two(rest)}`}`;
}

/**
 * The clock by which a period's times are told: none where it goes on past midnight, since 1:45 may be of either day;
 * times are then minutes from the start.
 *
 * @example clockTold({ clock: { date: null, starts: 33300 }, lasts: 60000 }).starts // => null
 */
export const clockTold = ({
  clock,
  lasts,
}: {
  readonly clock: PeriodClock;
  readonly lasts: number;
}): PeriodClock =>
  clock.starts !== null && clock.starts + lasts >= DAY ? { ...clock, starts: null } : clock;

/**
 * A moment of a period: the time of day where the visit says when it starts, else minutes from the start.
 *
 * @example momentText({ date: null, starts: null }, 390) // => '6 min 30 s'
 */
export const momentText = ({ starts }: PeriodClock, at: number): string =>
  starts === null ? lengthText(at) : clockText(starts + at);

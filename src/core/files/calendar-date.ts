import { atValue, type Context, type Path } from './context.ts';

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/**
 * Whether a text is a day of the calendar, written year-month-day so that dates sort as text.
 *
 * @example isCalendarDate('2024-02-29') // => true
 * @example isCalendarDate('2026-02-29') // => false
 */
export function isCalendarDate(text: string): boolean {
  const found = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (found === null) return false;
  const [year, month, day] = [Number(found[1]), Number(found[2]), Number(found[3])];
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = (DAYS[month - 1] ?? 0) + (month === 2 && isLeap ? 1 : 0);
  return day >= 1 && day <= days;
}

/** Says so where a text is no day of the calendar. */
export function checkDate(text: string, path: Path, context: Context): boolean {
  if (isCalendarDate(text)) return true;
  atValue(context, path, 'not-a-date', { written: text });
  return false;
}

/**
 * The day after a day of the calendar.
 *
 * @example nextDay('2026-12-31') // => '2027-01-01'
 * @example nextDay('2024-02-28') // => '2024-02-29'
 */
export function nextDay(date: string): string {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  const later = [dayText(year, month, day + 1), dayText(year, month + 1, 1), dayText(year + 1, 1, 1)];
  return later.find(isCalendarDate) ?? date;
}

const dayText = (year: number, month: number, day: number): string =>
  `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;

import { nextDay } from '../../core/files/calendar-date.ts';
import type { Seconds } from '../../core/quantities/brands.ts';
import { contentLine, textValue } from './content-line.ts';

/** Something with a beginning and an end, by the clock on the wall. */
export interface CalendarEvent {
  /** The same whenever the same thing is written again, so that a calendar moves it and has it once. */
  readonly uid: string;
  /** Year-month-day. */
  readonly date: string;
  /** Since midnight of that day. */
  readonly from: Seconds;
  readonly to: Seconds;
  readonly summary: string;
  readonly description: string;
  readonly categories: readonly string[];
}

const PRODUCT = '-//Handspike//Rotation//EN';

/**
 * A calendar as a text (RFC 5545). Times are floating (3.3.5, form 1): the clock on the wall where the
 * tables stand. `stamp` is when it was written, in UTC, as `20260512T064500Z`.
 */
export function calendarText(events: readonly CalendarEvent[], stamp: string): string {
  return [
    contentLine('BEGIN', 'VCALENDAR'),
    contentLine('VERSION', '2.0'),
    contentLine('PRODID', PRODUCT),
    contentLine('CALSCALE', 'GREGORIAN'),
    ...events.map((event) => eventText(event, stamp)),
    contentLine('END', 'VCALENDAR'),
  ].join('');
}

const eventText = (event: CalendarEvent, stamp: string): string =>
  [
    contentLine('BEGIN', 'VEVENT'),
    contentLine('UID', textValue(event.uid)),
    contentLine('DTSTAMP', stamp),
    contentLine('DTSTART', localTime(event.date, event.from)),
    contentLine('DTEND', localTime(event.date, event.to)),
    contentLine('SUMMARY', textValue(event.summary)),
    ...(event.description === '' ? [] : [contentLine('DESCRIPTION', textValue(event.description))]),
    ...(event.categories.length === 0
      ? []
      : [contentLine('CATEGORIES', event.categories.map(textValue).join(','))]),
    contentLine('END', 'VEVENT'),
  ].join('');

const DAY = 86400;

/**
 * A local time without a zone; what is later than midnight is on the next day.
 *
 * @example localTime('2026-05-12', 33300 as never) // => '20260512T091500'
 */
export function localTime(date: string, since: Seconds): string {
  if (since >= DAY) return localTime(nextDay(date), (since - DAY) as Seconds);
  const two = (n: number): string => String(n).padStart(2, '0');
  const [hours, minutes, rest] = [Math.floor(since / 3600), Math.floor(since / 60) % 60, since % 60];
  return `${date.replaceAll('-', '')}T${two(hours)}${two(minutes)}${two(Math.floor(rest))}`;
}

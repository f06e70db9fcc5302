import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { seconds } from '../../src/core/quantities/brands.ts';
import { calendarText } from '../../src/documents/calendar/calendar-text.ts';
import { type ReadEvent, readByIcalJs, readByTsIcs } from './calendar-readers.ts';
import { record } from './record.ts';

const TOPIC = 'exchange-standards';
interface Case {
  readonly id: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: Readonly<Record<string, string>>;
  readonly expected: Readonly<Record<string, unknown>>;
}
const { cases } = JSON.parse(
  readFileSync(new URL(`../reference/${TOPIC}.json`, import.meta.url), 'utf8'),
) as { readonly cases: readonly Case[] };

function caseNamed(id: string): Case {
  const found = cases.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no case ${id}`);
  return found;
}

const kept = (at: Case, quantity: string, expected: string | number, got: string | number): void =>
  record({
    topic: TOPIC,
    id: at.id,
    basis: at.basis,
    source: `${at.source.title}, ${at.source.section}`,
    quantity,
    expected: typeof expected === 'string' ? expected.replaceAll('\n', '\\n') : expected,
    got: typeof got === 'string' ? got.replaceAll('\n', '\\n') : got,
    unit: typeof expected === 'number' ? 'min' : 'text',
    tolerance: null,
  });

/** RFC 5545, 3.1, 3.3.11 and 3.6.1. */
describe('a calendar with one event', () => {
  const at = caseNamed('ical-parse-minimal-event');
  const { SUMMARY, DESCRIPTION, UID, duration_minutes } = at.expected as Readonly<Record<string, string>> & {
    readonly duration_minutes: number;
  };
  const wanted: ReadEvent = {
    uid: UID ?? '',
    summary: SUMMARY ?? '',
    description: DESCRIPTION ?? '',
    start: '2026-09-15T09:00:00',
    minutes: duration_minutes,
  };
  const ours = calendarText(
    [
      {
        uid: wanted.uid,
        date: '2026-09-15',
        from: seconds(9 * 3600),
        to: seconds(9 * 3600 + 60 * duration_minutes),
        summary: wanted.summary,
        description: wanted.description,
        categories: [],
      },
    ],
    '20260901T080000Z',
  );

  it.each([
    ['ical.js', readByIcalJs],
    ['ts-ics', readByTsIcs],
  ])('is understood by %s as the published text of the same event is', (_, reader) => {
    expect(at.expected.DTSTART).toBe('2026-09-15T09:00:00 local');
    expect(reader(at.inputs.ics ?? '')).toEqual([wanted]);
    expect(reader(ours)).toEqual([wanted]);
    for (const [name, expected] of Object.entries(wanted))
      kept(at, name, expected, reader(ours)[0]?.[name as keyof ReadEvent] ?? 'nothing');
  });

  it('has the properties that the standard asks for, and an end in one way only', () => {
    const required = caseNamed('ical-required-properties');
    const { VCALENDAR, VEVENT, exclusive } = required.expected as {
      readonly VCALENDAR: readonly string[];
      readonly VEVENT: readonly string[];
      readonly exclusive: readonly (readonly string[])[];
    };
    const [head = '', event = ''] = ours.split('BEGIN:VEVENT\r\n');
    const isIn = (text: string) => (name: string) => new RegExp(`^${name}[:;]`, 'm').test(text);
    expect(VCALENDAR.filter(isIn(head))).toEqual(VCALENDAR);
    expect(VEVENT.filter(isIn(event))).toEqual(VEVENT);
    for (const either of exclusive) expect(either.filter(isIn(event))).toHaveLength(1);
    kept(required, 'VEVENT', VEVENT.join(' '), VEVENT.filter(isIn(event)).join(' '));
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readByIcalJs, readByTsIcs } from '../../../test/published/calendar-readers.ts';
import { seconds } from '../../core/quantities/brands.ts';
import { calendarText, localTime } from './calendar-text.ts';

const STAMP = '20260512T064500Z';

/** Texts as people write them: no blanks at the ends, which readers of calendars take off. */
const words = fc
  .string({ unit: fc.constantFrom(...'aZ7 ,;:\\"\n%ñéщ漢🛶-'), minLength: 1, maxLength: 120 })
  .map((text) => text.trim())
  .filter((text) => text !== '');

const event = fc.record({
  uid: fc.stringMatching(/^[a-z0-9/]{1,90}$/),
  date: fc.constantFrom('2026-05-12', '2024-02-28', '2026-12-31'),
  from: fc.integer({ min: 0, max: 100_000 }).map(seconds),
  lasts: fc.integer({ min: 1, max: 5000 }),
  summary: words,
  description: words,
});

describe('calendarText', () => {
  it('gives two other programs exactly what was put in, whatever the words', () => {
    fc.assert(
      fc.property(fc.array(event, { minLength: 1, maxLength: 3 }), (drawn) => {
        const events = drawn.map(({ lasts, ...each }, n) => ({
          ...each,
          uid: `${each.uid}${n}`,
          to: seconds(each.from + lasts),
          categories: [],
        }));
        const text = calendarText(events, STAMP);
        const wanted = events.map(({ uid, summary, description, date, from, to }) => ({
          uid,
          summary,
          description,
          start: localTime(date, from).replace(/^(....)(..)(..)T(..)(..)(..)$/, '$1-$2-$3T$4:$5:$6'),
          minutes: (to - from) / 60,
        }));
        expect(readByIcalJs(text)).toEqual(wanted);
        expect(readByTsIcs(text)).toEqual(wanted);
      }),
      { seed: 20260512, numRuns: 200 },
    );
  });

  it('has no line longer than 75 octets, and every line ends with CRLF', () => {
    fc.assert(
      fc.property(event, ({ lasts, ...each }) => {
        const text = calendarText(
          [{ ...each, to: seconds(each.from + lasts), categories: ['group A'] }],
          STAMP,
        );
        const lines = text.split('\r\n');
        expect(lines.pop()).toBe('');
        for (const line of lines) {
          expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
          expect(line).not.toMatch(/[\r\n]/);
        }
      }),
      { seed: 20260512, numRuns: 200 },
    );
  });

  it('puts what is later than midnight on the next day, also at the end of a year', () => {
    expect(localTime('2026-12-31', seconds(86_400 + 600))).toBe('20270101T001000');
  });
});

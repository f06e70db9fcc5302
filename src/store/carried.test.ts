import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { carriedLine, carriedText, readCarried } from './carried.ts';
import type { Entry, Happening } from './entry.ts';

const carrier = { visit: 'v1', device: () => 'tablet-a', now: 5000 };
const entry = (sequence: number, what: Happening): Entry => ({
  id: `tablet-a.${sequence}`,
  visit: 'v1',
  device: 'tablet-a',
  sequence,
  made: 5000,
  seat: { kind: 'group', group: 'A' },
  what,
});
const reading = (
  written: string,
  more: Partial<Extract<Happening, { kind: 'reading' }>> = {},
): Happening => ({
  kind: 'reading',
  group: 'A',
  setup: 'L1',
  written,
  ease: null,
  turns: null,
  note: null,
  ...more,
});

const happening: fc.Arbitrary<Happening> = fc.oneof(
  fc
    .record({
      // Ends are trimmed by the page before anything is written.
      written: fc.string({ maxLength: 30 }).map((text) => text.trim()),
      ease: fc.option(fc.integer({ min: 1, max: 5 })),
      turns: fc.option(fc.stringMatching(/^[0-9]{1,3}$/)),
    })
    .map(({ written, ease, turns }) => reading(written, { ease, turns })),
  fc.record({
    kind: fc.constant('correction' as const),
    of: fc.constantFrom('tablet-a.3', 'other.7'),
    written: fc.constantFrom('4.5 N', '1/2 lb; about'),
  }),
  fc.record({
    kind: fc.constantFrom('void' as const, 'restore' as const),
    of: fc.constantFrom('tablet-a.3', 'other.7'),
  }),
);

describe('readings carried by hand', () => {
  test('come out as they went in, from the picture and from lines that were read out', () => {
    fc.assert(
      fc.property(fc.array(happening, { minLength: 1, maxLength: 12 }), (all) => {
        const entries = all.map((what, n) => entry(n + 1, what));
        const text = carriedText(entries) ?? '';
        expect(readCarried(text, { ...carrier, device: () => null })).toEqual({
          entries,
          unread: [],
          isOfOther: false,
        });
        const spoken = entries.map((each) => carriedLine(each)).join('\r\n');
        expect(readCarried(spoken, carrier).entries).toEqual(entries);
      }),
    );
  });

  test('a line is short enough to be read out', () => {
    expect(carriedLine(entry(12, reading('4.5 N')))).toMatch(/^A; 12; L1; 4\.5 N; [A-Y]{2}$/);
  });

  test('small letters and blanks make no difference to the two letters at the end, a wrong digit does', () => {
    const line = carriedLine(entry(12, reading('4.5 N'))) ?? '';
    const typed = line.replaceAll('; ', ' ;  ').replace(/..$/, (end) => end.toLowerCase());
    expect(readCarried(typed, carrier).entries.length).toBe(1);
    for (const wrong of ['4.6 N', '45 N', '4.5 g', '5.4 N']) {
      const slip = line.replace('4.5 N', wrong);
      expect(readCarried(slip, carrier)).toEqual({ entries: [], unread: [slip], isOfOther: false });
    }
    expect(readCarried(line.replace('L1', 'L2'), carrier).unread.length).toBe(1);
  });

  test('lines of a device that is not the group’s, or of nobody, are not taken for its own', () => {
    const line = carriedLine(entry(12, reading('4.5 N'))) ?? '';
    expect(readCarried(line, { ...carrier, device: () => 'tablet-b' }).unread).toEqual([line]);
    expect(readCarried(line, { ...carrier, device: () => null }).unread).toEqual([line]);
  });

  test('a picture of another visit says so, and nothing of it is taken', () => {
    const text = carriedText([entry(1, reading('2 N'))]) ?? '';
    expect(readCarried(text, { ...carrier, visit: 'v2' })).toEqual({
      entries: [],
      unread: [],
      isOfOther: true,
    });
  });

  test('only what a group wrote of readings is carried: where it was comes with the device itself', () => {
    expect(carriedText([entry(1, { kind: 'arrived', group: 'A', table: '1' })])).toBeNull();
    expect(carriedText([])).toBeNull();
  });
});

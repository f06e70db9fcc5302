import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Stored } from './entry.ts';
import { inSaneOrder } from './sane-order.ts';

const stored = (device: string, sequence: number, made: number, received: number, behind = 0): Stored => ({
  entry: {
    id: `${device}.${sequence}`,
    visit: 'v',
    device,
    sequence,
    made,
    seat: { kind: 'teacher' },
    what: { kind: 'begun' },
  },
  position: sequence,
  received,
  behind,
});

const ids = (entries: readonly Stored[]) => inSaneOrder(entries).map((each) => each.stored.entry.id);

describe('the order in which things happened', () => {
  it('a clock that stands in 2010 is set right by what it was wrong at sending', () => {
    const in2010 = 1_280_000_000_000;
    const now = 1_800_000_000_000;
    const slow = stored('slow', 1, in2010 + 20_000, now + 60_000, now - in2010);
    expect(ids([stored('a', 2, now + 30_000, now + 31_000), slow, stored('a', 1, now, now)])).toEqual([
      'a.1',
      'slow.1',
      'a.2',
    ]);
  });

  it('a clock put back between two readings does not turn them round', () => {
    expect(ids([stored('a', 1, 9000, 10_000), stored('a', 2, 2000, 10_000)])).toEqual(['a.1', 'a.2']);
  });

  it('nothing happens after it has come', () => {
    const [only] = inSaneOrder([stored('a', 1, 99_000, 10_000)]);
    expect(only?.when).toBe(10_000);
  });

  it('is the same in whatever order entries are handed over, and keeps every device its sequence', () => {
    const entries = fc.uniqueArray(
      fc
        .tuple(fc.constantFrom('a', 'b', 'c'), fc.integer({ min: 1, max: 30 }), fc.nat(1000), fc.nat(1000))
        .map(([device, sequence, made, received]) => stored(device, sequence, made, received)),
      { selector: ({ entry }) => entry.id, maxLength: 30 },
    );
    const withTurned = entries.chain((given) =>
      fc.tuple(fc.constant(given), fc.shuffledSubarray(given, { minLength: given.length })),
    );
    fc.assert(
      fc.property(withTurned, ([given, turned]) => {
        expect(ids(turned)).toEqual(ids(given));
        for (const device of ['a', 'b', 'c']) {
          const sequences = inSaneOrder(given)
            .map(({ stored: { entry } }) => entry)
            .filter((entry) => entry.device === device)
            .map(({ sequence }) => sequence);
          expect(sequences).toEqual([...sequences].sort((x, y) => x - y));
        }
      }),
    );
  });
});

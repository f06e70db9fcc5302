import type { Entry } from './entry.ts';
import type { Journal } from './journal.ts';

/** One promise of the port, and how to see whether a storage keeps it. */
export interface Promised {
  readonly what: string;
  /** What is wrong, in plain words; empty where the promise is kept. */
  readonly faults: (journal: Journal) => Promise<readonly string[]>;
}

const entry = (device: string, sequence: number, visit = 'v1'): Entry => ({
  id: `${device}.${sequence}`,
  visit,
  device,
  sequence,
  made: 1000 * sequence,
  seat: { kind: 'group', group: 'A' },
  what: {
    kind: 'reading',
    group: 'A',
    setup: 'L1',
    written: `${sequence},5 N – "ungefähr" 🛶`,
    ease: null,
    turns: null,
    note: null,
  },
});

const at = (received: number, entries: readonly Entry[]) => ({ entries, received, sent: received - 7 });

const told = (isKept: boolean, fault: string): readonly string[] => (isKept ? [] : [fault]);

const isSame = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What every storage promises; asked of memory, of a file and of a browser alike. Each begins empty. */
export const journalContract: readonly Promised[] = [
  {
    what: 'gives back what it was given, letter for letter, in the order it came',
    faults: async (journal) => {
      const given = [entry('a', 1), entry('a', 2), entry('b', 1)];
      await journal.append(at(50, given));
      const found = await journal.since('v1', 0);
      return [
        ...told(
          isSame(
            found.map((each) => each.entry),
            given,
          ),
          'what comes back differs',
        ),
        ...told(
          isSame(
            found.map(({ position }) => position),
            [1, 2, 3],
          ),
          'positions are not 1, 2, 3',
        ),
        ...told(
          found.every(({ received, behind }) => received === 50 && behind === 7),
          'times are lost',
        ),
      ];
    },
  },
  {
    what: 'keeps once what comes twice, in one delivery, in two, or in another order',
    faults: async (journal) => {
      const [first, second] = [entry('a', 1), entry('a', 2)];
      const once = await journal.append(at(50, [first, second, first]));
      const again = await journal.append(at(90, [second, first]));
      const found = await journal.since('v1', 0);
      return [
        ...told(found.length === 2, `${found.length} stand there, not 2`),
        ...told(
          isSame(
            once.map(({ position }) => position),
            [1, 2, 1],
          ),
          'the answer is not one an entry',
        ),
        ...told(
          isSame(
            again.map(({ received }) => received),
            [50, 50],
          ),
          'the second coming counts',
        ),
      ];
    },
  },
  {
    what: 'gives what stands after a position, and nothing of another visit',
    faults: async (journal) => {
      await journal.append(at(50, [entry('a', 1), entry('a', 1, 'v2'), entry('a', 2)]));
      const after = await journal.since('v1', 1);
      const other = await journal.since('v2', 0);
      return [
        ...told(
          isSame(
            after.map(({ entry: { id } }) => id),
            ['a.2'],
          ),
          'not what stands after the first',
        ),
        ...told(other.length === 1 && other[0]?.position === 1, 'visits are mixed'),
        ...told((await journal.since('v3', 0)).length === 0, 'an unknown visit is not empty'),
      ];
    },
  },
  {
    what: 'takes deliveries that come at the same time',
    faults: async (journal) => {
      const devices = Array.from({ length: 20 }, (_, n) => `d${n}`);
      await Promise.all(
        devices.map((device) => journal.append(at(50, [entry(device, 1), entry(device, 2)]))),
      );
      const found = await journal.since('v1', 0);
      const positions = found.map(({ position }) => position);
      return [
        ...told(found.length === 40, `${found.length} stand there, not 40`),
        ...told(
          positions.every((position, n) => position === n + 1),
          'positions have holes',
        ),
      ];
    },
  },
  {
    what: 'answers an empty delivery with nothing',
    faults: async (journal) =>
      told((await journal.append(at(50, []))).length === 0, 'something came of nothing'),
  },
];

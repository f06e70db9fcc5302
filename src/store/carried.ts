import type { Entry, Happening, WrittenReading } from './entry.ts';

/**
 * Readings that no network takes, carried by hand: lines that a pupil can read out and somebody else can
 * type, each with two letters that tell a slip. The picture that a tablet shows has the same lines, below
 * one that names the visit and the device. An entry keeps its own id, so that it counts once however
 * often and by whatever way it comes.
 *
 *     A; 12; L1; 4.5 N; KM      group, number, setup, as written, letters
 *     A; 13; =12; 4.6 N; PT     number 12 written anew
 *     A; 14; x12; CD            number 12 struck through
 *     A; 15; +12; EF            number 12 put back
 */
export const carriedLine = (entry: Entry): string | null => {
  const fields = fieldsOf(entry);
  return fields === null ? null : [...fields, letters(entry.device, fields)].map(guarded).join('; ');
};

/** All of it that a device has, for a picture; `null` where there is nothing of that kind. */
export function carriedText(entries: readonly Entry[]): string | null {
  const lines = entries.flatMap((entry) => carriedLine(entry) ?? []);
  const [first] = entries;
  return first === undefined || lines.length === 0
    ? null
    : [`${HEAD} ${first.visit} ${first.device}`, ...lines].join('\n');
}

/** What is known where the lines are typed. */
export interface Carrier {
  readonly visit: string;
  /** The device that wrote for a group last: for lines that were read out. */
  readonly device: (group: string) => string | null;
  readonly now: number;
}

export interface CarriedEntries {
  readonly entries: readonly Entry[];
  /** Lines that don't fit their letters, as typed. */
  readonly unread: readonly string[];
  /** The picture was of another visit. */
  readonly isOfOther: boolean;
}

/** From what was typed, pasted or scanned back to entries. */
export function readCarried(text: string, carrier: Carrier): CarriedEntries {
  const lines = text.split(/\r?\n/).map((line) => line.trim());
  let device: string | null = null;
  const entries: Entry[] = [];
  const unread: string[] = [];
  for (const line of lines.filter((each) => each !== '')) {
    const [head, visit = '', named = ''] = line.split(/\s+/);
    if (head === HEAD) {
      if (visit !== carrier.visit) return { entries: [], unread: [], isOfOther: true };
      device = named;
      continue;
    }
    const entry = entryOf(line, device, carrier);
    if (entry === null) unread.push(line);
    else entries.push(entry);
  }
  return { entries, unread, isOfOther: false };
}

const HEAD = 'carried';

function fieldsOf({ seat, sequence, what, device }: Entry): readonly string[] | null {
  if (seat.kind !== 'group') return null;
  const own = [seat.group, String(sequence)];
  const of = (id: string): string => (id.startsWith(`${device}.`) ? id.slice(device.length + 1) : id);
  switch (what.kind) {
    case 'reading':
      return what.group === seat.group ? [...own, what.setup, what.written, ...extras(what)] : null;
    case 'correction':
      return [...own, `=${of(what.of)}`, what.written];
    case 'void':
      return [...own, `x${of(what.of)}`];
    case 'restore':
      return [...own, `+${of(what.of)}`];
    default:
      return null;
  }
}

/** What only some activities ask: `ease 3`, `turns 12`, `note ...`. */
const extras = ({ ease, turns, note }: WrittenReading): readonly string[] =>
  Object.entries({ ease, turns, note }).flatMap(([name, value]) =>
    value === null ? [] : [`${name} ${value}`],
  );

/** The separator inside what was written would end it. */
const guarded = (field: string): string => field.replace(/[%;\r\n]/g, encodeURIComponent);
const plain = (field: string): string =>
  field.replace(/%(25|3B|0D|0A)/gi, (code) => decodeURIComponent(code));

function entryOf(line: string, named: string | null, { visit, device: of, now }: Carrier): Entry | null {
  const all = line.split(';').map((field) => plain(field.trim()));
  const fields = all.slice(0, -1);
  const [group = '', number = ''] = fields;
  const device = named ?? of(group);
  const sequence = Number(number);
  if (device === null || !Number.isInteger(sequence) || sequence < 1) return null;
  if (letters(device, fields) !== all.at(-1)?.toUpperCase()) return null;
  const what = whatOf(fields, device);
  const seat = { kind: 'group', group } as const;
  return what === null
    ? null
    : { id: `${device}.${sequence}`, visit, device, sequence, made: now, seat, what };
}

function whatOf(
  [group = '', , target = '', written, ...more]: readonly string[],
  device: string,
): Happening | null {
  const rest = target.slice(1);
  const of = /^\d+$/.test(rest) ? `${device}.${rest}` : rest;
  const isOfEntry = /^[\w-]+\.\d+$/.test(of);
  if (target.startsWith('=') && isOfEntry && written !== undefined)
    return { kind: 'correction', of, written };
  if (target.startsWith('x') && isOfEntry && written === undefined) return { kind: 'void', of };
  if (target.startsWith('+') && isOfEntry && written === undefined) return { kind: 'restore', of };
  if (target === '' || written === undefined) return null;
  const extra = (name: string): string | null =>
    more.find((field) => field.startsWith(`${name} `))?.slice(name.length + 1) ?? null;
  const ease = extra('ease');
  return {
    kind: 'reading',
    group,
    setup: target,
    written,
    ease: ease === null ? null : Number(ease),
    turns: extra('turns'),
    note: extra('note'),
  };
}

/** None that is taken for another, by eye or by ear in two languages. */
const ALPHABET = 'ACDEFHJKLMPRTUXY';

/** Two letters of what is written and who wrote it: one slip in 256 passes unseen. FNV-1a, 32 bits. */
function letters(device: string, fields: readonly string[]): string {
  let sum = 0x811c9dc5;
  for (const byte of JSON.stringify([device, ...fields]))
    sum = Math.imul(sum ^ (byte.codePointAt(0) ?? 0), 0x01000193);
  const end = (sum ^ (sum >>> 16)) >>> 0;
  return `${ALPHABET[end & 15]}${ALPHABET[(end >>> 4) & 15]}`;
}

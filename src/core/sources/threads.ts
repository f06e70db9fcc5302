import { type Metres, metres } from '../quantities/brands.ts';
import { toSi } from '../quantities/unit.ts';
import type { Row } from './source.ts';

/** A standard V thread of 60 degrees with one start, so that its lead is its pitch. */
export interface Thread extends Row {
  readonly series: 'metric coarse' | 'metric fine' | 'UNC' | 'UNF';
  /** Nominal: over the crests of the screw. */
  readonly diameter: Metres;
  readonly pitch: Metres;
}

const METRIC = 'ISO 261, pitches as read in a public thread library (BOSL2)';
const INCH = 'ASME B1.1, threads per inch as read in a public thread library (BOSL2)';

/** (diameter, coarse pitch, fine pitches) in mm; the fine pitches of M5 and M6 could not be read. */
const METRIC_MM: readonly (readonly [number, number, readonly number[]])[] = [
  [5, 0.8, []],
  [6, 1, []],
  [8, 1.25, [1]],
  [10, 1.5, [1.25]],
  [12, 1.75, [1.25, 1.5]],
  [14, 2, [1.5]],
  [16, 2, [1.5]],
  [18, 2.5, [1.5, 2]],
  [20, 2.5, [1.5, 2]],
  [22, 2.5, [1.5, 2]],
  [24, 3, [2]],
];

/** Fine pitches that are from memory: of M14, and the second ones of M18 to M22. */
const FROM_MEMORY = ['M14 x 1.5', 'M18 x 2', 'M20 x 2', 'M22 x 2'];

/** (name, diameter in inches, UNC and UNF threads per inch). */
const INCHES: readonly (readonly [string, number, number, number])[] = [
  ['1/4', 1 / 4, 20, 28],
  ['5/16', 5 / 16, 18, 24],
  ['3/8', 3 / 8, 16, 24],
  ['7/16', 7 / 16, 14, 20],
  ['1/2', 1 / 2, 13, 20],
  ['9/16', 9 / 16, 12, 18],
  ['5/8', 5 / 8, 11, 18],
  ['3/4', 3 / 4, 10, 16],
  ['7/8', 7 / 8, 9, 14],
  ['1', 1, 8, 12],
];

export const threads: readonly Thread[] = [
  ...METRIC_MM.map(([d, coarse]) => metric(`M${d}`, 'metric coarse', d, coarse)),
  ...INCHES.map(([name, d, unc]) => inch(`${name}-${unc}`, 'UNC', d, unc)),
  ...METRIC_MM.flatMap(([d, , fine]) => fine.map((p) => metric(`M${d} x ${p}`, 'metric fine', d, p))),
  ...INCHES.map(([name, d, , unf]) => inch(`${name}-${unf}`, 'UNF', d, unf)),
];

/**
 * A thread by its designation; the series may stand behind an inch thread.
 *
 * @example threadNamed('m10 x 1.25')?.series // => 'metric fine'
 * @example threadNamed('1/2-13 UNC')?.diameter // => 0.0127
 */
export function threadNamed(name: string): Thread | undefined {
  const bare = (text: string) =>
    text
      .toLowerCase()
      .replace(/[×*]/g, 'x')
      .replace(/\s|unc$|unf$/g, '');
  return threads.find((thread) => bare(thread.name) === bare(name.trim()));
}

/** Neighbours in the table differ by more: beyond this a screw is of no standard thread. Our own limits. */
const PITCH_LIMIT = 0.05;
const DIAMETER_LIMIT = 0.08;

/**
 * The standard thread that a measured screw most likely has: by pitch, and by diameter over the
 * crests where that was measured; coarse before fine when both are as close. Nothing when no
 * standard thread comes within 5 percent of the pitch and 8 percent of the diameter.
 *
 * @example nearestThread(0.0079, 0.00125)?.name // => 'M8'
 * @example nearestThread(undefined, 0.01) // => undefined
 */
export function nearestThread(diameter: number | undefined, pitch: number): Thread | undefined {
  let best: Thread | undefined;
  let least = Number.POSITIVE_INFINITY;
  for (const thread of threads) {
    const offPitch = Math.abs(pitch / thread.pitch - 1);
    const offDiameter = diameter === undefined ? 0 : Math.abs(diameter / thread.diameter - 1);
    if (!(offPitch <= PITCH_LIMIT && offDiameter <= DIAMETER_LIMIT)) continue;
    const off = Math.hypot(offPitch / PITCH_LIMIT, offDiameter / DIAMETER_LIMIT);
    // Pitches in inches and in sums of millimetres differ in the last bit.
    if (off < least - 1e-9) {
      least = off;
      best = thread;
    }
  }
  return best;
}

/** Height of the full V of 60 degrees for a pitch of 1: √3/2. */
const HEIGHT = Math.sqrt(3) / 2;

/**
 * Pitch diameter, where thread and gap are equally wide: d2 = d − 3/4 H = d − 0.649519 P (ISO 724).
 * Torque is reckoned on it.
 *
 * @example Math.round(pitchDiameter(8, 1.25) * 1000) // => 7188
 */
export const pitchDiameter = (diameter: number, pitch: number): Metres =>
  metres(diameter - 0.75 * HEIGHT * pitch);

/** Basic minor diameter: d1 = d − 5/4 H = d − 1.082532 P (ISO 724). */
export const minorDiameter = (diameter: number, pitch: number): Metres =>
  metres(diameter - 1.25 * HEIGHT * pitch);

/** Root of the screw's own thread: d3 = d − 17/12 H = d − 1.226869 P (ISO 965, DIN 13). */
export const rootDiameter = (diameter: number, pitch: number): Metres =>
  metres(diameter - (17 / 12) * HEIGHT * pitch);

function metric(name: string, series: Thread['series'], d: number, pitch: number): Thread {
  const provenance = FROM_MEMORY.includes(name) ? 'memory' : 'read';
  const source = provenance === 'read' ? METRIC : 'ISO 261, from memory';
  return {
    name,
    series,
    diameter: metres(toSi(d, 'mm')),
    pitch: metres(toSi(pitch, 'mm')),
    source,
    provenance,
  };
}

function inch(name: string, series: Thread['series'], d: number, perInch: number): Thread {
  const pitch = metres(toSi(1, 'in') / perInch);
  return { name, series, diameter: metres(toSi(d, 'in')), pitch, source: INCH, provenance: 'read' };
}

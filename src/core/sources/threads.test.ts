import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCases, readTable } from '../../../test/reference/read-reference.ts';
import {
  minorDiameter,
  nearestThread,
  pitchDiameter,
  rootDiameter,
  threadNamed,
  threads,
} from './threads.ts';

interface TableThread {
  readonly name: string;
  readonly pitch_mm?: number;
  readonly fine_pitches_mm?: readonly number[] | null;
  readonly d2_mm?: number;
  readonly d1_mm?: number;
  readonly d3_mm?: number;
  readonly UNC_tpi?: number;
  readonly UNF_tpi?: number;
  readonly UNC_pitch_mm?: number;
  readonly UNF_pitch_mm?: number;
  readonly d2_UNC_mm?: number;
}

const rows = readTable<{ rows: TableThread[] }>('threads').rows;
const metricRows = rows.filter((row) => row.pitch_mm !== undefined);
const inchRows = rows.filter((row) => row.UNC_tpi !== undefined);
const inMm = (metres: number | undefined) => (metres === undefined ? undefined : metres * 1000);
/** As the table prints: rounded to so many decimals. */
const printed = (value: number, decimals: number) => Number(value.toFixed(decimals));

describe('standard threads, against the reference table', () => {
  it('has each thread of the table and no other', () => {
    const names = [
      ...metricRows.map((row) => row.name),
      ...inchRows.map((row) => `${row.name.replace(' in', '')}-${row.UNC_tpi}`),
      ...metricRows.flatMap((row) => (row.fine_pitches_mm ?? []).map((p) => `${row.name} x ${p}`)),
      ...inchRows.map((row) => `${row.name.replace(' in', '')}-${row.UNF_tpi}`),
    ];
    expect(threads.map((thread) => thread.name)).toEqual(names);
  });

  it.each(metricRows)('$name has the printed pitch, and the printed diameters by ISO 724', (row) => {
    const thread = threadNamed(row.name);
    const d = Number(row.name.slice(1));
    const p = row.pitch_mm ?? 0;
    expect(thread).toMatchObject({ diameter: d / 1000, pitch: p / 1000, series: 'metric coarse' });
    expect(printed(pitchDiameter(d, p), 3)).toBe(row.d2_mm);
    expect(printed(minorDiameter(d, p), 3)).toBe(row.d1_mm);
    expect(printed(rootDiameter(d, p), 3)).toBe(row.d3_mm);
  });

  it.each(inchRows)('$name has the printed threads per inch and pitches', (row) => {
    const name = row.name.replace(' in', '');
    const coarse = threadNamed(`${name}-${row.UNC_tpi} UNC`);
    const fine = threadNamed(`${name}-${row.UNF_tpi}`);
    expect([coarse?.series, fine?.series]).toEqual(['UNC', 'UNF']);
    expect(printed(inMm(coarse?.pitch) ?? 0, 4)).toBe(row.UNC_pitch_mm);
    expect(printed(inMm(fine?.pitch) ?? 0, 4)).toBe(row.UNF_pitch_mm);
    const d2 = pitchDiameter(inMm(coarse?.diameter) ?? 0, inMm(coarse?.pitch) ?? 0);
    expect(printed(d2, 3)).toBe(row.d2_UNC_mm);
  });

  it('fine pitches that are from memory are marked so', () => {
    const fromMemory = threads
      .filter((thread) => thread.provenance === 'memory')
      .map((thread) => thread.name);
    expect(fromMemory).toEqual(['M14 x 1.5', 'M18 x 2', 'M20 x 2', 'M22 x 2']);
  });
});

// Basis of these cases: own theory sheets; not to be called published.
describe('threads of the reference cases', () => {
  it.each(readCases('screws', 'thread_metric'))('$id: $gist', ({ inputs, expected }) => {
    const thread = threadNamed(`M${inputs.nominal?.value}`);
    const d = (thread?.diameter ?? 0) * 1000;
    const p = (thread?.pitch ?? 0) * 1000;
    const d2 = pitchDiameter(d, p);
    const got: Readonly<Record<string, number>> = {
      pitch: p,
      d2,
      d1: minorDiameter(d, p),
      d3: rootDiameter(d, p),
      turns_for_10mm: 10 / p,
      lead_angle: (Math.atan(p / (Math.PI * d2)) * 180) / Math.PI,
    };
    expect(Object.keys(expected).sort()).toEqual(Object.keys(got).sort());
    for (const [name, figure] of Object.entries(expected))
      expect(Math.abs((got[name] ?? 0) - figure.value), name).toBeLessThanOrEqual(figure.tol_abs);
  });

  it.each(readCases('screws', 'thread_inch'))('$id: $gist', ({ inputs, expected }) => {
    const diameter = (inputs.nominal?.value ?? 0) * 0.0254;
    const perInch = (series: string) => {
      const found = threads.find(
        (each) => each.series === series && Math.abs(each.diameter - diameter) < 1e-9,
      );
      return 0.0254 / (found?.pitch ?? 0);
    };
    const got: Readonly<Record<string, number>> = {
      UNC: perInch('UNC'),
      UNF: perInch('UNF'),
      UNC_pitch: 25.4 / perInch('UNC'),
      turns_for_half_inch_UNC: perInch('UNC') / 2,
    };
    expect(Object.keys(expected).sort()).toEqual(Object.keys(got).sort());
    for (const [name, figure] of Object.entries(expected))
      expect(Math.abs((got[name] ?? 0) - figure.value), name).toBeLessThanOrEqual(figure.tol_abs);
  });
});

describe('the nearest standard thread', () => {
  it('every standard thread is its own nearest, and still is when measured 1 percent off', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...threads),
        fc.double({ min: 0.99, max: 1.01, noNaN: true }),
        fc.double({ min: 0.99, max: 1.01, noNaN: true }),
        (thread, offDiameter, offPitch) => {
          expect(nearestThread(thread.diameter, thread.pitch)?.name).toBe(thread.name);
          const found = nearestThread(thread.diameter * offDiameter, thread.pitch * offPitch);
          // 5/16 in and M8 are so alike in diameter that only their pitches tell them apart.
          expect(found?.name).toBe(thread.name);
        },
      ),
    );
  });

  it('by pitch alone the thinnest coarse thread is named', () => {
    expect(nearestThread(undefined, 0.00125)?.name).toBe('M8');
    expect(nearestThread(undefined, 0.0025)?.name).toBe('M18');
    expect(nearestThread(undefined, 0.0254 / 20)?.name).toBe('1/4-20');
  });

  it('tells 1/4-20 from M8, whose pitches are 2 percent apart, by the diameter', () => {
    expect(nearestThread(0.0063, 0.00126)?.name).toBe('1/4-20');
    expect(nearestThread(0.0079, 0.00126)?.name).toBe('M8');
  });

  it('a screw of a vice, of a ruler or of nonsense has no standard thread', () => {
    expect(nearestThread(0.02, 0.005)).toBeUndefined();
    expect(nearestThread(0.03, 0.00125)).toBeUndefined();
    expect(nearestThread(Number.NaN, Number.NaN)).toBeUndefined();
    expect(threadNamed('M7')).toBeUndefined();
  });
});

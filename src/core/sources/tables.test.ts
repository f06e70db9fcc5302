import { describe, expect, it } from 'vitest';
import { readTable } from '../../../test/reference/read-reference.ts';
import { bearingKind, bearingKinds } from './bearing.ts';
import { frictionKind, frictionKinds } from './friction.ts';
import { rimFriction, rollingKind, rollingKinds } from './rolling.ts';
import { scaleAccuracy } from './scales.ts';
import { dragShare, sheaveKind, sheaveKinds } from './sheave.ts';
import { NO_SOURCE, type Range, type Row } from './source.ts';

type TableRow = { readonly pair: string; readonly source: string | string[]; readonly provenance: string };

describe('friction, against the reference table', () => {
  const table = readTable<{ rows: (TableRow & { static: Range; kinetic: Range })[] }>(
    'friction_coefficients',
  );
  /** Our names are plainer than the table's. */
  const ours = (pair: string) =>
    pair
      .replace(/, dry$/, '')
      .replace(/, felt or plastic foot$/, '')
      .replace(/^(.+), oiled$/, 'oiled $1');

  it('has each row of the table and no other', () => {
    expect(frictionKinds.map((row) => row.name)).toEqual(table.rows.map((row) => ours(row.pair)));
  });

  it.each(table.rows)('$pair agrees digit for digit', (row) => {
    const kind = frictionKind(ours(row.pair));
    expect(kind?.starting).toEqual(row.static);
    expect(kind?.moving).toEqual(row.kinetic);
    expect(kind?.provenance).toBe(row.provenance === 'read' ? 'read' : 'memory');
  });

  it('the ratio of starting to moving is never below 1, whatever the kind', () => {
    for (const { name, ratio } of frictionKinds) {
      expect(ratio[0], name).toBeGreaterThanOrEqual(1);
      expect(ratio[1], name).toBeGreaterThanOrEqual(ratio[0]);
    }
    expect(frictionKind('PTFE on steel')?.ratio).toEqual([1, 1]);
    expect(frictionKind('wood on wood')?.ratio[1]).toBeCloseTo(1.5, 12);
    expect(frictionKind('wood on wood')?.ratio[0]).toBeCloseTo(4 / 3, 12);
  });
});

describe('rolling and bearings, against the reference table', () => {
  type Rolling = TableRow & {
    arm_mm?: Range;
    arm_in?: Range;
    coefficient?: Range;
    mu?: Range;
    c?: Range;
  };
  const { rows } = readTable<{ rows: Rolling[] }>('rolling_resistance');
  const named: Readonly<Record<string, string>> = {
    'pneumatic tyre, hard road': 'pneumatic tyre on hard road',
    'hand truck or cart, hard tyres, good floor': 'cart with hard tyres on a good floor',
    'rough or uneven floor, carts': 'cart on a rough floor',
    'bearing friction coefficient, ball bearing': 'ball bearing',
    'bearing friction coefficient, plain lubricated': 'lubricated plain bearing',
    'bearing friction coefficient, dry wood or steel pin': 'dry pin',
  };
  const ours = (pair: string) => named[pair] ?? pair.replace(/, old shop table$/, '');

  it('has each row of the table and no other', () => {
    const names = [...rollingKinds, ...bearingKinds, rimFriction].map((row) => row.name);
    const theirs = rows.map((row) => (row.c ? rimFriction.name : ours(row.pair)));
    expect(names).toEqual(theirs);
  });

  it.each(rows.filter((row) => row.arm_mm ?? row.arm_in))('$pair agrees, in metres', (row) => {
    const exact = row.arm_mm?.map((mm) => mm / 1000) ?? row.arm_in?.map((inches) => (inches * 254) / 10_000);
    expect(rollingKind(ours(row.pair))?.arm).toEqual(exact);
    expect(rollingKind(ours(row.pair))?.coefficient).toBeUndefined();
  });

  it.each(rows.filter((row) => row.coefficient))('$pair agrees digit for digit', (row) => {
    expect(rollingKind(ours(row.pair))?.coefficient).toEqual(row.coefficient);
    expect(rollingKind(ours(row.pair))?.arm).toBeUndefined();
    expect(rollingKind(ours(row.pair))?.provenance).toBe(row.provenance === 'read' ? 'read' : 'memory');
  });

  it.each(rows.filter((row) => row.mu))('$pair agrees digit for digit', (row) => {
    expect(bearingKind(ours(row.pair))?.moving).toEqual(row.mu);
    expect(bearingKind(ours(row.pair))?.provenance).toBe(row.provenance === 'read' ? 'read' : 'memory');
  });

  it('rim friction agrees digit for digit', () => {
    expect(rows.find((row) => row.c)?.c).toEqual(rimFriction.coefficient);
  });
});

describe('sheaves, against the reference table', () => {
  const table = readTable<{
    ratio_table: { K: { bronze: number; anti_friction: number } };
    lead_line_factor: { K: { plain: number; anti_friction: number } };
    measured: Readonly<Record<string, string>>;
  }>('sheaves_and_tackle');
  const figure = (text: string | undefined, pattern: RegExp) => Number(pattern.exec(text ?? '')?.[1]);

  it('a bush passes on 1/K of the pull, from the wire-rope handbook to the hoist tables', () => {
    const { bronze, anti_friction } = table.ratio_table.K;
    const handbook = table.lead_line_factor.K;
    expect(sheaveKind('bronze bush')?.efficiency).toEqual([1 / handbook.plain, 1 / bronze]);
    expect(sheaveKind('rolling bearing')?.efficiency).toEqual([
      1 / handbook.anti_friction,
      1 / anti_friction,
    ]);
  });

  it('a small pulley passes on what was measured on a poor and on a good one', () => {
    const poor = figure(table.measured.poor_small_pulley, /([\d.]+) kN$/);
    const good = figure(table.measured.good_small_pulley, /with ([\d.]+) kN$/);
    expect(sheaveKind('small pulley on a plain pin')?.efficiency).toEqual([1 / poor, 1 / good]);
    const ring = figure(table.measured.bare_steel_ring, /\((\d+) percent\)/) / 100;
    expect(sheaveKind('bare ring')?.efficiency).toEqual([ring, ring]);
  });

  it('the share of the mean tension and the efficiency say the same', () => {
    for (const { name, efficiency, share } of sheaveKinds) {
      expect((1 - share[0] / 2) / (1 + share[0] / 2), name).toBeCloseTo(efficiency[1], 12);
      expect((1 - share[1] / 2) / (1 + share[1] / 2), name).toBeCloseTo(efficiency[0], 12);
      expect(share[0], name).toBeLessThanOrEqual(share[1]);
    }
    expect(dragShare(1)).toBe(0);
  });

  it('a drag that no source gives says so', () => {
    const small = sheaveKind('small pulley on a plain pin');
    expect(small?.drag).toEqual([0, 0.02]);
    expect(small).toMatchObject({ dragSource: NO_SOURCE, dragProvenance: 'common practice' });
  });
});

describe('spring scales', () => {
  it('the assumed accuracy is the worse end of what makers claim', () => {
    const { class_scales } = readTable<{ class_scales: { about: string } }>('scale_tolerances');
    const percent = /1 to (\d) percent of full scale/.exec(class_scales.about)?.[1];
    expect(scaleAccuracy.share).toBe(Number(percent) / 100);
  });
});

describe('every row', () => {
  const tables: readonly (readonly Row[])[] = [frictionKinds, bearingKinds, rollingKinds, sheaveKinds];

  it('names its source, and no name stands twice in a table', () => {
    for (const rows of tables) {
      for (const row of rows) expect(row.source, row.name).not.toBe('');
      expect(new Set(rows.map((row) => row.name.toLowerCase())).size).toBe(rows.length);
    }
  });

  it('a name is found in any case and not at all when there is no source', () => {
    expect(frictionKind(' Wood  on WOOD ')?.name).toBe('wood on wood');
    expect(frictionKind('butter on toast')).toBeUndefined();
    expect(frictionKind('toString')).toBeUndefined();
  });
});

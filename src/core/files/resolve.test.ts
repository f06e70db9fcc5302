import { describe, expect, it } from 'vitest';
import { springScale } from '../instruments/spring-scale-fields.ts';
import { lever } from '../machines/lever/index.ts';
import { weight } from '../parts/weight.ts';
import { readActivityFile } from './activity-file.ts';
import { readKitFile } from './kit-file.ts';
import { locate } from './locate.ts';
import { resolve } from './resolve.ts';
import { readVisitFile } from './visit-file.ts';
import { vocabularyOf } from './vocabulary.ts';

const vocabulary = vocabularyOf(
  [lever, { name: 'compound', partKinds: [], slots: {}, fields: {} }],
  [weight, springScale],
);

const kitText = `handspike: kit 1
serial: BB-03
name: Boathouse kit
parts:
  oak: {part: bar, length: 60 cm, mass: 118 g, first hole: 5 cm, hole spacing: 5 cm, holes: 11}
  ash: {part: bar, length: 90 cm, mass: 200 g, spare: yes}
  007: {part: weight, of: 200 g}
  stone: {part: weight, of: 300 g}
  amber: {part: spring scale, range: 2.5 N, graduation: 0.05 N}
  teal: {part: spring scale, range: 10 N, graduation: 0.2 N}
measured:
  - {date: 2026-04-01, part: oak, what: mass, found: 121 g ± 1 g}
  - {date: 2026-03-01, part: oak, what: mass, found: 119 g}
`;
const setup = (more: string) => `      - setup: L1
        fulcrum at: hole 6
        load at: hole 3
        pull at: hole 11
${more}`;
const activityText = (setups: string, roles = '') => `handspike: activity 1
title: Harbour day
tables:
  - table: lever
    machine: lever
    roles:
      bar: bar
      load: weight of 200 g
      scale: spring scale to 2.5 N
${roles}    setups:
${setups}`;
const visitText = (lines: string) => `handspike: visit 1\nkit: k\nactivity: a\n${lines}`;

function bring(setups: string, visitLines: string | null = null, roles = '') {
  const kit = readKitFile({ name: 'k', text: kitText }, vocabulary);
  const activity = readActivityFile({ name: 'a', text: activityText(setups, roles) }, vocabulary);
  const visit = visitLines === null ? null : readVisitFile({ name: 'v', text: visitText(visitLines) });
  if (kit.kit === null || activity.activity === null) throw new Error('not read');
  const resolved = resolve(kit.kit, activity.activity, visit?.visit ?? null, vocabulary);
  const read = [...kit.diagnostics, ...activity.diagnostics, ...(visit?.diagnostics ?? [])];
  const sources = [kit.source, activity.source, ...(visit ? [visit.source] : [])];
  return { read, resolved, sources, codes: resolved.diagnostics.map((each) => each.code) };
}

describe('kit, activity and visit together', () => {
  it('give every role the only part that fits, by mark', () => {
    const { read, resolved } = bring(setup(''));
    expect(read).toEqual([]);
    expect(resolved.diagnostics).toEqual([]);
    expect(resolved.tables[0]?.parts).toEqual({ bar: 'oak', load: '007', scale: 'amber' });
    expect(resolved.tables[0]?.notPrepared).toEqual([]);
  });

  it('hand the machine its own slots and fields, and keep load and scale beside them', () => {
    const prepared = bring(setup('        read: lower\n')).resolved.tables[0]?.setups[0];
    expect(Object.keys(prepared?.preparation.parts ?? {})).toEqual(['bar']);
    expect(prepared?.load?.mark).toBe('007');
    expect(prepared?.scale?.mark).toBe('amber');
    expect(prepared?.generic).toEqual({ read: { type: 'choice', choice: 'lower' } });
    expect(prepared === undefined ? null : lever.make(prepared.preparation).station).not.toBeNull();
  });

  it('take the latest measurement of the bench book, not the last line', () => {
    const bar = bring(setup('')).resolved.tables[0]?.setups[0]?.preparation.parts.bar;
    expect(bar?.fields.mass).toMatchObject({
      measured: { value: 0.121, parts: [{ unknown: { id: 'oak/mass', origin: 'stated' } }] },
    });
  });

  it('take the part that the visit names, with a warning where it is another size', () => {
    const { resolved, codes } = bring(setup(''), 'roles:\n  lever:\n    load: stone\n    bar: ash\n');
    expect(resolved.tables[0]?.parts).toMatchObject({ load: 'stone', bar: 'ash' });
    expect(codes).toEqual(['substitute']);
    expect(resolved.diagnostics[0]).toMatchObject({ severity: 'warning', at: { file: 'v' } });
  });

  it('go without a part that is missing today, and name what stood in its place', () => {
    const { resolved, codes } = bring(setup(''), 'missing: amber\n');
    expect(resolved.tables[0]?.parts.scale).toBe('teal');
    expect(codes).toEqual([]);
    const without = bring(setup(''), 'missing:\n  - amber\n  - teal\n');
    expect(without.codes).toEqual(['no-part-fits']);
    expect(without.resolved.diagnostics[0]?.facts).toMatchObject({ lost: ['amber', 'teal'] });
    expect(without.resolved.tables[0]?.notPrepared).toEqual(['L1']);
  });

  it('leave an optional slot empty where the setup says none', () => {
    const prepared = bring(setup('        scale: none\n')).resolved.tables[0]?.setups[0];
    expect(prepared?.scale).toBeNull();
  });

  it('point back at the line of a field, at the setup where it was left out, and into the kit', () => {
    const { resolved, sources } = bring(setup(''));
    const prepared = resolved.tables[0]?.setups[0];
    if (prepared === undefined) throw new Error('not prepared');
    const line = (at: Parameters<typeof locate>[1]) => locate(sources, at);
    expect(line(prepared.place('load at'))).toMatchObject({ file: 'a', line: 13, column: 18 });
    expect(line(prepared.place('tilt'))).toMatchObject({ file: 'a', line: 11, column: 16, length: 2 });
    expect(line(prepared.partPlace('scale', 'range'))).toMatchObject({
      file: 'k',
      line: 9,
      lineText: expect.stringContaining('amber'),
    });
    expect(line(prepared.preparation.partPlace('bar', 'pin friction'))).toMatchObject({
      file: 'k',
      line: 5,
      column: 3,
    });
  });

  it('name the unknowns of two stages apart, though they have the same fields', () => {
    const stage = (bar: string) => `          - machine: lever
            bar: ${bar}
            fulcrum at: 30 cm
            load at: 20 cm
            pull at: 55 cm
`;
    const kit = readKitFile({ name: 'k', text: kitText }, vocabulary);
    const text = activityText(
      `      - setup: C1\n        stages:\n${stage('bar')}${stage('second bar')}`,
      '      second bar: bar\n',
    );
    const activity = readActivityFile(
      { name: 'a', text: text.replace('machine: lever', 'machine: compound') },
      vocabulary,
    );
    const visit = readVisitFile({
      name: 'v',
      text: visitText('roles:\n  lever:\n    bar: oak\n    second bar: ash\n'),
    });
    if (kit.kit === null || activity.activity === null) throw new Error('not read');
    const { tables, diagnostics } = resolve(kit.kit, activity.activity, visit.visit, vocabulary);
    expect([...activity.diagnostics, ...diagnostics]).toEqual([]);
    const stages = tables[0]?.setups[0]?.preparation.stages ?? [];
    expect(stages.map((each) => each.machine)).toEqual(['lever', 'lever']);
    const ids = stages.map(({ preparation }) => preparation.fields['load at']);
    expect(ids).toMatchObject([
      { measured: { parts: [{ unknown: { id: 'C1/stage 1 load at' } }] } },
      { measured: { parts: [{ unknown: { id: 'C1/stage 2 load at' } }] } },
    ]);
  });
});

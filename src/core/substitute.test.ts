import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { prepare } from './prepare.ts';
import { type Substitution, substitutionsOf } from './substitute.ts';

const example = (name: string) => ({
  name,
  text: readFileSync(new URL(`../../examples/brackwater/${name}`, import.meta.url), 'utf8'),
});
const files = {
  kit: example('boathouse.kit.yaml'),
  activity: example('harbour-day.activity.yaml'),
  visit: example('harbour-day.visit.yaml'),
};
const prepared = prepare(files);
const slips = substitutionsOf(prepared);
const slipsFor = (part: string): readonly Substitution[] => slips.filter(({ missing }) => missing === part);
const goodOf = ({ prediction }: Substitution['setups'][number]) =>
  'good' in prediction.outcome ? prediction.outcome.good : prediction.outcome.kind;

describe('a part that is lost', () => {
  it('has a slip for every part that plays a role today', () => {
    const { activity } = prepared;
    const roles = activity?.tables.flatMap((table) => table.roles.map(({ name }) => `${table.mark} ${name}`));
    expect(new Set(slips.map(({ table, role }) => `${table} ${role}`))).toEqual(new Set(roles));
  });

  it('is never replaced by a part that stands on another table, or by one that is missing too', () => {
    const standing = new Set(slips.map(({ missing }) => missing));
    for (const { substitute } of slips) if (substitute !== null) expect(standing).not.toContain(substitute);
    const text = `${files.visit.text}\nmissing: barrow\n`;
    const without = substitutionsOf(prepare({ ...files, visit: { ...files.visit, text } }));
    expect(slipsFor('trolley').map(({ substitute }) => substitute)).toEqual(['barrow']);
    expect(
      without.filter(({ missing }) => missing === 'trolley').map(({ substitute }) => substitute),
    ).toEqual([null]);
  });

  it('is replaced best part first, with the key that then holds', () => {
    const [cart] = slipsFor('trolley');
    const named = '  "2": { cart: barrow }\n';
    const text = files.visit.text.replace('roles:\n', `roles:\n${named}`);
    const table = prepare({ ...files, visit: { ...files.visit, text } }).tables.find(
      ({ mark }) => mark === '2',
    );
    expect(cart?.concerns).toEqual(expect.arrayContaining(['S1', 'S2']));
    expect(cart?.concerns).not.toContain('S3');
    expect(cart?.setups.map(goodOf)).toEqual(table?.setups.map(goodOf));
    expect(cart).toMatchObject({ fit: 'exact', without: [], closes: false });
  });

  it('takes the setups with it that its substitute can not show', () => {
    const [scale] = slipsFor('amber');
    expect(scale).toMatchObject({ substitute: 'moss', fit: 'kind-only', closes: false });
    expect(scale?.without).toContain('L2');
    expect(scale?.setups.map(({ setup }) => setup.scale?.mark)).not.toContain('amber');
  });

  it('closes its table where nothing stands in and every setup needs it, and only then', () => {
    expect(slipsFor('spindle')).toMatchObject([{ substitute: null, closes: true, setups: [] }]);
    expect(slipsFor('thole')).toMatchObject([{ substitute: null, closes: false, without: ['G1'] }]);
    for (const { closes, setups } of slips) expect(closes).toBe(setups.length === 0);
  });

  it('is looked for without a visit too, and follows no reading of the lost part', () => {
    const { activity, kit } = prepared;
    expect(substitutionsOf({ ...prepared, kit: null })).toEqual([]);
    expect(activity).not.toBeNull();
    expect(kit).not.toBeNull();
    const alone = substitutionsOf(prepare({ ...files, visit: null }));
    expect(alone.find(({ missing }) => missing === 'oar')).toMatchObject({ table: '1' });
    const text = `${files.visit.text}\narrival: { S1: 0.55 N }\n`;
    const arrived = substitutionsOf(prepare({ ...files, visit: { ...files.visit, text } }));
    for (const { setups } of arrived)
      for (const { prediction } of setups) expect(prediction.rekeyedBy).toBeNull();
  });
});

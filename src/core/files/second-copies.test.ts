import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { prepare } from '../prepare.ts';

const read = (name: string) =>
  readFileSync(new URL(`../../../examples/brackwater/${name}`, import.meta.url), 'utf8');

/** What the boathouse lacks for its tables to stand more than once, with more parts and more lines in its visit. */
function lacking(lines: string, parts = '') {
  const kit = read('boathouse.kit.yaml').replace(/^parts:$/m, `parts:\n${parts}`);
  const { diagnostics } = prepare({
    kit: { name: 'kit.yaml', text: kit },
    activity: { name: 'activity.yaml', text: read('harbour-day.activity.yaml') },
    visit: { name: 'visit.yaml', text: read('harbour-day.visit.yaml') + lines },
  });
  expect(diagnostics.filter(({ severity }) => severity === 'error')).toEqual([]);
  return diagnostics.filter(({ code }) => code === 'copies-without-parts').map(({ facts }) => facts);
}

const BAR = read('boathouse.kit.yaml').match(/^ {2}oar:\n(?: {4}.*\n)+/m)?.[0] ?? '';
const SECOND = [
  BAR.replace('oar:', 'spare oar:\n    spare: yes'),
  '  spare 500: { part: weight, of: 500 g, spare: yes }\n',
].join('');
const SCALE =
  '  spare amber: { part: spring scale, range: 5 N, graduation: 0.1 N, spare: yes, fits: MACHINE }\n';

describe('a table that stands more than once', () => {
  it('says which of its roles nothing that lies unused can play', () => {
    expect(lacking('copies: { "1": 2 }\n')).toEqual([
      { table: '1', copies: 2, roles: ['bar', 'load', 'scale'] },
    ]);
  });

  it('says nothing of a table that stands once', () => {
    expect(lacking('copies: { "1": 1 }\n')).toEqual([]);
  });

  it('is content with spares that fit, and not with those that are kept for another machine', () => {
    expect(lacking('copies: { "1": 2 }\n', SECOND + SCALE.replace('MACHINE', 'lever'))).toEqual([]);
    expect(lacking('copies: { "1": 2 }\n', SECOND + SCALE.replace('MACHINE', 'wedge'))).toEqual([
      { table: '1', copies: 2, roles: ['scale'] },
    ]);
  });

  it('takes every spare once', () => {
    expect(lacking('copies: { "1": 3 }\n', SECOND + SCALE.replace('MACHINE', 'lever'))).toEqual([
      { table: '1', copies: 3, roles: ['bar', 'load', 'scale'] },
    ]);
  });

  it('takes what stands at a table that is closed all day', () => {
    const roles = lacking('copies: { "7": 2 }\nclosed: "1"\n').flatMap((facts) => facts?.roles ?? []);
    expect(roles).toEqual(['board', 'cart', 'guide pulley', 'load']);
  });
});

import { expect, test } from 'vitest';
import { readVisitFile } from './visit-file.ts';

const visitWith = (lines: string) =>
  readVisitFile({
    name: 'x.visit.yaml',
    text: `handspike: visit 1\nkit: k.yaml\nactivity: a.yaml\n${lines}\n`,
  });

test('groups that are only counted have letters, and two letters after Z', () => {
  const { visit, diagnostics } = visitWith('groups: 28');
  expect(diagnostics).toEqual([]);
  expect(visit?.groupLabels.slice(0, 3)).toEqual(['A', 'B', 'C']);
  expect(visit?.groupLabels.slice(25)).toEqual(['Z', 'AA', 'AB']);
});

test('labels count the groups where nothing else does, as a list or as one text', () => {
  for (const lines of ['group labels: heron, gull', 'group labels:\n  - heron\n  - gull']) {
    const { visit, diagnostics } = visitWith(lines);
    expect(diagnostics).toEqual([]);
    expect(visit).toMatchObject({ groups: 2, groupLabels: ['heron', 'gull'] });
  }
});

test('a visit that says nothing of groups has none', () => {
  expect(visitWith('helpers: 2').visit).toMatchObject({ groups: null, groupLabels: [], groupLanguages: {} });
});

test('a group may have cards in another language than the rest, and the key in a third', () => {
  const { visit, diagnostics } = visitWith('groups: 3\ncards in: en\nkey in: es\ngroup languages: { B: es }');
  expect(diagnostics).toEqual([]);
  expect(visit).toMatchObject({ cardsIn: 'en', keyIn: 'es', groupLanguages: { B: 'es' } });
});

test('a language for a group that is not there is refused, and no group gets it', () => {
  const { visit, diagnostics } = visitWith('groups: 3\ngroup languages: { D: es }');
  expect(diagnostics.map(({ code }) => code)).toEqual(['unknown-group']);
  expect(visit?.groupLanguages).toEqual({});
});

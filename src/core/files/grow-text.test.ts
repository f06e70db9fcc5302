import { expect, test } from 'vitest';
import { withGrown } from './grow-text.ts';
import { readYaml } from './yaml-tree.ts';

const grown = (text: string, path: readonly (string | number)[], value: string) =>
  withGrown(readYaml({ name: 'a.yaml', text }).source, path, value);

test('a part is written where no part stands yet, under an empty key, and behind the others', () => {
  const first = grown('handspike: kit 1\n', ['parts', 'stick', 'part'], 'bar');
  expect(first).toBe('handspike: kit 1\nparts:\n  stick:\n    part: bar\n');
  expect(grown('parts:\n', ['parts', 'stick', 'part'], 'bar')).toBe('parts:\n  stick:\n    part: bar\n');
  expect(grown(`${first}# the end\n`, ['parts', 'W1', 'of'], '2 kg')).toBe(
    'handspike: kit 1\nparts:\n  stick:\n    part: bar\n  W1:\n    of: 2 kg\n# the end\n',
  );
});

test('tables and setups are written one behind the other, and each is taken out again', () => {
  const one = grown('title: A\n', ['tables', 0, 'table'], '1') ?? '';
  expect(one).toBe('title: A\ntables:\n  - table: 1\n');
  const two = grown(one, ['tables', 1, 'table'], '2') ?? '';
  expect(two).toBe('title: A\ntables:\n  - table: 1\n  - table: 2\n');
  const setup = grown(two, ['tables', 0, 'setups', 0, 'setup'], 'A') ?? '';
  expect(setup).toBe('title: A\ntables:\n  - table: 1\n    setups:\n      - setup: A\n  - table: 2\n');
  const next = grown(setup, ['tables', 0, 'setups', 1, 'setup'], 'B') ?? '';
  expect(next).toContain('      - setup: A\n      - setup: B\n  - table: 2\n');
  expect(grown(next, ['tables', 0, 'setups', 1], '')).toBe(setup);
  expect(grown(setup, ['tables', 0], '')).toBe('title: A\ntables:\n  - table: 2\n');
  expect(grown(setup, ['tables', 1], '')).toBe(
    'title: A\ntables:\n  - table: 1\n    setups:\n      - setup: A\n',
  );
});

test('what holds nothing else goes with what is taken out', () => {
  const visit = 'date: 2026-05-12\nroles:\n  4:\n    load: W1\ngroups: 6\n';
  expect(grown(visit, ['roles', '4', 'load'], '')).toBe('date: 2026-05-12\ngroups: 6\n');
  const activity = 'title: A\ntables:\n  - table: 1\n    setups:\n      - setup: A\nage: 9\n';
  expect(grown(activity, ['tables', 0, 'setups', 0], '')).toBe('title: A\ntables:\n  - table: 1\nage: 9\n');
  expect(grown(activity, ['tables', 0], '')).toBe('title: A\nage: 9\n');
  expect(grown('title: A\n', ['title'], '')).toBeNull();
});

test('what stands on one line in brackets goes on in brackets, and a list has no gaps', () => {
  expect(grown('a: {b: c}\n', ['a', 'x', 'y'], '1')).toBe('a: {b: c, x: { y: 1 }}\n');
  expect(grown('a: {b: c}\n', ['a', 'x', 0, 'y'], '1')).toBeNull();
  expect(grown('tables:\n  - table: 1\n', ['tables', 5, 'table'], '2')).toBeNull();
  expect(grown('a: 1\n', ['parts', 'x', 'y'], ' ')).toBe('a: 1\n');
});

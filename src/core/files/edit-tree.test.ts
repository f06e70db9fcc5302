import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Path } from './context.ts';
import { withValue } from './edit-text.ts';
import { withValueInTree } from './edit-tree.ts';
import type { Node } from './node.ts';
import { readYaml } from './yaml-tree.ts';

const demo = (name: string) => {
  const text = readFileSync(new URL(`../../../examples/brackwater/${name}`, import.meta.url), 'utf8');
  return readYaml({ name, text });
};
const TREES = ['boathouse.kit.yaml', 'harbour-day.activity.yaml', 'harbour-day.visit.yaml'].map(demo);

const textsIn = (node: Node, path: Path = []): readonly Path[] => {
  if (node.kind === 'map') return node.entries.flatMap((entry) => textsIn(entry.node, [...path, entry.key]));
  if (node.kind === 'list') return node.items.flatMap((item, n) => textsIn(item, [...path, n]));
  return node.kind === 'text' ? [path] : [];
};
const PLACES = TREES.flatMap((tree) => textsIn(tree.root as Node).map((path) => ({ tree, path })));

describe('the tree of a file with one value written anew', () => {
  test('is, to the last offset, the tree of the file that is written and read again', () => {
    const value = fc.oneof(
      fc.constantFrom('hole 2', '3.5 N ± 0.1 N', '1,5 N', 'a: b', 'back\\', '"said"'),
      fc.string({ unit: 'grapheme-ascii', minLength: 1, maxLength: 12 }),
    );
    let made = 0;
    fc.assert(
      fc.property(fc.constantFrom(...PLACES), value, ({ tree, path }, written) => {
        const fresh = withValueInTree(tree, path, written);
        if (fresh === null) return;
        made += 1;
        const text = withValue(tree.source, path, written) ?? '';
        expect(fresh.source.text).toBe(text);
        expect(fresh).toEqual(readYaml({ name: tree.source.name, text }));
      }),
      { numRuns: 150 },
    );
    expect(made).toBeGreaterThan(100);
  });

  test('is not made where the rest is read otherwise, where nothing stands, or where faults stand', () => {
    const [kit] = TREES;
    if (kit === undefined) throw new RangeError('no kit');
    expect(withValueInTree(kit, ['handspike'], 'kit 2')).toBeNull();
    expect(withValueInTree(kit, ['parts', 'nobody', 'mass'], '1 g')).toBeNull();
    const twice = readYaml({ name: 'k', text: 'a: { b: 1, b: 2 }\n' });
    expect(twice.diagnostics.length).toBe(1);
    expect(withValueInTree(twice, ['a', 'b'], '3')).toBeNull();
  });
});

import { expect, test } from 'vitest';
import type { Block } from './block.ts';
import { fittedColumns } from './fitted-columns.ts';

const pair = (width: number): Block => ({
  block: 'together',
  blocks: [
    {
      block: 'columns',
      shares: [61, 39],
      columns: [
        [{ block: 'figure', svg: '<svg/>', alt: 'a bar', width }],
        [{ block: 'text', text: 'Pull.' }],
      ],
    },
  ],
});
const sharesOf = (blocks: readonly Block[]) =>
  [...JSON.stringify(blocks).matchAll(/"shares":\[([\d.]+),([\d.]+)\]/g)].map(([, a, b]) => [
    Number(a),
    Number(b),
  ]);

test('the widest picture says how much room the words beside all of them have', () => {
  expect(sharesOf(fittedColumns([pair(70), pair(90)], 180))).toEqual([
    [90, 90],
    [90, 90],
  ]);
});

test('a small picture leaves room for its caption, and columns of words stay as they are', () => {
  const words: Block = { block: 'columns', shares: [1, 1], columns: [[], []] };
  expect(sharesOf(fittedColumns([words, pair(10)], 200))).toEqual([
    [1, 1],
    [72, 128],
  ]);
});

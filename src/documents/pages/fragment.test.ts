import { expect, test } from 'vitest';
import { path, together, words } from '../drawing/ink.ts';
import { svgSheet } from '../drawing/svg-sheet.ts';
import { fragment } from './fragment.ts';

const line = [
  [0, 0],
  [9, 0],
] as const;

test('a drawing on another page has neither a style element nor a style attribute, and loses nothing by it', () => {
  const strokes = (['outline', 'accent'] as const).flatMap((stroke) =>
    (['none', 'paper', 'solid'] as const).map((fill) => path(line, stroke, true, fill)),
  );
  const svg = svgSheet(together([...strokes, words([1, 1], 'pull')]), 1, {
    name: 'strip 1',
    title: 'A strip',
    description: 'style="none" <style>',
  });
  const piece = fragment(svg, 'L1');
  expect(piece).not.toMatch(/<style|style="[a-z]+:/);
  expect(piece.match(/stroke="var\(--brass,currentColor\)"/g)).toHaveLength(3);
  expect(piece.match(/fill="var\(--paper,none\)"/g)).toHaveLength(2);
  expect(piece).toContain('<text class="lettering" fill="currentColor" stroke="none" ');
  expect(piece).toContain('style=&quot;none&quot; &lt;style&gt;');
});

test('two pieces on one page have ids of their own, and what points at them goes along', () => {
  const svg = svgSheet(path(line, 'thin'), 1, { name: 'strip', title: 'A', description: 'B' });
  const [one, other] = ['table 1', 'table 2'].map((name) => fragment(svg, name));
  expect(one).toContain('aria-labelledby="table-1-strip-title table-1-strip-desc"');
  expect(one).toContain('id="table-1-strip-title"');
  expect(other).not.toContain('table-1');
});

test('a style that has no attribute is refused and not dropped', () => {
  expect(() => fragment('<p style="color:red">', 'x')).toThrow(RangeError);
});

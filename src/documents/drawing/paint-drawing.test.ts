import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boathouse, setupNamed } from '../../../test/documents/boathouse.ts';
import type { Drawing, Point } from '../../core/description/drawing.ts';
import { besideSide } from './dimension-rows.ts';
import { scaleBarLength } from './drawing-scale.ts';
import { hatching } from './hatching.ts';
import { paintDrawing } from './paint-drawing.ts';

const sheet = boathouse();
const options = {
  language: 'en',
  what: 'Setup L1: Lever',
  width: 112,
  height: 84,
  load: { label: 'brass', mass: 0.5, weight: null },
  scaleEnds: ['0', '5'],
} as const;
const drawingOf = (mark: string): Drawing => setupNamed(sheet, mark).figures[0]?.drawing ?? { shapes: [] };
const drawing = drawingOf('L1');
const reductionOf = (svg: string): number => Number(/to scale 1 : ([\d.]+)/.exec(svg)?.[1]);
const numbersOf = (d: string): readonly number[] => [...d.matchAll(/-?[\d.]+/g)].map(Number);

test('the bar is as long on paper as its scale says', () => {
  const svg = paintDrawing(drawing, options);
  const outlines = [...svg.matchAll(/<path d="M([^"]+)Z"/g)].map((match) => numbersOf(match[1] ?? ''));
  const widths = outlines.map((xy) => {
    const xs = xy.filter((_, n) => n % 2 === 0);
    return Math.max(...xs) - Math.min(...xs);
  });
  const bar = 600 / reductionOf(svg);
  expect(widths.some((width) => Math.abs(width - bar) < 0.03)).toBe(true);
});

test('the scale of the drawing is the largest round one that fits its room', () => {
  const wide = paintDrawing(drawing, { ...options, width: 300, height: 200 });
  expect(reductionOf(wide)).toBeLessThan(reductionOf(paintDrawing(drawing, options)));
  const [, , width, height] = numbersOf(/viewBox="([^"]+)"/.exec(wide)?.[1] ?? '');
  expect(width).toBeLessThanOrEqual(300);
  expect(height).toBeLessThanOrEqual(200);
});

test('a scale that hangs upside down is drawn upside down, numbers and all', () => {
  expect(paintDrawing(drawing, options)).toMatch(/<text[^>]*rotate\(180[^>]*>5<\/text>/);
  const upright = paintDrawing(drawingOf('L3'), options);
  expect(upright).not.toMatch(/rotate\(180/);
});

test('a drawing tells nothing of the force unless it is asked to', () => {
  const stronger: Drawing = {
    shapes: drawing.shapes.map((shape) => (shape.shape === 'effort' ? { ...shape, newtons: 4 } : shape)),
  };
  expect(paintDrawing(stronger, options)).toBe(paintDrawing(drawing, options));
  const shown = { ...options, force: { newtons: 4, millimetresPerNewton: 6 } };
  expect(paintDrawing(drawing, shown)).not.toBe(paintDrawing(drawing, options));
});

test('a drawing says in words where the load hangs and how the scale is held', () => {
  const svg = paintDrawing(drawing, options);
  expect(svg).toContain('a bar 60 cm long');
  expect(svg).toContain('The brass (500 g) hangs in hole 3, 3 holes (15 cm) left of the pivot.');
  expect(svg).toContain(
    'The pull goes down in hole 11, 5 holes (25 cm) right of the pivot, through a scale that hangs upside down.',
  );
});

test('every element of a drawing is closed and no number is lost', () => {
  for (const table of sheet.tables)
    for (const { mark, load } of table.setups) {
      const svg = paintDrawing(drawingOf(mark), { ...options, load });
      expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
      const open = [...svg.matchAll(/<([a-z]+)(?:\s[^>]*[^/])?>/g)].map((match) => match[1]);
      const closed = [...svg.matchAll(/<\/([a-z]+)>/g)].map((match) => match[1]);
      expect([...open].sort()).toEqual([...closed].sort());
    }
});

test('a scale bar is a round length about as long as wished', () => {
  fc.assert(
    fc.property(fc.constantFrom(0.5, 1, 2, 2.5, 5, 8, 10, 20, 50), (reduction) => {
      const length = scaleBarLength(reduction, 30);
      expect((length * 1000) / reduction).toBeGreaterThan(11);
      expect((length * 1000) / reduction).toBeLessThanOrEqual(30.1);
      expect([1, 2, 5]).toContain(Number(length.toExponential(6).split('e')[0]));
    }),
    { seed: 7 },
  );
});

test('hatching never leaves its outline', () => {
  const coordinate = fc.double({ min: 0, max: 40, noNaN: true });
  fc.assert(
    fc.property(coordinate, coordinate, coordinate, coordinate, (a, b, c, d) => {
      const [left, right, top, bottom] = [Math.min(a, b), Math.max(a, b), Math.min(c, d), Math.max(c, d)];
      const outline: readonly Point[] = [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ];
      const xy = numbersOf(/ d="([^"]*)"/.exec(hatching(outline, 1.3).svg)?.[1] ?? '');
      xy.forEach((value, n) => {
        const [low, high] = n % 2 === 0 ? [left, right] : [top, bottom];
        expect(value).toBeGreaterThanOrEqual(low - 0.011);
        expect(value).toBeLessThanOrEqual(high + 0.011);
      });
    }),
    { seed: 11 },
  );
});

test('a sketch bears no scale and says so', () => {
  const sketch = paintDrawing({ ...drawing, isSketch: true }, options);
  expect(sketch).not.toMatch(/1 : \d/);
  expect(sketch).toContain('a sketch, not to scale');
  expect(sketch).toContain('Not to scale: it shows how the line runs.');
});

test('what will be read is said last, and only where it is asked for', () => {
  const reads = 'Expected 2.6 N; good range 2.4 to 2.8 N.';
  expect(paintDrawing(drawing, { ...options, reads })).toContain(`${reads}</desc>`);
  expect(paintDrawing(drawing, options)).not.toContain('good range');
});

test('a line to another picture says where it goes, in the picture and to someone who hears it', () => {
  const shapes = drawing.shapes.map((shape) =>
    shape.shape === 'effort'
      ? ({
          shape: 'link',
          from: shape.from,
          direction: shape.direction,
          key: 'compound.label.to',
          facts: { stage: 2 },
        } as const)
      : shape,
  );
  const svg = paintDrawing({ shapes }, options);
  expect(svg).toMatch(/<text[^>]*>line to stage 2<\/text>/);
  expect(svg).toContain(
    'A cord leaves the picture in hole 11, 5 holes (25 cm) right of the pivot: line to stage 2.',
  );
});

test('words that find no room within a dimension stand where no extension line runs through them', () => {
  const narrow = { from: [0, 0], to: [2, 0], row: 1, text: '1.09 cm' } as const;
  const alone = besideSide(narrow, [narrow]);
  const crossedRight = besideSide(narrow, [narrow, { from: [0, 0], to: [12, 0], row: 2, text: '5.09 cm' }]);
  const crossedBoth = besideSide(narrow, [narrow, { from: [-8, 0], to: [12, 0], row: 2, text: '5.09 cm' }]);
  expect([alone, crossedRight, crossedBoth]).toEqual([1, -1, 1]);
});

test('a longer name of the scale in another language takes no hole its number', () => {
  const texts = (svg: string) => [...svg.matchAll(/<text[^>]*>([^<]+)</g)].map((match) => match[1] ?? '');
  for (const mark of ['L1', 'L2'])
    for (let width = 64; width <= 124; width += 4) {
      const [english, spanish] = (['en', 'es'] as const).map((language) =>
        texts(paintDrawing(drawingOf(mark), { ...options, language, width })),
      );
      const holes = (found: readonly string[] | undefined) =>
        found?.filter((text) => /^\d+$/.test(text)) ?? [];
      expect(holes(english).length).toBeGreaterThanOrEqual(5);
      expect(holes(spanish)).toEqual(expect.arrayContaining([...holes(english)]));
      expect(spanish).toEqual(expect.arrayContaining(['dinamómetro', 'invertido', 'tira']));
    }
});

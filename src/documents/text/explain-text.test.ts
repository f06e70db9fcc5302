import { expect, test } from 'vitest';
import { boathouse, setupNamed } from '../../../test/documents/boathouse.ts';
import { explainText } from './explain-text.ts';
import { reasonsOf } from './reasons.ts';

const sheet = boathouse();
const MATHS = [
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'sqrt',
  'exp',
  'abs',
  'min',
  'max',
  'hypot',
  'floor',
  'ceil',
];

/** Works out a printed expression with nothing but arithmetic: numbers, brackets, the named functions. */
function workOut(expression: string): number {
  expect(expression).toMatch(/^[\d\s.,+\-*/^()a-z]+$/);
  const script = expression
    .replaceAll('^', '**')
    .replace(/\bln\b/g, 'log')
    .replace(/\bpi\b/g, 'PI');
  return new Function(...MATHS, 'log', 'PI', `return (${script});`)(
    ...MATHS.map((name) => (Math as unknown as Record<string, unknown>)[name]),
    Math.log,
    Math.PI,
  ) as number;
}

const equations = (text: string) =>
  text.split('\n').flatMap((line) => {
    const match = /^ {6}(\S+) = (.+?) {3}\[(.+)\]$/.exec(line);
    return match === null ? [] : [{ line, sides: (match[2] ?? '').split(' = '), source: match[3] ?? '' }];
  });

test.each(['L1', 'L2', 'L3', 'L4', 'S1', 'J1'])(
  'every printed line of %s gives its printed result from its printed numbers',
  (mark) => {
    const text = explainText('en', setupNamed(sheet, mark));
    const lines = equations(text);
    expect(lines.length).toBeGreaterThan(3);
    for (const { line, sides, source } of lines) {
      const result = Number((sides.at(-1) ?? '').split(' ')[0]);
      const numbers = sides.at(-2);
      expect(source, line).not.toBe('');
      if (numbers === undefined) continue;
      const worked = workOut(numbers);
      // Six figures printed; differences of nearly equal terms lose a few of them.
      expect(Math.abs(worked - result), line).toBeLessThanOrEqual(2e-4 * Math.max(Math.abs(result), 0.05));
    }
  },
);

test('the budget names its unknowns, how each is known, and shares that add up', () => {
  const text = explainText('en', setupNamed(sheet, 'L1'));
  expect(text).toContain('hand scatter');
  expect(text).toContain('assumed');
  const shares = [...text.matchAll(/ ([\d.]+) % /g)].map((match) => Number(match[1]));
  expect(shares.length).toBeGreaterThan(4);
  expect(Math.abs(shares.reduce((sum, each) => sum + each, 0) - 100)).toBeLessThan(1);
});

test("explain gives the same reasons as the key, the scale's own among them", () => {
  const setup = setupNamed(sheet, 'L1');
  const reasons = reasonsOf('en', setup);
  expect(reasons[0]).toMatch(/^the scale hangs upside down with its zero set hook down/);
  for (const reason of reasons) expect(explainText('en', setup)).toContain(`  - ${reason}\n`);
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { messagesOf } from './messages.ts';

const folder = new URL('./spoilt/', import.meta.url);
const read = (name: string) => readFileSync(new URL(name, folder), 'utf8');
const kit = read('sound-bench.kit.yaml');
const activities = ['levers', 'slopes', 'lines', 'threads'].map((name) => ({
  activity: read(`sound-${name}.activity.yaml`),
  visit: read(`impossible-${name}.visit.yaml`),
}));

/** What a hurried hand does to a line: leaves it out, writes it twice, puts something else in it. */
const slip = fc.record({
  at: fc.double({ min: 0, max: 0.999, noNaN: true }),
  how: fc.constantFrom('drop', 'double', 'value', 'key', 'indent', 'cut'),
  put: fc.constantFrom(
    ...['0 cm', '0 g', '-3 cm', '1e5 m', '90 deg', '0', '1', '99', 'hole 1', 'hole 99', 'none', 'yes', 'oak'],
    ...[
      '5 N ± 9 N',
      '0..0',
      '0 kg',
      '1000 kg',
      '0.0001 mm',
      '9, starting 10',
      'dry pin',
      '',
      'lever',
      '#',
      '"',
    ],
  ),
});
type Slip = { readonly at: number; readonly how: string; readonly put: string };

function mangled(text: string, { at, how, put }: Slip): string {
  const lines = text.split('\n');
  const n = Math.floor(at * lines.length);
  const line = lines[n] ?? '';
  const changed: Readonly<Record<string, readonly string[]>> = {
    drop: [],
    double: [line, line],
    value: [line.replace(/(: ).*$/, `$1${put}`)],
    key: [line.replace(/[a-z]/, 'x')],
    indent: [` ${line}`],
    cut: [line.slice(0, Math.floor(line.length / 2))],
  };
  return lines.toSpliced(n, 1, ...(changed[how] ?? [line])).join('\n');
}

describe('files as a hurried hand leaves them', () => {
  it('are prepared without a fall, and everything found has its words and its line', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...activities),
        fc.array(slip, { maxLength: 3 }),
        fc.array(slip, { maxLength: 2 }),
        fc.array(slip, { maxLength: 1 }),
        ({ activity, visit }, ofKit, ofActivity, ofVisit) => {
          const { text } = messagesOf({
            kit: { name: 'a.kit.yaml', text: ofKit.reduce(mangled, kit) },
            activity: { name: 'a.activity.yaml', text: ofActivity.reduce(mangled, activity) },
            visit: { name: 'a.visit.yaml', text: ofVisit.reduce(mangled, visit) },
          });
          expect(text).not.toMatch(/NaN|Infinity|undefined|\{[a-z]+\}(?! )/i);
        },
      ),
      { seed: 20260513, numRuns: 150 },
    );
  });
});

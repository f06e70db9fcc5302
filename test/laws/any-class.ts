import fc from 'fast-check';
import type { Prepared } from '../../src/core/prepare.ts';
import { figureOf } from '../../src/core/readings/figure.ts';
import { ownUnit } from '../../src/core/readings/judgement.ts';
import { setupsOf } from '../../src/core/review.ts';

/** How a class writes, as one is never met and as one is met every week. */
export interface AnyClass {
  readonly groups: number;
  readonly shape: 'honest' | 'all equal' | 'all at the stop' | 'all by a factor' | 'anything' | 'twice';
  readonly factor: number;
  readonly slips: readonly Slip[];
}

interface Slip {
  readonly at: number;
  readonly written: string;
}

const HOSTILE = [
  ...[
    '',
    ' ',
    '-',
    '0',
    '-3',
    '-0',
    '1e300',
    '1e308 N',
    '1e309',
    '1e-300',
    '4e-324 N',
    'NaN',
    'Infinity',
    '∞',
  ],
  ...[
    '9'.repeat(400),
    `0.${'0'.repeat(330)}1`,
    'stop',
    'at the stop',
    'off the scale',
    '> 3',
    '< 0',
    'O.8',
    'about 2',
  ],
  ...[
    '2.4 lb',
    '240 g',
    '3/0',
    '1/3',
    '0/0 N',
    '2,5',
    '1.2.3',
    '2 or 3',
    '1e5',
    '__proto__',
    '{Group}',
    '=1+1',
    '0.5\n0.6',
  ],
  ...[
    '2.4 +/- 0.1',
    '1 N 2 N',
    '0 N; 0 N',
    '1e200; 1e200; 1e200',
    '-1e300..1e300',
    '5 kg',
    '1000000 lb',
    '½',
  ],
];

const COMPUTED = ['', '0', '2', '1e308', '-1', 'NaN', '1/0', '3.5 J'];

export const anyClass: fc.Arbitrary<AnyClass> = fc.record({
  groups: fc.constantFrom(1, 2, 5, 12),
  shape: fc.constantFrom('honest', 'all equal', 'all at the stop', 'all by a factor', 'anything', 'twice'),
  factor: fc.constantFrom(0, 0.1, 0.5, 2, 10, 101.97, 1e6, -1),
  slips: fc.array(fc.record({ at: fc.nat(40), written: fc.constantFrom(...HOSTILE) }), { maxLength: 8 }),
});

/** What a group writes where it reads what is expected there, times a factor. */
function expectedAt(prepared: Prepared, n: number, factor: number): string {
  const at = setupsOf(prepared)[n];
  const figure = at === undefined ? null : figureOf(at.prediction.outcome);
  if (at === undefined || figure === null) return String(2 * factor);
  const step = at.prediction.graduations?.step ?? 0.1;
  const unit = ownUnit(at.setup)?.si ?? 1;
  return String(Number(((Math.round(figure.low / step) * step * factor) / unit).toPrecision(4)));
}

export interface Row {
  readonly group: string;
  readonly setup: string;
  readonly reading: string;
  readonly ease: string;
  readonly advantage: string;
}

/** The rows that such a class hands in. */
export function rowsOf(prepared: Prepared, { groups, shape, factor, slips }: AnyClass): readonly Row[] {
  const marks = setupsOf(prepared).map(({ setup }) => setup.mark);
  const all = Array.from({ length: groups }, (_, g) =>
    marks.map((setup, n): Row => {
      const written = {
        honest: () => expectedAt(prepared, n, 1),
        'all equal': () => '2',
        'all at the stop': () => 'at the stop',
        'all by a factor': () => expectedAt(prepared, n, factor),
        anything: () => HOSTILE[(7 * g + 3 * n) % HOSTILE.length] ?? '',
        twice: () => expectedAt(prepared, n, 1),
      }[shape]();
      const ease = String(1 + ((g + n) % 3));
      return { group: `g${g + 1}`, setup, reading: written, ease, advantage: COMPUTED[(g + n) % 8] ?? '' };
    }),
  ).flat();
  const rows = shape === 'twice' ? [...all, ...all] : all;
  return rows.map((row, n) => {
    const slip = slips.find(({ at }) => at % rows.length === n);
    return slip === undefined ? row : { ...row, reading: slip.written };
  });
}

const cell = (text: string): string => `"${text.replaceAll('"', '""')}"`;

/** The rows as a spreadsheet writes them. */
export const csvOf = (rows: readonly Row[]) => ({
  name: 'readings.csv',
  text: [
    'group,setup,reading,ease,advantage',
    ...rows.map(({ group, setup, reading, ease, advantage }) =>
      [group, setup, reading, ease, advantage].map(cell).join(','),
    ),
  ].join('\n'),
});

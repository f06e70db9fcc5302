import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, it, test } from 'vitest';
import { review } from '../../src/core/review.ts';
import { reviewCsv } from '../../src/documents/text/review-csv.ts';
import { reviewJson } from '../../src/documents/text/review-json.ts';
import { reviewTable } from '../../src/documents/text/review-table.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';

/** Rows of the demo's setups with what groups may make of them in the computed columns. */
const found = review(demoPrepared(), {
  name: 'reckoned.csv',
  text: readFileSync(join(import.meta.dirname, 'reckoned.csv'), 'utf8'),
});

interface Reckoned {
  readonly group: string;
  readonly setup: string;
  readonly reckoned: readonly {
    readonly column: string;
    readonly verdict: string;
    readonly ways: readonly { readonly code: string }[];
    readonly shouldBe: number | null;
  }[];
}
const { readings } = JSON.parse(reviewJson('en', found)) as { readonly readings: readonly Reckoned[] };
const of = (group: string, setup: string, column: string) =>
  readings
    .find((each) => each.group === group && each.setup === setup)
    ?.reckoned.find((each) => each.column === column);

describe('what groups reckoned themselves', () => {
  test.each(['en', 'es'] as const)('is told row by row as it was looked at, in %s', async (language) => {
    // What the class found has goldens of its own.
    const [rows = ''] = reviewTable(language, found, 'reckoned.csv').split(/\n\n(?=What the|Lo que)/);
    await expect(`${rows}\n`).toMatchFileSnapshot(`reckoned.${language}.golden.txt`);
  });

  // 0.5 kg x 9.81 m/s2 / 2.8 N = 3.5 and so on, by hand.
  test.each([
    ['A', 'T1', 'advantage', 'as the key', 'reckoning.load-over-pull'],
    ['B', 'T2', 'advantage', 'slip', 'reckoning.upside-down'],
    ['B', 'T2', 'workIn', 'not found', undefined],
    ['D', 'T2', 'advantage', 'another way', 'reckoning.ideal'],
    ['D', 'T2', 'workOut', 'slip', 'reckoning.centimetres-for-metres'],
    ['E', 'T2', 'advantage', 'slip', 'tackle.fall-counted'],
    ['G', 'L1', 'advantage', 'slip', 'reckoning.grams-over-newtons'],
    ['G', 'L1', 'workIn', 'unreadable', undefined],
    ['J', 'S1', 'advantage', 'not judged', undefined],
    ['K', 'P1', 'advantage', 'not judged', undefined],
  ])(
    'is told by the reckoning that gives its number: %s at %s, %s',
    (group, setup, column, verdict, code) => {
      const reckoned = of(group, setup, column);
      expect([reckoned?.verdict, reckoned?.ways[0]?.code]).toEqual([verdict, code]);
    },
  );

  it('is held against what was meant, where the number that was written counts something else', () => {
    for (const [group, setup] of [
      ['C', 'T2'],
      ['F', 'L1'],
    ] as const)
      expect(of(group, setup, 'advantage')?.verdict).toBe('as the key');
    expect(of('C', 'T2', 'advantage')?.shouldBe).toBeCloseTo((1 * 9.81) / 2.8, 1);
    expect(of('F', 'L1', 'advantage')?.shouldBe).toBeCloseTo(500 / 225, 2);
  });

  it('stands in the CSV beside what was written, each column with its own reckoning', () => {
    const { data } = Papa.parse<Record<string, string>>(reviewCsv('en', found), { header: true });
    const row = data.find((each) => each.group === 'B');
    expect(row?.advantage).toBe('0,29');
    expect(row?.['advantage by']).toBe('look at the reckoning again: pull divided by load');
    expect(row?.['work in by']).toBe('nothing on the list gives this');
    expect(row?.['work out by']).toBe('as the key: load times lift');
    const again = review(demoPrepared(), { name: 'again.csv', text: reviewCsv('es', found) });
    expect(again.judged.map(({ judgement }) => judgement.reading.computed)).toEqual(
      found.judged.map(({ judgement }) => judgement.reading.computed),
    );
  });

  it('moves no pull: the readings are judged as without it', () => {
    const bare = review(demoPrepared(), {
      name: 'bare.csv',
      text: [
        'group;setup;reading',
        ...found.judged.map(
          ({ judgement: { reading } }) => `${reading.group};${reading.setup};${reading.written}`,
        ),
      ].join('\n'),
    });
    expect(bare.judged.map(({ judgement }) => [judgement.verdict, judgement.causes])).toEqual(
      found.judged.map(({ judgement }) => [judgement.verdict, judgement.causes]),
    );
  });
});

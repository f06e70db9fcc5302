import { describe, expect, it, test } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import type { FindingTest, TableFinding } from '../../core/readings/table-finding.ts';
import type { TestKind, Tie } from '../../core/readings/telling-test.ts';
import { review, setupsOf } from '../../core/review.ts';
import { causeName } from './cause-text.ts';
import { habitText, tableFindingText, tieText } from './class-findings-text.ts';
import { reviewTable } from './review-table.ts';

const prepared = demoPrepared();
const setups = setupsOf(prepared);
const languages = ['en', 'es'] as const;

const oldZero = causeName('en', { code: 'scale.zero-from-hook-down' });

const finding = (own: Partial<TableFinding>): TableFinding => ({
  table: '1',
  kind: 'same mistake',
  code: 'scale.zero-from-hook-down',
  behind: [
    { what: 'station', probability: 0.7, from: 'C' },
    { what: 'card', probability: 0.3, from: null },
  ],
  groups: 6,
  of: 8,
  figures: [{ setup: 'L1', expected: 2.16, found: 1.92, u: 0.05 }],
  test: { kind: 'zero-again', setup: 'L1', ifStation: 1.92, ifCard: 2.16 },
  ...own,
});

describe('what a whole table says', () => {
  it('names how many groups, the figures on the scale, both causes and the test with both its outcomes', () => {
    expect(tableFindingText('en', finding({}), setups)).toEqual([
      `Table 1: 6 of 8 groups found what this would leave: ${oldZero}.`,
      'L1: 1.9 N is found, 2.2 N was expected.',
      'Perhaps the station has changed, from group C on (70 %).',
      'Perhaps the card leads everybody there (30 %).',
      'To tell: look at the zero of the scale as it hangs, and read L1 by its card. 1.9 N says that the station has changed, 2.2 N that it is sound.',
    ]);
  });

  it('carries the decimal mark of its language', () => {
    expect(tableFindingText('es', finding({}), setups)[1]).toBe('L1: se encuentra 1,9 N, se esperaba 2,2 N.');
  });

  const kinds: Readonly<Record<FindingTest['kind'], true>> = {
    'zero-again': true,
    'look-at-load': true,
    'look-at-signs': true,
    'set-up-again': true,
  };
  test.each(Object.keys(kinds) as FindingTest['kind'][])(
    'has words in each language for the test %s',
    (kind) => {
      for (const language of languages) {
        const found = finding({ test: { kind, setup: 'L2', ifStation: 4.1, ifCard: 4.4 } });
        const last = tableFindingText(language, found, setups).at(-1) ?? '';
        expect(last).toContain('L2');
        expect(last).toMatch(/4[.,]1 N .*4[.,]4 N/);
      }
    },
  );

  it('what one group found alone is not said to agree with others', () => {
    const said = (groups: number) =>
      languages.map(
        (language) =>
          tableFindingText(
            language,
            finding({ kind: 'off the list', code: null, groups, of: groups, test: null }),
            setups,
          )[0],
      );
    expect(said(1).filter((text) => /agree|concuerdan|1 grupos|1 groups/.test(text ?? ''))).toEqual([]);
    expect(said(2)[0]).toContain('agree with one another (2 groups)');
  });

  it('off the list names the kit, from the first group or a later one', () => {
    for (const language of languages)
      for (const from of [null, 'D']) {
        const said = tableFindingText(
          language,
          finding({
            kind: 'off the list',
            code: null,
            behind: [{ what: 'kit', probability: 0.9, from }],
            test: null,
          }),
          setups,
        );
        expect(said).toHaveLength(3);
        expect(said[2]).toContain('90 %');
        expect(said[2]?.includes(' D') ?? false).toBe(from !== null);
      }
  });
});

describe('the test that tells causes apart', () => {
  const kinds: Readonly<Record<TestKind, true>> = {
    'read-again': true,
    'zero-again': true,
    'other-way': true,
    partner: true,
    'other-load': true,
    'count-again': true,
    'look-at-unit': true,
    'check-card': true,
  };
  const tie = (kind: TestKind, figure: number | null): Tie => ({
    causes: [{ code: 'scale.carried' }, { code: 'lever.load-hole-left' }],
    test: {
      kind,
      setup: 'L2',
      way: kind === 'other-way' ? 'lower' : null,
      load: kind === 'other-load' ? 'brass 200' : null,
      shows: [
        { code: 'scale.carried', figure },
        { code: 'lever.load-hole-left', figure },
      ],
      apart: null,
    },
  });

  test.each(Object.keys(kinds) as TestKind[])(
    '%s is said in each language, with what is shown then',
    (kind) => {
      for (const language of languages) {
        const read = tieText(language, tie(kind, 4.13), setups);
        expect(read).toContain('L2');
        expect(read.match(/4[.,]1 N/g)).toHaveLength(2);
        expect(tieText(language, tie(kind, null), setups)).not.toMatch(/ N |:.*:/);
      }
    },
  );

  it('is silent where there is none', () => {
    expect(tieText('en', { causes: [], test: null }, setups)).toBe('');
  });
});

describe('a habit', () => {
  it('is said of readings, with what to ask the group to do', () => {
    const habit = {
      group: 'A',
      code: 'reading.in-grams',
      kind: 'reading',
      readings: [
        { setup: 'S1', line: 2 },
        { setup: 'S2', line: 3 },
      ],
    } as const;
    expect(habitText('en', habit)).toMatch(
      /^Group A, at S1 and S2: probably the same each time: the number counts grams\. /,
    );
    expect(habitText('es', habit)).toMatch(/^Grupo A, en S1 y S2: /);
  });

  it('that a whole table has is said once, of the table', () => {
    const found = review(prepared, { name: 'class.csv', text: 'group,setup,reading\nA,L1,1.9\nG,S1,60' });
    const readings = [{ setup: 'L1', line: 2 }];
    const printed = reviewTable(
      'en',
      {
        ...found,
        tables: [finding({})],
        groups: [
          { group: 'A', code: 'scale.zero-from-hook-down', kind: 'doing', readings },
          { group: 'G', code: 'reading.in-grams', kind: 'reading', readings },
        ],
      },
      'class.csv',
    );
    const [together = ''] = printed.split(/^line /m);
    const after = together.replace(/\s+/g, ' ');
    expect(after.split(oldZero)).toHaveLength(2);
    expect(after).toContain(' Group G, at L1: probably the same each time: the number counts grams.');
  });
});

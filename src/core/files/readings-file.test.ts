import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readReadingsFile } from './readings-file.ts';

const read = (text: string) => readReadingsFile({ name: 'readings.csv', text });

/** Letters and digits of a text: what must be found again wherever a row went. */
const lettersOf = (text: string): string => (text.match(/[\p{L}\p{N}]/gu) ?? []).sort().join('');

const whatIsKept = ({ readings, refused }: ReturnType<typeof read>): string =>
  [
    ...readings.map(({ group, setup, written, note }) => [group, setup, written, note].join(' ')),
    ...refused.map(({ text }) => text),
  ].join(' ');

describe('a readings file', () => {
  it('is read whatever separates its cells and in whatever order its columns stand', () => {
    const wanted = { group: 'A', setup: 'L1', written: '2.2', note: 'hook slipped', line: 2 };
    for (const text of [
      'group,setup,reading,note\nA,L1,2.2,hook slipped\n',
      'Setup;Reading;Group;Note\r\nL1;2.2;A;hook slipped\r\n',
      'note\treading\tsetup\tgroup\nhook slipped\t2.2\tL1\tA',
      '\uFEFFgroup,setup,reading,note\nA,L1,"2.2",hook slipped',
    ])
      expect(read(text)).toEqual({ readings: [wanted], refused: [], notes: [] });
  });

  it('keeps a decimal comma where semicolons or tabs separate, or in quotes', () => {
    const written = (text: string) => read(text).readings.map((reading) => reading.written);
    expect(written('group;setup;reading;note\nA;L1;2,2;\nB;L2;"4,4";\n')).toEqual(['2,2', '4,4']);
    expect(written('group\tsetup\treading\nA\tL1\t2,2\nB\tL2\t,5\n')).toEqual(['2,2', ',5']);
    expect(written('group,setup,reading\nA,L1,"2,2"\nB,L2,4.4\n')).toEqual(['2,2', '4.4']);
  });

  it('refuses a row with a decimal comma too many and keeps it as it stands', () => {
    const { readings, refused } = read('group,setup,reading\nA,L1,2,2\nB,L2,4.4\n');
    expect(readings.map(({ group }) => group)).toEqual(['B']);
    expect(refused).toEqual([{ line: 2, text: 'A, L1, 2, 2', because: 'readings.long-row' }]);
  });

  test.each([
    ['no setup', 'readings.no-setup', 'A,,2.2,', 2],
    ['too few cells', 'readings.short-row', 'A,L1', 2],
    ['a quote that never ends', 'readings.open-quote', 'A,L1,"2.2,', 2],
    ['too many cells', 'readings.long-row', '\nA,L1,2.2,,x', 3],
  ])('refuses a row with %s by its line and why', (_, because, row, line) => {
    const { readings, refused } = read(`group,setup,reading,note\n${row}\n`);
    expect(readings).toEqual([]);
    expect(refused.map((each) => [each.because, each.line])).toEqual([[because, line]]);
  });

  it('counts lines as an editor does: empty rows and line ends in quotes too', () => {
    const { readings } = read('\ngroup,setup,reading,note\n\nA,L1,2,"hook\nslipped"\r\n,,,\nB,L2,3,\n');
    expect(readings.map(({ group, line }) => [group, line])).toEqual([
      ['A', 4],
      ['B', 7],
    ]);
  });

  test.each([
    ['nothing', '', 0],
    ['nothing but a heading', 'group,setup,reading,note\n', 0],
    ['no heading', 'A,L1,2.2\nB,L2,4.4\n', 2],
    ['a heading without setup', 'group,reading\nA,2.2\n', 2],
  ])('with %s in it gives no reading and refuses the rest', (_, text, count) => {
    const { readings, refused } = read(text);
    expect(readings).toEqual([]);
    expect(refused).toHaveLength(count);
  });

  it('never throws and never loses a letter, whatever stands in it', () => {
    const cell = fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom(
        'L1',
        '2,2',
        '2.2 N',
        '"',
        '""',
        '\n',
        '\r\n',
        ';',
        '\t',
        ' ',
        '|',
        '海',
        '\u0000',
        '=1+1',
      ),
    );
    const joint = fc.constantFrom(',', ';', '\t', '\n', '\r\n', '', '|');
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, joint), { maxLength: 30 }), (pieces) => {
        const text = pieces.flat().join('');
        expect(lettersOf(whatIsKept(read(text)))).toBe(lettersOf(text));
        const rows = `group,setup,reading,note\n${text}`;
        expect(lettersOf(whatIsKept(read(rows)))).toBe(lettersOf(text));
      }),
      { seed: 20260512, numRuns: 1500 },
    );
  });

  it('gives every row back as it was written, in its order, a line each', () => {
    const cell = fc
      .string({ unit: fc.constantFrom('a', 'Z', '0', '7', '.', ',', '"', ' ', '½', '-'), maxLength: 6 })
      .map((text) => text.trim());
    const setup = fc.constantFrom('L1', 'L 2', 'Ü,3', '"4"', 'a;b');
    const row = fc.record({ group: cell, setup, written: cell, note: cell });
    const quoted = (text: string, mark: string): string =>
      text.includes(mark) || /["\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 12 }),
        fc.constantFrom(',', ';', '\t'),
        fc.constantFrom('\n', '\r\n'),
        fc.boolean(),
        (rows, mark, end, endsWithIt) => {
          const lines = rows.map(({ group, setup: where, written, note }) =>
            [group, where, written, note].map((each) => quoted(each, mark)).join(mark),
          );
          const text = [['group', 'setup', 'reading', 'note'].join(mark), ...lines].join(end);
          const found = read(endsWithIt ? `${text}${end}` : text);
          expect(found.refused).toEqual([]);
          expect(found.readings).toEqual(rows.map((each, n) => ({ ...each, line: n + 2 })));
        },
      ),
      { seed: 20260512, numRuns: 600 },
    );
  });
});

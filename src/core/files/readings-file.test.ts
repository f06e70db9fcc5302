import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { readReadingsFile } from './readings-file.ts';
import { withGuard, withoutGuard } from './readings-table.ts';

const read = (text: string) => readReadingsFile({ name: 'readings.csv', text });

/** Letters and digits of a text: what must be found again wherever a row went. */
const lettersOf = (text: string): string => (text.match(/[\p{L}\p{N}]/gu) ?? []).sort().join('');

const whatIsKept = ({ readings, refused, notes }: ReturnType<typeof read>): string =>
  [
    ...readings.map(({ group, setup, written, note }) => [group, setup, written, note].join(' ')),
    ...refused.map(({ text }) => text),
    ...notes.map(({ facts }) => String(facts.text ?? '')),
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

describe('a readings file as it is really kept', () => {
  const marks = ['L1', 'L2', 'P1'];
  const short = (text: string) =>
    readReadingsFile({ name: 'readings.csv', text }, marks).readings.map((reading) =>
      [reading.line, reading.group, reading.setup, reading.written].join(' '),
    );
  const notes = (text: string) =>
    readReadingsFile({ name: 'readings.csv', text }, marks).notes.map(({ line, key }) => [line, key]);

  test.each([
    ['Spanish', 'Grupo;Montaje;Lectura;Nota\nA;L1;2,2;bien'],
    ['German', 'Notiz;Gruppe;Aufbau;Messwert\nbien;A;L1;2,2'],
    ['French', 'groupe;montage;relevé;remarque\nA;L1;2,2;bien'],
    ['English in capitals', 'GROUP;SET-UP;Reading:;Notes\nA;L1;2,2;bien'],
    ['after a line that names the separator', 'sep=;\ngroup;setup;reading;note\nA;L1;2,2;bien'],
    ['under a title', 'Harbour day;;;\n12 May 2026;;;\ngroup;setup;reading;note\nA;L1;2,2;bien'],
  ])('has headings in %s', (_, text) => {
    const { readings, refused } = readReadingsFile({ name: 'readings.csv', text }, marks);
    expect(refused).toEqual([]);
    expect(readings).toEqual([
      { group: 'A', setup: 'L1', written: '2,2', note: 'bien', line: text.split('\n').length },
    ]);
  });

  it('has a unit in its heading, which is kept beside the bare number', () => {
    for (const heading of ['reading (g)', 'Messwert [g]', 'lectura en g', 'reading/g'])
      expect(read(`group;setup;${heading}\nA;L1;225`).readings[0], heading).toMatchObject({
        written: '225',
        unitAbove: 'g',
      });
  });

  it('has a column for the unit', () => {
    expect(read('group;setup;reading;unit\nA;L1;225;g\nB;L1;2,2;').readings).toEqual([
      { group: 'A', setup: 'L1', written: '225', note: '', line: 2, unitAbove: 'g' },
      { group: 'B', setup: 'L1', written: '2,2', note: '', line: 3 },
    ]);
  });

  it('has a column for each repeat: all are kept, in their order', () => {
    expect(short('group;setup;reading 1;reading 2;reading 3\nA;L1;2,2;;2,4\nB;L1;2,3;2,2;2,4')).toEqual([
      '2 A L1 2,2; 2,4',
      '3 B L1 2,3; 2,2; 2,4',
    ]);
    expect(short('group,setup,reading,reading\nA,L1,2.2,2.4')).toEqual(['2 A L1 2.2; 2.4']);
  });

  it('has one column a setup; what is blank there was not read', () => {
    const text = 'group;L1;L2 (N);note\nA;2,2;4,4;fine\nB;;4,3;\nC;;;away';
    expect(short(text)).toEqual(['2 A L1 2,2', '2 A L2 4,4', '3 B L2 4,3']);
    expect(notes(text)).toEqual([
      [null, 'readings.column-a-setup'],
      [4, 'readings.empty-row'],
    ]);
    expect(short(';L1;L1;L2\nA;2,2;2,4;4,4')).toEqual(['2 A L1 2,2; 2,4', '2 A L2 4,4']);
  });

  it('has one column a group', () => {
    const text = 'setup,Red,Blue\nL1,2.2,2.4\nL2,,4.4';
    expect(short(text)).toEqual(['2 Red L1 2.2', '2 Blue L1 2.4', '3 Blue L2 4.4']);
    expect(notes(text)).toEqual([[null, 'readings.column-a-group']]);
  });

  it('has no heading, or one in words that nobody knows: the marks tell, and it is said', () => {
    const wanted = ['A L1 2.2', 'B L2 4.4', 'C P1 3'];
    const rows = 'A,L1,2.2,\nB,L2,4.4,slipped\nC,P1,3,';
    expect(short(rows)).toEqual(wanted.map((each, n) => `${n + 1} ${each}`));
    expect(notes(rows)).toEqual([[null, 'readings.guessed-columns']]);
    expect(short(`skupina,sestava,hodnota,pozn\n${rows}`)).toEqual(
      wanted.map((each, n) => `${n + 2} ${each}`),
    );
    expect(short('2,2;L1;A\n4,4;L2;B')).toEqual(['1 A L1 2,2', '2 B L2 4,4']);
  });

  it('has merged cells for its groups: a blank group stays blank, and the one above is named', () => {
    const found = read('group,setup,reading\nA,L1,2.2\n,L2,4.4\nB,L1,2.3');
    expect(found.readings.map(({ group }) => group)).toEqual(['A', '', 'B']);
    expect(found.notes).toEqual([{ line: 3, key: 'readings.no-group', facts: { above: 'A' } }]);
  });

  it('has the same row twice, or another reading of the same group: both stand and are told', () => {
    const found = read('group,setup,reading\nA,L1,2.2\na,l1,2.2\nA,L1,2.4');
    expect(found.readings).toHaveLength(3);
    expect(found.notes.map(({ line, key, facts }) => [line, key, facts.line])).toEqual([
      [3, 'readings.same-again', 2],
      [4, 'readings.another', 2],
    ]);
  });

  it('was pasted together of two: the heading in its middle is no reading', () => {
    const text = 'group,setup,reading\nA,L1,2.2\ngroup,setup,reading\nB,L1,2.3';
    expect(short(text)).toEqual(['2 A L1 2.2', '4 B L1 2.3']);
    expect(notes(text)).toEqual([[3, 'readings.heading-again']]);
  });

  it('has columns for ease and for what was reckoned, and others that are kept', () => {
    const text = 'group,setup,reading,ease,MA,work in,Work out (J),weather\nA,L1,2.2,2,"3,1",0.44,0.4,dry';
    expect(read(text).readings).toEqual([
      {
        group: 'A',
        setup: 'L1',
        written: '2.2',
        note: '',
        line: 2,
        ease: '2',
        computed: { advantage: '3,1', workIn: '0.44', workOut: '0.4' },
        others: [{ heading: 'weather', text: 'dry' }],
      },
    ]);
    expect(notes(text)).toEqual([[null, 'readings.unused-columns']]);
  });

  it('comes from a program that guards its cells: the guard is taken off again', () => {
    expect(read("group,setup,reading\n'=A1,L1,'-1").readings[0]).toMatchObject({
      group: '=A1',
      written: '-1',
    });
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom("'", '=', '+', '-', '@', 'a', '1'), maxLength: 5 }),
        (text) => {
          expect(withoutGuard(withGuard(text))).toBe(text);
        },
      ),
      { seed: 20260512, numRuns: 300 },
    );
  });
});

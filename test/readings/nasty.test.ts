import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it, test } from 'vitest';
import { decodeText } from '../../src/cli/decode-text.ts';
import { readReadingsFile } from '../../src/core/files/readings-file.ts';
import type { SourceText } from '../../src/core/files/source-text.ts';
import { type Review, review } from '../../src/core/review.ts';
import { sentence } from '../../src/documents/sentences/sentence.ts';
import { reviewCsv } from '../../src/documents/text/review-csv.ts';
import { noteText, writtenRemarks } from '../../src/documents/text/written-remarks.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';

const FILES = ['nasty.csv', 'nasty-wide.txt', 'nasty-without-heading.csv'] as const;
const prepared = demoPrepared();
const fileNamed = (name: string): SourceText => ({
  name,
  text: decodeText(readFileSync(join(import.meta.dirname, name))),
});

/** Row by row what became of it, by its line: the cell as written, then what it means and what is told. */
function rowByRow({ judged, refused, notes }: Review): string {
  const rows = [
    ...judged.map(({ judgement: { reading, meaning, verdict, because } }) => {
      const figure =
        meaning.kind === 'number' || meaning.kind === 'bound'
          ? ` ${Number(meaning.number.toPrecision(12))} ${meaning.unit?.name ?? '(own unit)'}`
          : '';
      const side = meaning.kind === 'bound' ? ` ${meaning.side}` : '';
      return {
        line: reading.line ?? 0,
        text: [
          `${reading.group} ${reading.setup} ${JSON.stringify(reading.written)}`,
          `is ${meaning.kind}${side}${figure}: ${verdict}`,
          ...(because === null ? [] : [sentence('en', because.because, because.facts)]),
          ...writtenRemarks('en', meaning),
        ].join('\n      '),
      };
    }),
    ...refused.map((row) => ({
      line: row.line,
      text: `not used: ${JSON.stringify(row.text)}\n      ${sentence('en', row.because)}`,
    })),
    ...notes.map((note) => ({ line: note.line ?? 0, text: `note: ${noteText('en', note)}` })),
  ];
  return `${rows
    .sort((a, b) => a.line - b.line)
    .map(({ line, text }) => `${String(line).padStart(4)}  ${text}`)
    .join('\n')}\n`;
}

describe.each(FILES)('the nastiest readings file, %s,', (name) => {
  const file = fileNamed(name);
  const found = review(prepared, file);

  it('is told row by row, each with its meaning or why it could not be used', async () => {
    await expect(rowByRow(found)).toMatchFileSnapshot(`${name.replace(/\.\w+$/, '')}.golden.txt`);
  });

  it('loses no letter and no digit', () => {
    const lettersOf = (text: string): string =>
      [...new Set(text.match(/[\p{L}\p{N}]+/gu) ?? [])].sort().join(' ');
    const { readings, refused, notes } = readReadingsFile(file, ['L1', 'L2', 'L3', 'S1']);
    const kept = JSON.stringify([readings, refused.map(({ text }) => text), notes.map(({ facts }) => facts)]);
    const lost = lettersOf(file.text)
      .split(' ')
      .filter((word) => !kept.includes(word));
    // The heading is not a reading; what it says is in the columns.
    const heading = /^(Gruppe|Montaje|NOTE|Reading|Ease|L1|L2|g|S1|Bemerkung|sep)$/;
    expect(lost.filter((word) => !heading.test(word))).toEqual([]);
  });

  it('comes back from its CSV with every cell as it was written, and no cell is a formula', () => {
    const csv = reviewCsv('en', found);
    const { data } = Papa.parse<Record<string, string>>(csv, { header: true, skipEmptyLines: true });
    const used = data.filter((row) => row['row as it stands'] === '');
    expect(data).toHaveLength(found.judged.length + found.refused.length);
    const back = readReadingsFile({ name: 'again.csv', text: csv });
    expect(back.readings.map(({ group, setup, written, note }) => [group, setup, written, note])).toEqual(
      found.judged.map(({ judgement: { reading } }) => [
        reading.group,
        reading.setup,
        reading.written,
        reading.note,
      ]),
    );
    const again = review(prepared, { name: 'again.csv', text: csv });
    expect(again.judged.map(({ judgement }) => judgement.value)).toEqual(
      found.judged.map(({ judgement }) => judgement.value),
    );
    for (const [n, row] of used.entries()) {
      const { reading } = found.judged[n]?.judgement ?? {};
      // As the reader of tables guards its own, cell by cell.
      const guarded = Papa.unparse([[reading?.written ?? '']], { escapeFormulae: true, quotes: true });
      expect(`"${(row.reading ?? '').replaceAll('"', '""')}"`).toBe(guarded);
      for (const [column, cell] of Object.entries(row))
        if (column !== 'number') expect(cell).not.toMatch(/^[=+\-@]/);
    }
  });
});

describe('whatever a group writes', () => {
  it('is judged or told why not, and comes back from the CSV as it was written', () => {
    const piece = fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 4 }),
      fc.constantFrom(...'0123456789.,;/-+~<>?OolI=@\'"\n\t'.split(''), '2.2', ' N', ' g', '½', 'about '),
    );
    const cells = fc.array(piece, { maxLength: 6 }).map((pieces) => pieces.join(''));
    fc.assert(
      fc.property(cells, cells, (written, note) => {
        const text = Papa.unparse(
          [
            ['group', 'setup', 'reading', 'note'],
            ['A', 'L1', written, note],
          ],
          { quotes: true },
        );
        const found = review(prepared, { name: 'one.csv', text });
        const [judged] = found.judged;
        const { value = null, meaning } = judged?.judgement ?? {};
        expect(value === null || Number.isFinite(value)).toBe(true);
        expect(meaning).toBeDefined();
        const [again] = readReadingsFile({ name: 'again.csv', text: reviewCsv('es', found) }).readings;
        const { reading } = judged?.judgement ?? {};
        expect([again?.written, again?.note]).toEqual([reading?.written, reading?.note]);
      }),
      { seed: 20260512, numRuns: 200 },
    );
  });
});

describe('a note about how a file was read', () => {
  test.each(['en', 'es'] as const)('has a sentence in %s', (language) => {
    for (const name of FILES)
      for (const note of review(prepared, fileNamed(name)).notes)
        expect(noteText(language, note)).not.toMatch(/\{|undefined/);
  });
});

import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { confusedOnBench, measureNextAtTables } from './bench.ts';
import { isError } from './diagnostics/diagnostic.ts';
import { addedLine } from './files/bench-book-file.ts';
import { type Prepared, prepare } from './prepare.ts';
import { causesOf } from './readings/causes.ts';
import { figureOf } from './readings/figure.ts';
import { ownUnit } from './readings/judgement.ts';
import { setupNamed, setupsOf } from './review.ts';
import { standardUncertainty } from './uncertainty/measured.ts';

const file = (name: string) => ({
  name,
  text: readFileSync(new URL(`../../examples/bench-book/${name}`, import.meta.url), 'utf8'),
});
const files = {
  kit: file('slipway.kit.yaml'),
  activity: file('slipway.activity.yaml'),
  visit: file('slipway.visit.yaml'),
};
const book = file('slipway.bench.csv');
const withBook = (text: string): Prepared => prepare({ ...files, bench: { name: book.name, text } });
const without = prepare(files);

const uOf = (prepared: Prepared, mark: string): number => {
  const read = setupNamed(prepared, mark)?.prediction.read;
  if (read === undefined || read === null) throw new Error(`${mark} has no figure`);
  return standardUncertainty(read);
};
const expectedOf = (prepared: Prepared, mark: string): number => {
  const outcome = setupNamed(prepared, mark)?.prediction.outcome;
  return outcome?.kind === 'reading' ? outcome.expected : Number.NaN;
};
const line = (what: string, reading: string, more = {}) => ({
  date: '2026-05-02',
  kit: 'BB-07',
  what,
  reading,
  ...more,
});

describe('a key that follows a bench book', () => {
  it('says since when, knows no setup worse than the files do, and the one that was read much better', () => {
    const prepared = withBook(book.text);
    expect(prepared.diagnostics.filter(isError)).toEqual([]);
    for (const { setup, prediction } of setupsOf(prepared)) {
      expect(prediction.benchSince).toBe('2026-04-30');
      expect(uOf(prepared, setup.mark)).toBeLessThan(uOf(without, setup.mark) * (1 + 1e-9));
    }
    expect(uOf(prepared, 'S2')).toBeLessThan(0.5 * uOf(without, 'S2'));
    // Read as 1.45 N where the files had made it 1.64 N.
    expect(Math.abs(expectedOf(prepared, 'S2') - 1.45)).toBeLessThan(0.05);
    expect(expectedOf(without, 'S2')).toBeGreaterThan(1.6);
  });

  it('holds for what may be taken for it too: the same weight elsewhere, and the partner setup', () => {
    const prepared = withBook(book.text);
    const at = (found: Prepared, mark: string) => {
      const setup = setupNamed(found, mark);
      if (setup === null) throw new Error(mark);
      return setup;
    };
    const otherWeight = (found: Prepared) =>
      at(found, 'L1').setup.around?.weights.find(({ mark }) => mark === 'W200')?.load;
    expect(otherWeight(prepared)).toEqual(at(prepared, 'S1').setup.load);
    expect(otherWeight(prepared)).not.toEqual(otherWeight(without));
    for (const found of [prepared, without]) {
      const { setup, prediction } = at(found, 'S1');
      const swapped = causesOf(setup, ownUnit(setup), prediction).find(
        ({ code }) => code === 'setup.swapped',
      );
      expect(swapped?.figure).toEqual(figureOf(at(found, 'S2').prediction.outcome));
    }
  });

  it('is the key of the files alone where no line stands in the book', () => {
    const plain = (prepared: Prepared) =>
      JSON.stringify(setupsOf(prepared).map(({ prediction }) => prediction));
    for (const text of ['', addedLine('', line('L1', '')).split('\n')[0] ?? ''])
      expect(plain(withBook(text))).toBe(plain(without));
    expect(without.bench).toBeNull();
    expect(withBook('').diagnostics.map(({ code }) => code)).toContain('bench-not-begun');
  });

  it('does not depend on the order of the lines', () => {
    const [head = '', ...lines] = book.text
      .trimEnd()
      .split('\n')
      .filter((each) => !/decimal point|put right/.test(each));
    const turned = withBook([head, ...lines.toReversed()].join('\n'));
    const straight = withBook([head, ...lines].join('\n'));
    for (const { setup } of setupsOf(turned)) {
      expect(expectedOf(turned, setup.mark)).toBeCloseTo(expectedOf(straight, setup.mark), 9);
      expect(uOf(turned, setup.mark)).toBeCloseTo(uOf(straight, setup.mark), 9);
    }
  });

  it('takes a correction in place of the line that it names, and keeps both', () => {
    const slip = `${book.text}${addedLine(book.text, line('L2', '2.1 N'))}`;
    const number = slip.trimEnd().split('\n').length;
    const mended = withBook(`${slip}${addedLine(slip, line('L2', '4.1 N', { replaces: String(number) }))}`);
    const straight = withBook(`${book.text}${addedLine(book.text, line('L2', '4.1 N'))}`);
    expect(withBook(slip).diagnostics.map(({ code }) => code)).toContain('bench-far');
    expect(mended.diagnostics.map(({ code }) => code)).not.toContain('bench-far');
    expect(expectedOf(mended, 'L1')).toBeCloseTo(expectedOf(straight, 'L1'), 12);
    expect(mended.bench?.lines.find((each) => each.line === number)?.replacedBy).toBe(number + 1);
  });

  it('does not take in a reading that was made with other parts, nor one of another activity', () => {
    const other = addedLine(book.text, line('S2', '1.9 N', { with: 'slipway; barrow' }));
    const elsewhere = addedLine(book.text, line('S2', '1.9 N', { activity: 'ferry-day.activity.yaml' }));
    const plain = withBook(book.text);
    const told = withBook(`${book.text}${other}`);
    expect(told.diagnostics.map(({ code }) => code)).toContain('bench-other-parts');
    expect(expectedOf(told, 'S2')).toBe(expectedOf(plain, 'S2'));
    const quiet = withBook(`${book.text}${elsewhere}`);
    expect(quiet.bench?.elsewhere).toBe(1);
    expect(expectedOf(quiet, 'S2')).toBe(expectedOf(plain, 'S2'));
  });

  it('is read in decimal commas between semicolons as well, quotes and line ends as they come', () => {
    const rows = Papa.parse<string[]>(book.text.trimEnd()).data;
    const commas = rows.map((row) => row.map((cell) => cell.replace(/(\d)\.(\d+) N/, '$1,$2 N')));
    const semicolons = Papa.unparse(commas, { delimiter: ';', newline: '\r\n', quotes: true });
    expect(expectedOf(withBook(`\uFEFF${semicolons}`), 'S2')).toBeCloseTo(
      expectedOf(withBook(book.text), 'S2'),
      12,
    );
  });
});

describe('what the bench is asked next', () => {
  it('promises less once it has been read', () => {
    const before = measureNextAtTables(without).find(({ table }) => table === '1')?.next?.narrows ?? 0;
    const after =
      measureNextAtTables(withBook(book.text)).find(({ table }) => table === '1')?.next?.narrows ?? 0;
    expect(before).toBeGreaterThan(5);
    expect(after).toBeLessThan(before / 3);
  });

  it('would tell apart what readings tie together: hung with a load, the scale shows which it is', () => {
    // Turned over and over, a scale tells its own moving part together with what its marks are off by.
    const [head = ''] = book.text.split('\n');
    const lines = [1, 2, 3].map((n) =>
      addedLine(head, { ...line('amber turned over', '0.2 N'), date: `2026-05-0${n}` }).trim(),
    );
    const [pair, ...others] = confusedOnBench(withBook([head, ...lines].join('\n')));
    expect(others).toEqual([]);
    expect([pair?.first.unknown.id, pair?.second.unknown.id].sort()).toEqual([
      'amber/accuracy',
      'amber/moving part',
    ]);
    expect(pair?.by?.measurement).toEqual({ kind: 'hung load', scale: 'amber', load: 'W500' });
    expect(Math.abs(pair?.by?.correlation ?? 1)).toBeLessThan(0.8);
    expect(confusedOnBench(withBook(book.text))).toEqual([]);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { benchTasksAt, bookNameFor, lineInstead, withBenchLine, withBookNamed } from './bench-line.ts';
import { isError } from './diagnostics/diagnostic.ts';
import { readKitFile } from './files/kit-file.ts';
import { type PreparationFiles, type Prepared, prepare, prepareOne } from './prepare.ts';
import { vocabulary } from './words.ts';

const file = (name: string) => ({ name, text: readFileSync(`examples/${name}`, 'utf8') });
const book = file('bench-book/slipway.bench.csv');
const slipway: PreparationFiles = {
  kit: file('bench-book/slipway.kit.yaml'),
  activity: file('bench-book/slipway.activity.yaml'),
  visit: file('bench-book/slipway.visit.yaml'),
};
const entry = { date: '2026-05-02', kit: 'BB-07', by: 'bench helper' };
const demo: PreparationFiles = {
  kit: file('brackwater/boathouse.kit.yaml'),
  activity: file('brackwater/harbour-day.activity.yaml'),
  visit: file('brackwater/harbour-day.visit.yaml'),
};

/** Figures of the tables, without what only a function can say. */
const figures = (tables: Prepared['tables']) =>
  tables.map(({ setups }) => setups.map(({ prediction }) => [prediction.outcome, prediction.benchSince]));

describe('what may be read on the bench at a setup', () => {
  it('is the setup each way that it can be read, its scale by itself, and what a balance or ruler tells', () => {
    const tasks = benchTasksAt(prepare({ ...slipway, bench: book }), 'S1');
    expect(tasks.map(({ of }) => of.what)).toEqual([
      ...['S1', 'S1 lower', 'S1 start', 'teal turned over', 'teal with W100', 'teal with W200'],
      ...['teal mass', 'W200 of', 'trolley mass'],
      ...['slipway prop at', 'trolley wheel diameter', 'trolley axle diameter'],
    ]);
  });

  it('every reading that is written as its example shows is a sound line of the book, at every table', () => {
    const prepared = prepare(demo);
    const blank = { name: 'a.bench.csv', text: '' };
    const tasks = prepared.tables.flatMap(({ setups }) =>
      benchTasksAt(prepared, setups[0]?.setup.mark ?? ''),
    );
    expect(tasks.length).toBeGreaterThan(prepared.tables.length);
    const each = [...new Map(tasks.map((task) => [task.of.what, task])).values()];
    for (const { of, example } of each) {
      const { found } = withBenchLine(demo, blank, { ...entry, kit: 'BB-03', ...of, reading: example });
      expect([of.what, found.filter(isError)]).toEqual([of.what, []]);
    }
  }, 30_000);
});

describe('a line more in the bench book', () => {
  it('stands behind the others, and tells what it found and how the key was before', () => {
    const [task] = benchTasksAt(prepare({ ...slipway, bench: book }), 'L2');
    const added = withBenchLine(slipway, book, { ...entry, ...task?.of, reading: '4.1 N' });
    expect(added.files.bench?.text).toBe(
      `${book.text}2026-05-02,BB-07,bench helper,slipway.activity.yaml,L2,oar; W500; amber,4.1 N,,,\n`,
    );
    expect(added.number).toBe(11);
    expect(figures(added.before.tables)).toEqual(figures(prepare({ ...slipway, bench: book }).tables));
    expect(figures(added.after.tables)).toEqual(figures(prepare(added.files).tables));
    expect(added.found).toEqual([]);
    const far = withBenchLine(slipway, book, { ...entry, ...task?.of, reading: '2.0 N' });
    expect(far.found.map(({ code }) => code)).toEqual(['bench-far']);
  });

  it('may stand for an older one that is left out: then the key is as if that had never been read', () => {
    const last = prepare({ ...slipway, bench: book }).bench?.lines.at(-1);
    if (last === undefined) throw new Error('the book is empty');
    const added = withBenchLine(slipway, book, { ...entry, ...lineInstead(last), use: 'no' });
    const shorter = book.text.split('\n').slice(0, 9).join('\n');
    expect(figures(added.after.tables)).toEqual(
      figures(prepare({ ...slipway, bench: { ...book, text: shorter } }).tables),
    );
    expect(added.after.bench?.lines.at(-2)?.replacedBy).toBe(11);
  });

  it('begins a book for a kit that named none, whose every other letter stays', () => {
    for (const { kit } of [demo, { kit: file('second-kit/ferry.kit.yaml') }]) {
      const named = withBookNamed(kit);
      expect(named?.text).toContain(`bench book: ${bookNameFor(kit)}`);
      expect(named?.text.replace(`bench book: ${bookNameFor(kit)}\n`, '')).toBe(kit.text);
      const read = readKitFile(named ?? kit, vocabulary);
      expect([read.kit?.benchBook, read.diagnostics]).toEqual([bookNameFor(kit), []]);
    }
  });
});

describe('one table by itself', () => {
  it('follows the bench book to the last digit, as all tables together do', () => {
    const whole = prepare({ ...slipway, bench: book });
    const { kit, activity, visit } = whole;
    if (kit === null || activity === null) throw new Error('the example can not be read');
    for (const table of whole.tables) {
      const alone = prepareOne(kit, activity, visit, table.mark, book);
      expect(figures(alone === null ? [] : [alone])).toEqual(figures([table]));
      expect(figures([table])).not.toEqual(
        figures(prepare(slipway).tables.filter(({ mark }) => mark === table.mark)),
      );
    }
  });
});

import { appendFileSync, existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleIn, scratchFolder } from '../../../test/cli/scratch-folder.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { arrival } from './arrival.ts';
import { bench } from './bench.ts';
import { next } from './next.ts';

const scratch = scratchFolder();
let copies = 0;

/** The example in a folder of its own, and commands that run in it. */
function benchAt() {
  copies += 1;
  const folder = exampleIn(scratch, 'bench-book', `bench ${copies}`);
  const book = join(folder, 'slipway.bench.csv');
  const run = (command: Command, ...args: readonly string[]) => {
    const out: string[] = [];
    const err: string[] = [];
    const code = command.run(args, {
      folder,
      print: (text) => out.push(text),
      tell: (text) => err.push(text),
      progress: () => undefined,
      strong: (text) => text,
    });
    return { code, out: out.join('\n'), err: err.join('\n') };
  };
  return { book, run, text: () => readFileSync(book, 'utf8') };
}

describe('handspike bench', () => {
  it('adds a line behind the others, with kit, activity and parts, and changes nothing before it', () => {
    const { run, text } = benchAt();
    const before = text();
    const { code } = run(
      bench,
      ...['--setup', 'L2', '--reading', '4.1 N', '--by', 'bench helper', '--date', '2026-05-02'],
    );
    expect(code).toBe(EXIT.done);
    expect(text()).toBe(
      `${before}2026-05-02,BB-07,bench helper,slipway.activity.yaml,L2,oar; W500; amber,4.1 N,,,\n`,
    );
  });

  it('begins a book that is not there yet', () => {
    const { run, text, book } = benchAt();
    rmSync(book);
    expect(run(bench).out).toContain('no reading yet');
    expect(existsSync(book)).toBe(false);
    run(bench, '--what', 'amber turned over', '--reading', '0.2 N', '--by', 'me', '--date', '2026-05-02');
    expect(text().split('\n').slice(0, 2)).toEqual([
      'date,kit,by,activity,what,with,reading,use,replaces,note',
      '2026-05-02,BB-07,me,,amber turned over,,0.2 N,,,',
    ]);
  });

  it('leaves the book alone where the line is not sound, and says where and why', () => {
    const { run, text } = benchAt();
    const before = text();
    const { code, err } = run(
      bench,
      '--setup',
      'L2',
      '--reading',
      '4.1',
      '--by',
      'me',
      '--date',
      '2026-05-02',
    );
    expect(code).toBe(EXIT.findings);
    expect(err).toContain('bench-not-a-reading');
    expect(err).toMatch(/slipway\.bench\.csv:\d+:\d+/);
    expect(text()).toBe(before);
    expect(() => run(bench, '--setup', 'L9', '--reading', '4.1 N')).toThrow(UsageFault);
    expect(() => run(bench, '--reading', '4.1 N')).toThrow(UsageFault);
    expect(() =>
      run(bench, '--setup', 'L2', '--reading', '4.1 N', '--by', 'me', '--date', '2026-02-30'),
    ).toThrow(/no day/);
    expect(() => run(bench, '--setup', 'L2', '--reading', '4.1 N')).toThrow(/who read it/);
  });

  it('keeps a far reading in the book, tells it, and does not use it', () => {
    const { run } = benchAt();
    const { err } = run(bench, '--setup', 'L2', '--reading', '41 N', '--by', 'me', '--date', '2026-05-02');
    expect(err).toContain('bench-far');
    const { readings } = JSON.parse(run(bench, '--json').out) as {
      readings: { written: string; isUsed: boolean; because: string | null }[];
    };
    expect(readings.at(-1)).toMatchObject({
      written: '41 N',
      isUsed: false,
      because: 'far from the files',
    });
  });

  it('prints each figure in the marks of its own instrument', () => {
    const { run, book } = benchAt();
    appendFileSync(book, '2026-05-02,BB-07,me,,oar mass centre,,30.3 cm,,,\n');
    const [row] = run(bench).out.match(/^.*oar mass centre .*$/m) ?? [];
    expect(row).toMatch(/30\.3 cm +30\.2 cm +0\.4 u +30\.3 cm +yes/);
  });

  it('tells the turn-over shift by its own test, and by everything that is known, as the key takes it', () => {
    const { run } = benchAt();
    const { scales, unknowns } = JSON.parse(run(bench, '--json').out) as {
      scales: { turnOverShift: { value: number }; knownShift: { value: number; u: number } }[];
      unknowns: { unknown: string; shift: number; u: number }[];
    };
    const moving = unknowns.find(({ unknown }) => unknown === 'amber/moving part');
    // Twice the moving part, a quarter of 46 g by the file and somewhat more by the readings.
    const twice = 2 * 0.046 * 9.81444;
    expect(scales[0]?.turnOverShift.value).toBeCloseTo(0.046 * 9.81444 - 0.2, 5);
    expect(scales[0]?.knownShift.value).toBeCloseTo(twice * (0.25 + (moving?.shift ?? 0)), 4);
    expect(scales[0]?.knownShift.u).toBeCloseTo(twice * (moving?.u ?? 0), 4);
  });

  it('counts a line that it can not use, and tells a spoilt book from one that nobody has begun', () => {
    const { run, book, text } = benchAt();
    const sound = text();
    writeFileSync(book, `${sound}2026-05-02,BB-07,me,slipway.activity.yaml,S1,W500,0.6 N,,,\n`);
    expect(run(bench).out).toContain('8 of 8 readings used; 1 that can not be used');
    writeFileSync(book, sound.replace('reading', 'redding'));
    expect(run(bench).out).not.toContain('no reading yet');
    expect(run(bench).out).toContain('the error above says why');
  });

  it('prints in Spanish too', () => {
    const { run } = benchAt();
    expect(run(bench, '--language', 'es').out).toContain('Lo que dicen las lecturas');
  });
});

describe('handspike next', () => {
  it('names one measurement a table, with the ranges before and after as JSON', () => {
    const { run } = benchAt();
    const { tables } = JSON.parse(run(next, '--json').out) as {
      tables: { table: string; measure: object | null; setups: { uBefore: number; uAfter: number }[] }[];
    };
    expect(tables.map(({ table }) => table)).toEqual(['1', '2']);
    expect(tables[0]?.measure).toMatchObject({ kind: 'reading', setup: 'S2' });
    expect(tables[1]?.measure).toBeNull();
    for (const { setups } of tables)
      for (const { uBefore, uAfter } of setups) expect(uAfter).toBeLessThanOrEqual(uBefore);
    expect(run(next).out).toContain('nothing short narrows');
  });
});

describe('handspike arrival', () => {
  it('names the setup of each table, and the ranges that follow one reading', () => {
    const { run } = benchAt();
    const { tables } = JSON.parse(run(arrival, '--json').out) as {
      tables: { setup: string; good: { from: number; to: number } }[];
    };
    const [first] = tables;
    expect(tables).toHaveLength(2);
    const middle = (((first?.good.from ?? 0) + (first?.good.to ?? 0)) / 2).toFixed(2);
    const followed = run(arrival, '--setup', first?.setup ?? '', '--reading', middle, '--json').out;
    expect(JSON.parse(followed)).toMatchObject({ isFollowed: true, setup: first?.setup });
    expect(run(arrival, '--setup', 'L2', '--reading', '1.2 N').out).toContain('Look again');
    expect(() => run(arrival, '--setup', 'L2')).toThrow(UsageFault);
    expect(() => run(arrival, '--setup', 'L2', '--reading', 'plenty')).toThrow(UsageFault);
  });
});

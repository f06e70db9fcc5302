import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

interface ReviewFigures {
  readonly readings: readonly {
    readonly line: number | null;
    readonly group: string;
    readonly setup: string;
    readonly written: string;
    readonly note: string;
    readonly verdict: string;
    readonly causes: readonly { readonly code: string; readonly probability: number }[];
    readonly say: { readonly toGroup: string; readonly toTeacher: string } | null;
  }[];
  readonly refused: readonly { readonly line: number; readonly text: string; readonly because: string }[];
}

const scratch = scratchFolder();
const boathouse = exampleIn(scratch, 'brackwater');
const at = (...args: string[]) => runCommand(args, { folder: boathouse });
const figures = (...args: string[]) => JSON.parse(at('review', ...args, '--json').out) as ReviewFigures;
/** The rows of a readings file as this test takes them apart: quotes in them hold no other quotes. */
const rowsOf = (folder: string) =>
  readFileSync(join(folder, 'readings.csv'), 'utf8')
    .trim()
    .split(/\r?\n/)
    .map((line, n) => ({
      line: n + 1,
      cells: [...line.matchAll(/(?:^|,)(?:"([^"]*)"|([^,]*))/g)].map(
        ([, quoted, bare = '']) => quoted ?? bare,
      ),
    }))
    .slice(1);

describe.each(['brackwater', 'second-kit'])('the review of examples/%s', (example) => {
  const folder = exampleIn(scratch, example, `${example} reviewed`);
  const found = JSON.parse(runCommand(['review', '--json'], { folder }).out) as ReviewFigures;
  const { out } = runCommand(['review'], { folder });
  const rows = rowsOf(folder);

  it('has as many readings as the file has rows, each by its line and as it was written', () => {
    expect(rows.length).toBeGreaterThan(10);
    const judged = found.readings.map(({ line, group, setup, written, note }) => ({
      line,
      cells: [group, setup, written, note],
    }));
    const refused = found.refused.map(({ line, text }) => ({ line, cells: text.split(', ') }));
    const back = [...judged, ...refused].sort((a, b) => Number(a.line) - Number(b.line));
    expect(back).toEqual(rows);
  });

  test.each(rows)(
    'prints the row on line $line with its verdict or why it was not used',
    ({ line, cells }) => {
      const [group = '', setup = '', written = ''] = cells;
      const printed = out.split('\n').find((each) => new RegExp(`^ +${line}  |^  line ${line}  `).test(each));
      for (const cell of [group, setup, written]) expect(printed).toContain(cell);
    },
  );

  it('tells at its top how many there are of each verdict', () => {
    const second = out.split('\n')[1] ?? '';
    const counts = [...second.matchAll(/(?:^|, )(\d+) /g)].map(([, count]) => Number(count));
    expect(counts.reduce((sum, each) => sum + each, 0)).toBe(rows.length);
  });

  it('has two sentences for each reading to look at again: one for the group, one for the teacher', () => {
    const looked = found.readings.filter(({ verdict }) => verdict === 'look again');
    const words = out.replace(/\s+/g, ' ');
    for (const { say } of looked) {
      expect(words).toContain(`to the group: ${say?.toGroup} for you: ${say?.toTeacher}`);
      expect(say?.toGroup).not.toBe(say?.toTeacher);
    }
    expect(out.match(/^ +to the group: /gm)).toHaveLength(looked.length);
    expect(found.readings.filter(({ say }) => say !== null)).toEqual(looked);
  });

  it('gives the likeliest cause first, and no more probability than there is', () => {
    const looked = found.readings.filter(({ verdict }) => verdict === 'look again');
    expect(looked.length).toBeGreaterThan(0);
    for (const { causes } of looked) {
      const shares = causes.map(({ probability }) => probability);
      expect(shares).toEqual([...shares].sort((a, b) => b - a));
      const whole = shares.reduce((sum, each) => sum + each, 0);
      expect(whole).toBeGreaterThan(0.9);
      expect(whole).toBeLessThan(1 + 1e-9);
    }
  });
});

describe('handspike review', () => {
  it('takes the readings file that is named before the one that the visit names', () => {
    writeFileSync(join(boathouse, 'other.csv'), 'group,setup,reading,note\nZ,L1,2.2,\n');
    const { readings, refused } = figures('other.csv');
    expect(readings.map(({ group, verdict }) => [group, verdict])).toEqual([['Z', 'good']]);
    expect(refused).toEqual([]);
    expect(at('review', 'other.csv').code).toBe(0);
  });

  it('ends with code 1 where a row could not be used, and names its line and the nearest setup', () => {
    const { code, out } = at('review');
    expect(code).toBe(1);
    expect(out).toMatch(/^ {2}line 24 {2}F, P9, 3.*\n +.*Is it "P1"\?$/m);
  });

  test.each([
    ['2.2', 'good'],
    ['2,2 N', 'good'],
    ['225', 'look again'],
    ['about 4', 'look again'],
    ['ca. 2,2', 'good'],
    ['O2.2', 'good'],
    ['4 or so, it slipped', 'unreadable'],
    ['', 'no reading'],
    ['-1', 'look again'],
  ])('judges a reading typed at the table: "%s" is %s', (written, verdict) => {
    const { readings } = figures('--setup', 'l1', '--reading', written, '--group', 'Ä');
    expect(readings).toEqual([
      expect.objectContaining({ line: null, group: 'Ä', setup: 'l1', written, verdict }),
    ]);
    const { code, out } = at('review', '--setup', 'L1', '--reading', written);
    expect(code).toBe(0);
    expect(out).toContain(`L1, written "${written}": ${verdict}`);
  });

  it('judges a typed reading as it judges a file with nothing else in it', () => {
    for (const [setup, written] of [
      ['L1', '2.2'],
      ['T2', '28'],
      ['S1', '0,4 N'],
    ]) {
      writeFileSync(join(boathouse, 'one.csv'), `group;setup;reading\n;${setup};${written}\n`);
      const [alone] = figures('one.csv').readings;
      const [typed] = figures('--setup', `${setup}`, '--reading', `${written}`).readings;
      expect([typed?.verdict, typed?.causes]).toEqual([alone?.verdict, alone?.causes]);
    }
  });

  it('prints a table for a spreadsheet, with every cell as it was written and numbers with a point', () => {
    writeFileSync(join(boathouse, 'semi.csv'), 'grupo;montaje;lectura\n=1+1;L1;"2,2 N"\nB;L1;225\n');
    const rows = at('review', 'semi.csv', '--csv').out.trimEnd().split('\r\n');
    expect(rows.map((row) => row.split(',').slice(0, 2))).toEqual([
      ['group', 'setup'],
      ["'=1+1", 'L1'],
      ['B', 'L1'],
    ]);
    expect(rows[1]).toContain('"2,2 N",,2,1,number,2.2,newtons,2,2.4,newtons,good');
    expect(rows[2]).toContain('look again,,the number counts grams,');
    expect(at('review', 'semi.csv', '--csv', '--language', 'es').out).toContain('el número');
    const both = at('review', 'semi.csv', '--csv', '--json');
    expect([both.code, both.out]).toEqual([2, '']);
    expect(both.err).toContain('--json and --csv are two outlets: name one of them');
  });

  test.each([
    ['UTF-16, as "Unicode text" is saved', (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le')],
    ['Windows-1252, as an older "CSV" is saved', (text: string) => Buffer.from(text, 'latin1')],
  ])('reads a file in %s', (_, encoded) => {
    const rows = 'Gruppe\tAufbau\tMesswert\tNotiz\nMöwe\tL1\t2,2\tschön\n';
    writeFileSync(join(boathouse, 'saved.txt'), encoded(rows));
    expect(figures('saved.txt').readings).toEqual([
      expect.objectContaining({ group: 'Möwe', written: '2,2', note: 'schön', verdict: 'good' }),
    ]);
  });

  it('tells how a file was read that is not a plain table', () => {
    writeFileSync(join(boathouse, 'wide.csv'), 'group;L1;L2\nA;2,2;4,4\n;2,1;2.2/2.3\n');
    const { out, code } = at('review', 'wide.csv');
    expect(code).toBe(0);
    expect(out).toContain('It has one column a setup, 2 of them');
    expect(out).toContain('line 3: no group is named here, and group A above.');
    expect(out).toContain('2 readings: the middle one, 2.25, is judged');
  });

  it('says what is missing where neither the line nor the visit names readings', () => {
    const stick = exampleIn(scratch, 'smallest');
    const { code, err } = runCommand(['review'], { folder: stick });
    expect(code).toBe(2);
    expect(err).toContain('no readings: name a CSV file, or type one with --setup and --reading');
  });
});

import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { bundle, runCommand } from '../command-line.ts';
import { notRun } from '../not-run.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const scratch = scratchFolder();
const boathouse = exampleIn(scratch, 'brackwater', 'plain');
const at = (folder: string, ...args: string[]) => runCommand(args, { folder });
const key = at(boathouse, 'key');
const FILES = ['boathouse.kit.yaml', 'harbour-day.activity.yaml', 'harbour-day.visit.yaml'] as const;

/** Each file of the boathouse through a change, in a folder of its own. */
function rewritten(name: string, change: (text: string) => string): string {
  const folder = exampleIn(scratch, 'brackwater', name);
  for (const file of [...FILES, 'readings.csv'])
    writeFileSync(join(folder, file), change(readFileSync(join(folder, file), 'utf8')));
  return folder;
}

describe('a file that can not be read or written ends with code 3, nothing on standard output and', () => {
  mkdirSync(join(scratch, 'a folder'));
  const visit = 'plain/harbour-day.visit.yaml';

  test.each([
    ["can't read nowhere.visit.yaml: there is no such file", ['key', 'nowhere.visit.yaml']],
    ["can't read a folder: it is a folder", ['check', 'a folder']],
    ["can't read nowhere.csv: there is no such file", ['review', visit, 'nowhere.csv']],
    ["can't read plain/readings.csv/x: part of its path is a file", ['check', 'plain/readings.csv/x']],
    ['readings.csv is a file and no folder', ['pages', visit, '--to', 'plain/readings.csv']],
    ['part of its path is a file', ['pages', visit, '--to', 'plain/readings.csv/pages']],
  ])('says: %s', (says, args) => {
    const { code, out, err } = at(scratch, ...args);
    expect([code, out]).toEqual([3, '']);
    expect(err).toContain(says);
    expect(err).not.toMatch(/\n\s+at /);
  });

  it('names the file that a visit asks for, where it was looked for', () => {
    const folder = exampleIn(scratch, 'brackwater', 'without kit');
    renameSync(join(folder, FILES[0]), join(folder, 'kit.txt'));
    const { code, err } = at(scratch, 'key', 'without kit/harbour-day.visit.yaml');
    expect(code).toBe(3);
    expect(err).toContain(`can't read ${join('without kit', FILES[0])}: there is no such file`);
  });
});

describe('a file that a user may well have', () => {
  test.each([
    ['line ends as Windows writes them', (text: string) => text.replaceAll('\n', '\r\n')],
    ['a byte-order mark', (text: string) => `\uFEFF${text}`],
    ['both of them', (text: string) => `\uFEFF${text.replaceAll('\n', '\r\n')}`],
    ['no line end at its end', (text: string) => text.trimEnd()],
    ['empty lines and spaces behind', (text: string) => `${text.replaceAll('\n', '  \n')}\n\n`],
  ])('gives the same key and the same review with %s', (name, change) => {
    const folder = rewritten(name, change);
    expect(at(folder, 'key')).toEqual(key);
    expect(at(folder, 'review').out).toBe(at(boathouse, 'review').out);
  });

  it('may lie in a folder with spaces and letters of any script, and be named so', () => {
    const folder = exampleIn(scratch, 'brackwater', 'Žluťoučký кит 海 (1)');
    renameSync(join(folder, FILES[0]), join(folder, 'červený kit.yaml'));
    renameSync(join(folder, FILES[2]), join(folder, 'наш день.yaml'));
    const visit = join(folder, 'наш день.yaml');
    const text = readFileSync(visit, 'utf8');
    writeFileSync(visit, text.replace('kit: boathouse.kit.yaml', 'kit: "červený kit.yaml"  # the red one'));
    expect(at(folder, 'key', 'наш день.yaml')).toEqual(key);
    expect(at(scratch, 'key', visit)).toEqual(key);
    expect(at(scratch, 'pages', visit, '--to', 'stránky ž').code).toBe(0);
    expect(readFileSync(join(scratch, 'stránky ž', 'answer-key.html'), 'utf8')).toContain('</html>');
  });

  it('may be named from the root of the disk by the visit', () => {
    const folder = exampleIn(scratch, 'brackwater', 'from the root');
    const visit = join(folder, FILES[2]);
    const elsewhere = JSON.stringify(join(boathouse, FILES[0]));
    writeFileSync(visit, readFileSync(visit, 'utf8').replace(FILES[0], elsewhere));
    expect(at(folder, 'key')).toEqual(key);
  });

  test.each([
    ['empty', ''],
    ['of one word', 'kit'],
    ['a picture', '\u0089PNG\r\n\u001a\n\u0000\u0000\u0000\rIHDR'],
    ['of another program', 'name: something\nversion: 3\n'],
  ])('is told what it lacks when it is %s', (_, text) => {
    writeFileSync(join(scratch, 'odd.yaml'), text);
    const { code, out, err } = at(scratch, 'check', 'odd.yaml');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('odd.yaml is no kit, activity or visit file');
    expect(err).toContain('"handspike: kit 1"');
  });

  it('with an error in it ends every command with code 1, and the error is told with its line', () => {
    const folder = rewritten('spoilt', (text) => text.replace('mass: 118 g ± 1 g', 'mass: 118 q'));
    for (const args of [['check'], ['key'], ['key', '--json'], ['explain', 'S1'], ['review'], ['pages']]) {
      const { code, err } = at(folder, ...args);
      expect([args, code]).toEqual([args, 1]);
      expect(err).toMatch(/^error\[quantity\.unknown-unit\]: .*\n {2}boathouse\.kit\.yaml:\d+:\d+\n/);
    }
    // What does not hang on the spoilt part is still there.
    const { out } = at(folder, 'key', '--csv');
    expect(out).not.toMatch(/^1,L1,/m);
    expect(out).toMatch(/^2,S1,/m);
  });
});

describe('handspike new', () => {
  it('never writes over a file', () => {
    writeFileSync(join(scratch, 'mine.kit.yaml'), 'my own work');
    const { code, out, err } = at(scratch, 'new', 'kit', 'mine.kit.yaml');
    expect([code, out]).toEqual([3, '']);
    expect(err).toContain('it is there already, and is not written over');
    expect(readFileSync(join(scratch, 'mine.kit.yaml'), 'utf8')).toBe('my own work');
  });

  test.each([
    ['my.kit.yaml', 'my.activity.yaml', 'my.visit.yaml'],
    ['our kit.kit.yaml', 'ö.activity.yml', 'day 1.visit.yaml'],
  ])('starts three files that work as they stand: %s, %s and %s', (kit, activity, visit) => {
    const folder = join(scratch, kit.replace('.kit.yaml', ''));
    mkdirSync(folder);
    expect(at(folder, 'new', 'kit', kit).code).toBe(0);
    expect(at(folder, 'new', 'activity', activity).code).toBe(0);
    expect(at(folder, 'new', 'visit', visit).out).toContain('it works as it stands');
    expect(at(folder, 'check')).toEqual({
      code: 0,
      out: '1 table, 2 setups: nothing to put right\n',
      err: '',
    });
    expect(at(folder, 'key').code).toBe(0);
  });

  it('says which of the two a visit lacks, where nothing lies beside it', () => {
    mkdirSync(join(scratch, 'alone'));
    const { code, out } = at(join(scratch, 'alone'), 'new', 'visit', 'a.visit.yaml');
    expect(code).toBe(0);
    expect(out).toContain('write into it which kit and which activity it is with');
  });

  it('prints the file where it is given no name', () => {
    expect(at(scratch, 'new', 'kit').out).toBe(
      readFileSync(join(import.meta.dirname, '../../examples/smallest/smallest.kit.yaml'), 'utf8'),
    );
  });
});

describe('handspike pages', () => {
  it('gives each table a page of its own, also where marks differ by a capital or a sign only', () => {
    const folder = exampleIn(scratch, 'smallest', 'like marks');
    const file = join(folder, 'smallest.activity.yaml');
    const [head = '', table = ''] = readFileSync(file, 'utf8').split('tables:\n');
    const marks = ['гора', 'A b', 'a-b', 'a.B!', '…'];
    const tables = marks.map((mark, n) =>
      table.replace('table: lever', `table: "${mark}"`).replaceAll(/(setup|partner): ([AB])/g, `$1: $2${n}`),
    );
    writeFileSync(file, `${head}tables:\n${tables.join('\n')}`);
    const { code, out } = at(folder, 'pages', '--to', 'p');
    expect(code).toBe(0);
    const names = [
      'table-гора',
      'table-a-b',
      'table-a-b-2',
      'table-a-b-3',
      'table-table',
      'answer-key',
      'rotation',
    ];
    expect(out.trim().split('\n')).toEqual(names.map((name) => join('p', `${name}.html`)));
    for (const [n, mark] of marks.entries()) {
      const html = readFileSync(join(folder, 'p', `${names[n]}.html`), 'utf8');
      expect(html).toContain(`Table ${mark}`);
      expect(html).toContain(`Setup A${n}`);
    }
  });
});

describe('a reader that has seen enough', () => {
  const commands = ['key', 'key --json', 'explain', 'review', 'schema kit'];

  test.for(commands)('of "%s" is no fault, and the code is as ever', (command, context) => {
    const script = `{ "${process.execPath}" "${bundle}" ${command}; echo "code $?" >&2; } | head -n 1`;
    const piped = spawnSync('sh', ['-c', script], { cwd: boathouse, encoding: 'utf8' });
    if (piped.error !== undefined) notRun('pipes', 'there is no sh to make one with', context);
    const whole = at(boathouse, ...command.split(' '));
    expect(piped.stdout).toBe(`${whole.out.split('\n')[0]}\n`);
    expect(piped.stderr).toBe(`${whole.err}code ${whole.code}\n`);
  });
});

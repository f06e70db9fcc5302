import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const COMMANDS = ['check', 'key', 'explain', 'pages', 'review', 'new', 'fields', 'schema', 'demo'] as const;
const scratch = scratchFolder();
const boathouse = exampleIn(scratch, 'brackwater');
const at = (...args: string[]) => runCommand(args, { folder: boathouse });

describe('the help', () => {
  const all = runCommand(['--help']);

  it('names every command and every exit code', () => {
    expect(all.code).toBe(0);
    for (const name of COMMANDS) expect(all.out).toMatch(new RegExp(`^ {2}${name} `, 'm'));
    expect(all.out).toContain('Exit codes: 0 done, 1');
    expect(all.err).toBe('');
  });

  it('is printed by -h and help too, and without a command with exit code 2', () => {
    for (const args of [['-h'], ['help']]) expect(runCommand(args)).toEqual(all);
    expect(runCommand([])).toEqual({ ...all, code: 2 });
  });

  test.each(COMMANDS)('of %s says how it is called and what its options do', (name) => {
    const { code, out, err } = runCommand([name, '--help']);
    expect([code, err]).toEqual([0, '']);
    expect(out).toMatch(new RegExp(`^handspike ${name}\\b`));
    const [usage = ''] = out.split('\n');
    for (const [option] of usage.matchAll(/--[a-z-]+/g))
      expect(out.slice(usage.length), `${option} is explained`).toContain(option);
    expect(runCommand(['help', name]).out).toBe(out);
  });

  it('is asked for beside anything else on the line, and nothing is done', () => {
    expect(at('key', 'no-such-file.yaml', '--help').code).toBe(0);
  });

  it('has the version of the package', () => {
    const manifest = readFileSync(join(import.meta.dirname, '../../package.json'), 'utf8');
    const { version } = JSON.parse(manifest) as { version: string };
    expect(runCommand(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });
});

describe('a command line that can not be understood ends with code 2, nothing on standard output and', () => {
  const cases: readonly (readonly [says: string, args: readonly string[]])[] = [
    ['there is no command "kee"; did you mean "key"?', ['kee']],
    ['there is no command "kee"; did you mean "key"?', ['help', 'kee']],
    ['there is no command "frobnicate"\n', ['frobnicate']],
    ['there is no option --jsn; did you mean --json?', ['key', '--jsn']],
    ['there is no option --reding; did you mean --reading?', ['review', '--reding', '2']],
    ['there is no option --colour\n', ['check', '--colour']],
    ['--json takes no value', ['key', '--json=yes']],
    ['there is no option -j\n', ['key', '-j']],
    ['--json and --csv', ['key', '--json', '--csv']],
    ['--to wants a value after it', ['pages', '--to']],
    ['--to wants a value after it', ['demo', '--to', '--once']],
    ['there is no setup "L9" that can be prepared; did you mean "L1"?', ['explain', 'L9']],
    ['there are L1, L2, L3, S1', ['explain', 'L9']],
    [
      'there is no setup "T9" that can be prepared; did you mean "T1"?',
      ['review', '--setup', 'T9', '--reading', '2'],
    ],
    ['--setup and --reading go together', ['review', '--setup', 'L1']],
    ['--setup and --reading go together', ['review', '--reading', '2.2']],
    ['say what to start: kit, activity or visit', ['new']],
    ['say what to start: kit, activity or visit', ['new', 'kits']],
    ['say which schema: kit, activity or visit', ['schema']],
    ['say which schema: kit, activity or visit', ['schema', 'kit', 'visit']],
    ['there is no file, machine or kind of part "tackel"; did you mean "tackle"?', ['fields', 'tackel']],
    ['no activity file: name a visit file, or a kit and an activity', ['key', 'boathouse.kit.yaml']],
    ['no kit file: name a visit file, or a kit and an activity', ['key', 'harbour-day.activity.yaml']],
    [
      'two kit files: boathouse.kit.yaml and boathouse.kit.yaml',
      ['check', 'boathouse.kit.yaml', 'boathouse.kit.yaml'],
    ],
    ['readings.csv is no kit, activity or visit file', ['check', 'readings.csv']],
  ];

  test.each(cases)('says: %s', (says, args) => {
    const { code, out, err } = at(...args);
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain(says);
    // Names of this machine and of the program's insides are no help to anybody.
    expect(err).not.toMatch(/\n\s+at |node:|dist\//);
  });

  it('says how the command is called', () => {
    expect(at('key', '--jsn').err).toContain(
      '\nusage: handspike key [VISIT | KIT ACTIVITY] [--json | --csv] [--language en|es]\n',
    );
  });

  it('says that there is no visit in this folder, or that there are several', () => {
    const empty = runCommand(['key'], { folder: scratch });
    expect([empty.code, empty.err]).toEqual([2, expect.stringContaining('no *.visit.yaml in this folder')]);
    const two = exampleIn(scratch, 'brackwater', 'two visits');
    exampleIn(scratch, 'smallest', 'two visits');
    const several = runCommand(['key'], { folder: two });
    expect(several.code).toBe(2);
    expect(several.err).toContain('name one of harbour-day.visit.yaml, smallest.visit.yaml');
  });
});

describe('what each command prints', () => {
  it('check: the findings beside it, and a line with their count', () => {
    const { code, out, err } = at('check');
    expect(code).toBe(0);
    expect(out).toMatch(/^7 tables, 18 setups: .+\n$/);
    expect(err).toMatch(/^(error|warning|note)\[/);
  });

  it('fields: files, machines and kinds of part, or one of them, also in several words', () => {
    const { out } = at('fields');
    expect(out).toMatch(/^files: kit, .*visit\nmachines: .*lever, .*\nkinds of part: .*spring scale/);
    const names = out.split('\n').flatMap((line) => line.replace(/^[^:]*: /, '').split(', '));
    for (const name of names.filter((each) => each !== '')) {
      const one = at('fields', ...name.split(' '));
      expect([name, one.code, one.err]).toEqual([name, 0, '']);
      expect(one.out).toContain(name);
    }
  }, 60_000);

  it.each(['kit', 'activity', 'visit'])('schema: that of the %s file, as it lies in schemas/', (kind) => {
    const { code, out } = at('schema', kind);
    expect(code).toBe(0);
    const kept = readFileSync(join(import.meta.dirname, `../../schemas/${kind}.schema.json`), 'utf8');
    expect(JSON.parse(out)).toEqual(JSON.parse(kept));
  });

  it('explain: the setups named, in any case and order, or all of them', () => {
    const setups = (out: string) => [...out.matchAll(/^Setup \S+ (\S+):/gm)].map(([, mark]) => mark);
    expect(setups(at('explain', 't1', 'L2').out)).toEqual(['T1', 'L2']);
    expect(setups(at('explain').out)).toHaveLength(18);
    const elsewhere = runCommand(['explain', 'L1', '--in', join(boathouse, 'harbour-day.visit.yaml')]);
    expect(elsewhere.out).toBe(at('explain', 'L1').out);
    const stick = exampleIn(scratch, 'smallest', 'no visit');
    const bare = ['explain', 'A', 'smallest.kit.yaml', 'smallest.activity.yaml'];
    expect(setups(runCommand(bare, { folder: stick }).out)).toEqual(['A']);
  });

  it('demo: the key of the boathouse and the pages, with --once or without', () => {
    const { code, out } = at('demo', '--once', '--to', 'demo pages');
    expect(code).toBe(0);
    expect(out).toContain(at('key').out.trimEnd());
    expect(out).toContain('9 pages in demo pages:');
  });
});

describe('what is printed into a pipe', () => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape character is what is looked for.
  const ESCAPE = /\u001b/;

  test.each([
    ['plain', {}],
    ['with NO_COLOR', { NO_COLOR: '1' }],
    ['with TERM=dumb', { TERM: 'dumb' }],
    ['with FORCE_COLOR', { FORCE_COLOR: '1' }],
  ] as const)('has no escape codes, %s', (_, env: Readonly<Record<string, string>>) => {
    for (const args of [['--help'], ['check'], ['key'], ['review']]) {
      const { out, err } = runCommand(args, { folder: boathouse, env });
      expect(out + err).not.toMatch(ESCAPE);
      expect(out).not.toBe('');
    }
  });
});

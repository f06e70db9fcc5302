import { mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it, test } from 'vitest';
import { runCommand } from '../command-line.ts';
import { exampleIn, scratchFolder } from './scratch-folder.ts';

const root = join(import.meta.dirname, '../..');
const readme = readFileSync(join(root, 'README.md'), 'utf8');

/** Lines to type, without what is said of them. */
const shown = [...readme.matchAll(/```sh\n([\s\S]*?)```/g)].flatMap(([, block = '']) =>
  block
    .trim()
    .split('\n')
    .map((line) => line.replace(/\s+#.*$/, '')),
);
/** Commands that stand in a sentence, in the order in which they are met. */
const spoken = [
  ...readme.replaceAll(/```[\s\S]*?```/g, '').matchAll(/`((?:handspike|npm|node) [^`]+)`/g),
].map(([, command = '']) => command);

const scratch = scratchFolder();
const boathouse = exampleIn(scratch, 'brackwater');
/** "In your own folder": empty at the start, and filled by the commands themselves. */
const own = join(scratch, 'own');
mkdirSync(own);

const isHandspike = (line: string): boolean => line.startsWith('handspike ');
const argsOf = (line: string): string[] => line.split(' ').slice(1);

describe('README.md', () => {
  it('shows what to type, in the folder of an example that comes with the program', () => {
    expect(shown.filter((line) => line.startsWith('cd '))).toEqual(['cd examples/brackwater']);
    expect(shown.filter(isHandspike).length).toBeGreaterThan(4);
    expect(spoken.filter(isHandspike).length).toBeGreaterThan(4);
  });

  test.each(shown.filter(isHandspike))('shows "%s", which does its work', (line) => {
    const { code, out } = runCommand(argsOf(line), { folder: boathouse });
    // The example's readings hold one row that can't be used; that is code 1 and told.
    expect(code).toBe(/^handspike (?:review(?: --csv)?|discuss --to talk)$/.test(line) ? 1 : 0);
    expect(out).not.toBe('');
  });

  test.each(spoken.filter((line) => isHandspike(line) && !line.includes('COMMAND')))(
    'speaks of "%s", which works in a folder of one\'s own',
    (line) => {
      const { code, out, err } = runCommand(argsOf(line), { folder: own });
      expect([code, err]).toEqual([0, '']);
      expect(out).not.toBe('');
    },
  );

  test.each(['key --json', 'explain L1 --json', 'review --json', 'discuss --json'])(
    'says that there is "%s"',
    (line) => {
      expect(readme).toContain(
        '`key`, `explain`, `review` and `discuss` have `--json`; `key` and `review` have `--csv` too.',
      );
      expect(JSON.parse(runCommand(line.split(' '), { folder: boathouse }).out)).toHaveProperty('handspike');
    },
  );

  it('speaks of no npm script that there is not, and of no file that there is not', () => {
    const { scripts } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      readonly scripts: Readonly<Record<string, string>>;
    };
    const named = [...shown, ...spoken].flatMap((line) => /^npm (?:run )?(\w+)/.exec(line)?.[1] ?? []);
    expect(named).toEqual(expect.arrayContaining(['start', 'test', 'build']));
    for (const name of named) expect(scripts).toHaveProperty(name);
    for (const [, file = ''] of readme.matchAll(/`((?:src|examples|docs|test)\/[^`*]+)`/g))
      expect(() => readFileSync(join(root, file)), file).not.toThrow(/ENOENT/);
  });
});

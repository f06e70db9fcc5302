// A shop handed to MiniZinc with Gecode: its answer, and what the whole and the solver alone took of the processor.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const model = fileURLToPath(new URL('./shop.mzn', import.meta.url));

/** `end` is `null` where it was not proved in time. A `known` end is handed over as the most. */
export function judge(shop, known, seconds, isAlone = false) {
  const folder = mkdtempSync(join(tmpdir(), 'handspike-judge-'));
  const data = join(folder, 'shop.json');
  const flat = join(folder, 'shop.fzn');
  writeFileSync(data, JSON.stringify(dataOf(shop, known)));
  const limit = ['--time-limit', String(1000 * seconds)];
  const whole = isAlone ? null : timed(['minizinc', '--solver', 'gecode', ...limit, model, data]);
  run(['minizinc', '-c', '--solver', 'gecode', '--no-output-ozn', '-o', flat, model, data]);
  const alone = timed(['fzn-gecode', '-time', String(1000 * seconds), flat]);
  rmSync(folder, { recursive: true });
  const isProved = alone.output.includes('==========');
  const ends = alone.output.match(/(?<=^end = )\d+/gm) ?? [];
  return { end: isProved ? Number(ends.at(-1)) : null, whole: whole?.seconds, alone: alone.seconds };
}

/** Whether the tools are there at all. */
export const hasJudge = () => spawnSync('minizinc', ['--version']).status === 0;

/** What a command writes, and its processor seconds with those of all that it starts. */
export function timed(command) {
  const { stdout, stderr } = run(['bash', '-c', 'TIMEFORMAT="%U %S"; time "$@"', 'bash', ...command]);
  const [user, system] = stderr.trim().split('\n').at(-1).split(' ').map(Number);
  return { output: stdout, seconds: user + system };
}

const run = ([command, ...args]) => spawnSync(command, args, { encoding: 'utf8', maxBuffer: 2 ** 28 });

function dataOf(shop, known) {
  const each = shop.lengths.map((_, task) => task);
  const holdOf = ({ tasks, after }, task) =>
    tasks.includes(task) ? shop.lengths[task] + after[tasks.indexOf(task)] : 0;
  const one = shop.resources.filter(({ capacity }) => capacity === 1);
  const pairs = each.flatMap((a) =>
    each
      .filter((b) => b > a)
      .flatMap((b) => {
        const both = one.filter((resource) => holdOf(resource, a) > 0 && holdOf(resource, b) > 0);
        const longest = (task) => Math.max(...both.map((resource) => holdOf(resource, task)));
        return both.length === 0 ? [] : [{ a, b, there: longest(a), back: longest(b) }];
      }),
  );
  const crowds = shop.resources.filter(({ capacity, tasks }) => capacity > 1 && tasks.length > capacity);
  const breaks = shop.blocked.flatMap(({ from, to, tasks }) =>
    (tasks ?? each).map((task) => ({ task, from, to })),
  );
  return {
    tasks: each.length,
    most: known,
    length: shop.lengths,
    earliest: shop.earliest ?? each.map(() => 0),
    pairs: pairs.length,
    first: pairs.map(({ a }) => a + 1),
    second: pairs.map(({ b }) => b + 1),
    there: pairs.map(({ there }) => there),
    back: pairs.map(({ back }) => back),
    orders: shop.before.length,
    before: shop.before.map(({ first }) => first + 1),
    behind: shop.before.map(({ then }) => then + 1),
    gap: shop.before.map(({ first, gap }) => shop.lengths[first] + gap),
    crowds: crowds.length,
    capacity: crowds.map(({ capacity }) => capacity),
    hold: crowds.map((resource) => each.map((task) => holdOf(resource, task))),
    breaks: breaks.length,
    resting: breaks.map(({ task }) => task + 1),
    from: breaks.map(({ from }) => from),
    until: breaks.map(({ to }) => to),
  };
}

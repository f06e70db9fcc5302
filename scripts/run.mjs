// The one way in: `start`, `test`, `build` and `bench` on a bare machine with only Node and npm.
// Plain Node without dependencies, since it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countsOf, isInstalled, nodeFault, verdict } from './verdict.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const notRunFile = join(root, 'build', 'not-run.txt');
const reportFile = join(root, 'build', 'tests.json');
const tasks = { start, test, build, bench };

const [task = '', ...rest] = process.argv.slice(2);
if (!Object.hasOwn(tasks, task)) {
  console.error('Usage: node scripts/run.mjs start|test|build|bench [...]');
  process.exit(2);
}
const fault = nodeFault(process.versions.node);
if (fault !== null) {
  console.error(fault);
  process.exit(1);
}
process.exit(install() || tasks[task](rest));

function start(args) {
  const code = build();
  if (code !== 0) return code;
  say('running the main job on the demo');
  return node([join(root, 'dist', 'handspike.js'), 'demo', ...args]);
}

/** Bundles the command with everything it needs into one file. */
function build() {
  say('building dist/handspike.js');
  return node([join(root, 'scripts', 'bundle.mjs')]);
}

/** One measurement of `bench/` by its name: `key`, `cold-start`. */
function bench([name = '', ...args]) {
  const file = join(root, 'bench', `${name}.mjs`);
  if (!existsSync(file)) {
    console.error(
      'Usage: node scripts/run.mjs bench key|cold-start|paper|montecarlo|diagnosis|one-reading|timetable|live|kill|edit',
    );
    return 2;
  }
  return (
    build() ||
    node([join(root, 'node_modules', 'typescript/bin/tsc'), '-b', 'src/cli']) ||
    node([file, ...args])
  );
}

/** Every check, each of them even when one before it failed; the last lines say what happened. */
function test(args) {
  mkdirSync(join(root, 'build'), { recursive: true });
  for (const old of [notRunFile, reportFile]) rmSync(old, { force: true });
  const steps = [['build', build()]];
  const check = (name, tool, ...options) => {
    say(`checking ${name}`);
    steps.push([name, node([join(root, 'node_modules', tool), ...options])]);
  };
  check('format and lint', '@biomejs/biome/bin/biome', 'check', '--error-on-warnings');
  check('types', 'typescript/bin/tsc', '-b');
  const reports = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  check('tests', 'vitest/vitest.mjs', 'run', ...reports, ...args);
  const notRun = existsSync(notRunFile) ? readFileSync(notRunFile, 'utf8').split('\n').filter(Boolean) : [];
  const counts = countsOf(readJson(reportFile));
  const { lines, code } = verdict({ steps, notRun, counts, isCi: process.env.CI === 'true' });
  console.log(`\n${lines.join('\n')}`);
  return code;
}

/** From the lock file, and only where node_modules differs from it. Gives back an exit code. */
function install() {
  const lock = readJson(join(root, 'package-lock.json'));
  if (isInstalled(lock, readJson(join(root, 'node_modules', '.package-lock.json')))) return 0;
  say('installing what package-lock.json lists (npm ci)');
  const code = npm(['ci', '--no-audit', '--no-fund']);
  if (code !== 0) say('the install failed; it needs the npm registry this once');
  return code;
}

/** npm is a script beside Node, or a command on the path when this was not started by npm. */
function npm(args) {
  const script = process.env.npm_execpath ?? '';
  if (script.endsWith('npm-cli.js')) return node([script, ...args]);
  return run('npm', args, { shell: process.platform === 'win32' });
}

function node(args) {
  return run(process.execPath, args, {});
}

function run(command, args, options) {
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (done.error) console.error(`handspike: ${command} did not start: ${done.error.message}`);
  return done.status ?? 1;
}

function readJson(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null;
}

function say(line) {
  console.log(`handspike: ${line}`);
}

// The one way in: `start`, `test` and `build` on a bare machine with only Node and npm.
// Plain Node without dependencies, since it runs before anything is installed.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const LEAST_NODE = [20, 19];
const root = dirname(dirname(fileURLToPath(import.meta.url)));
const bundle = join(root, 'dist', 'handspike.js');
const notRunFile = join(root, 'build', 'not-run.txt');
const countsFile = join(root, 'build', 'tests.json');

const [task, ...rest] = process.argv.slice(2);
const tasks = { start, test, build };
if (!Object.hasOwn(tasks, task ?? '')) {
  console.error('Usage: node scripts/run.mjs start|test|build [...]');
  process.exit(2);
}
checkNode();
install();
process.exit(tasks[task](rest));

function start(args) {
  const code = build();
  if (code !== 0) return code;
  say('running the main job on the demo');
  return node([bundle, 'demo', ...args]);
}

/** Bundles the command with everything it needs into one file. */
function build() {
  say('building dist/handspike.js');
  return node([join(root, 'scripts', 'bundle.mjs')]);
}

/** Every check, each of them even when one before it failed; the last lines say what happened. */
function test(args) {
  mkdirSync(join(root, 'build'), { recursive: true });
  for (const old of [notRunFile, countsFile]) rmSync(old, { force: true });
  const steps = [
    ['build', () => build()],
    ['format and lint', () => tool('@biomejs/biome', 'bin/biome', ['check', '--error-on-warnings'])],
    ['types', () => tool('typescript', 'bin/tsc', ['-b'])],
    ['tests', () => runTests(args)],
  ];
  const results = steps.map(([name, step]) => {
    if (name !== 'build') say(`checking: ${name}`);
    return [name, step()];
  });
  console.log('');
  for (const [name, code] of results) say(`${name}: ${code === 0 ? 'passed' : 'FAILED'}`);
  const notRun = suitesNotRun();
  for (const line of notRun) say(`NOT RUN: ${line}`);
  const refused = notRun.length > 0 && process.env.CI === 'true';
  if (refused) say('with CI=true a suite that could not run is a failure');
  const counts = readCounts();
  console.log(
    counts.skipped > 0
      ? `${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`
      : `${counts.passed} passed, ${counts.failed} failed`,
  );
  return results.every(([, code]) => code === 0) && counts.passed > 0 && !refused ? 0 : 1;
}

function runTests(args) {
  const reports = ['--reporter=default', '--reporter=json', `--outputFile.json=${countsFile}`];
  return tool('vitest', 'vitest.mjs', ['run', ...reports, ...args]);
}

/** What suites wrote through test/not-run.ts, each once. */
function suitesNotRun() {
  if (!existsSync(notRunFile)) return [];
  return [...new Set(readFileSync(notRunFile, 'utf8').split('\n').filter(Boolean))];
}

/** A file that could not even be loaded holds no test, yet counts as one failure. */
function readCounts() {
  if (!existsSync(countsFile)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(countsFile, 'utf8'));
  const broken = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

function checkNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > LEAST_NODE[0] || (major === LEAST_NODE[0] && minor >= LEAST_NODE[1])) return;
  console.error(`Handspike needs Node ${LEAST_NODE.join('.')} or newer; this is ${process.versions.node}.`);
  console.error('Install a newer Node and run the command again.');
  process.exit(1);
}

function install() {
  if (isInstalled()) return;
  say('installing what package-lock.json lists (npm ci)');
  const code = npm(['ci', '--no-audit', '--no-fund']);
  if (code === 0) return;
  say('the install failed; it needs the npm registry once');
  process.exit(code);
}

/** npm keeps its own list of what lies in node_modules; file times would say less. */
function isInstalled() {
  const listed = join(root, 'node_modules', '.package-lock.json');
  if (!existsSync(listed)) return false;
  const versions = (file) => JSON.parse(readFileSync(file, 'utf8')).packages;
  const wanted = Object.entries(versions(join(root, 'package-lock.json'))).filter(([path]) => path !== '');
  const present = versions(listed);
  return wanted.every(([path, entry]) =>
    present[path] === undefined ? entry.optional === true : present[path].version === entry.version,
  );
}

/** npm is a script beside Node, or a command on the path when this was not started by npm. */
function npm(args) {
  const script = process.env.npm_execpath;
  if (script?.endsWith('.js')) return node([script, ...args]);
  return run('npm', args, { shell: process.platform === 'win32' });
}

function tool(name, file, args) {
  return node([join(root, 'node_modules', name, file), ...args]);
}

function node(args) {
  return run(process.execPath, args, {});
}

function run(command, args, options) {
  const done = spawnSync(command, args, { cwd: root, stdio: 'inherit', ...options });
  if (done.error) console.error(`handspike: ${command} did not start: ${done.error.message}`);
  return done.status ?? 1;
}

function say(line) {
  console.log(`handspike: ${line}`);
}

import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { isBuiltin } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { notRun } from '../not-run.ts';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const bundle = join(root, 'dist', 'handspike.js');
const notices = join(root, 'dist', 'THIRD-PARTY-NOTICES');
const server = join(root, 'dist', 'server.js');

/** What npm says where the typesetter's engine is neither in its cache nor to be fetched. */
const NO_REGISTRY = /ENOTCACHED|ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ERR_SOCKET_TIMEOUT/;

interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Without what npm tells its children, so that the folder is installed into as by hand. */
function run(command: string, args: readonly string[], cwd: string): Outcome {
  const env = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^npm_/i.test(name)));
  const shell = process.platform === 'win32';
  const done = spawnSync(command, args, { cwd, env, shell, encoding: 'utf8', timeout: 120_000 });
  return {
    code: done.status ?? 1,
    out: done.stdout ?? '',
    err: `${done.stderr ?? ''}${done.error?.message ?? ''}`,
  };
}

const newest = (folder: string): number =>
  Math.max(
    ...readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && !entry.name.endsWith('.test.ts'))
      .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs),
  );

/** `npm test` has just built it; a test run on its own builds when the source is newer. */
function buildWhereStale(): void {
  if (existsSync(bundle) && statSync(bundle).mtimeMs > Math.max(newest('src'), newest('scripts'))) return;
  const built = run(process.execPath, ['scripts/run.mjs', 'build'], root);
  if (built.code !== 0) throw new Error(`the bundle does not build:\n${built.out}${built.err}`);
}

describe('the package as it is handed over', () => {
  let work = '';
  const empty = () => join(work, 'empty');
  const handspike = (...args: string[]) =>
    run(join(empty(), 'node_modules', '.bin', 'handspike'), args, empty());
  const isInstalled = () => existsSync(join(empty(), 'node_modules', 'handspike', 'package.json'));
  const hasNpm = run('npm', ['--version'], root).code === 0;

  beforeAll(() => {
    work = mkdtempSync(join(tmpdir(), 'handspike-package-'));
    buildWhereStale();
  }, 120_000);

  afterAll(() => rmSync(work, { recursive: true, force: true }));

  test('packs, and installs into an empty folder', { timeout: 120_000 }, (context) => {
    if (!hasNpm) notRun('package', 'npm is not on the path', context);
    const packed = run('npm', ['pack', '--ignore-scripts', '--pack-destination', work], root);
    expect(packed.code, packed.err).toBe(0);
    const tarball = readdirSync(work).find((name) => name.endsWith('.tgz')) ?? '';
    expect(tarball).toMatch(/^handspike-\d+\.\d+\.\d+\.tgz$/);
    const prefix = ['--prefix', empty(), '--no-audit', '--no-fund'];
    const installed = run('npm', ['install', '--prefer-offline', ...prefix, join(work, tarball)], work);
    if (installed.code !== 0 && NO_REGISTRY.test(installed.err))
      notRun('package', 'the npm registry can not be reached', context);
    expect(installed.code, installed.err).toBe(0);
    expect(readdirSync(join(empty(), 'node_modules')).filter((name) => !name.startsWith('.'))).toEqual([
      '@expo-google-fonts',
      '@libsql',
      '@myriaddreamin',
      // What the database's package asks for to find the binary of this machine.
      '@neon-rs',
      'detect-libc',
      'handspike',
      'libsql',
    ]);
  });

  test('holds the command, the examples, the licence and no source of ours', (context) => {
    if (!isInstalled()) notRun('package', 'the package is not installed', context);
    const inside = readdirSync(join(empty(), 'node_modules', 'handspike')).sort();
    const { files }: { files: readonly string[] } = JSON.parse(
      readFileSync(join(root, 'package.json'), 'utf8'),
    );
    expect(inside).toEqual([...files, 'package.json'].sort());
  });

  test('says how it is used when it is asked for help', (context) => {
    if (!isInstalled()) notRun('package', 'the package is not installed', context);
    const help = handspike('--help');
    expect(help).toMatchObject({ code: 0, err: '' });
    expect(help.out).toContain('handspike');
    expect(help.out).toContain('key');
  });

  test('prints the key of the example that it brings', (context) => {
    if (!isInstalled()) notRun('package', 'the package is not installed', context);
    const example = join(empty(), 'node_modules', 'handspike', 'examples', 'brackwater');
    const printed = handspike('key', join(example, 'harbour-day.visit.yaml'), '--json');
    expect(printed.code, printed.err).toBe(0);
    expect(printed.err).not.toContain('error[');
    expect(JSON.stringify(JSON.parse(printed.out))).toContain('amber');
    expect(handspike('key', join(example, 'harbour-day.visit.yaml')).out).toContain('Good range');
  });

  test('sets a sheet with the engine that it was installed with', (context) => {
    if (!isInstalled()) notRun('package', 'the package is not installed', context);
    const example = join(empty(), 'node_modules', 'handspike', 'examples', 'brackwater');
    const printed = handspike(
      'print',
      join(example, 'harbour-day.visit.yaml'),
      '--only',
      'signs',
      '--to',
      'paper',
    );
    expect(printed.code, printed.err).toBe(0);
    const [first = ''] = printed.out.split('\n');
    expect(readFileSync(join(empty(), first)).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('opens a visit with the database that it was installed with', (context) => {
    if (!isInstalled()) notRun('package', 'the package is not installed', context);
    const example = join(empty(), 'node_modules', 'handspike', 'examples', 'brackwater');
    const visit = join(example, 'harbour-day.visit.yaml');
    const served = handspike('serve', visit, '--once', '--port', '0', '--data', 'kept');
    expect(served.code, served.err).toBe(0);
    expect(served.out).toMatch(/\/group#[A-Z]{6}/);
    expect(existsSync(join(empty(), 'kept', 'visits.db'))).toBe(true);
  });

  test.each([
    ['the command imports nothing but Node itself', bundle, []],
    ['the server imports the database besides', server, ['libsql']],
  ])('%s', (_what, file, packages) => {
    const imported = [
      ...readFileSync(file, 'utf8').matchAll(/^(?:import|export)\b[^'"\n]*['"]([^'"]+)['"];?$/gm),
    ].map((found) => found[1] ?? '');
    expect(imported.filter((specifier) => !isBuiltin(specifier))).toEqual(packages);
  });

  test('carries the licence text of every package that is bundled', () => {
    const text = readFileSync(notices, 'utf8');
    expect(text).toMatch(/^yaml \d+\.\d+\.\d+ \(ISC\)$/m);
    expect(text).toContain('Permission to use, copy, modify');
    expect(readFileSync(`${notices}-SERVER`, 'utf8')).toMatch(/^fastify \d+\.\d+\.\d+ \(MIT\)$/m);
  });
});

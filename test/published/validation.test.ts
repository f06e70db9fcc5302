import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import type { NotRunRecord, ValidationRecord } from './record.ts';
import { casesOf } from './topic.ts';
import { validationPage } from './validation-page.ts';

const root = join(import.meta.dirname, '../..');
const page = join(root, 'docs/validation.md');
const records = mkdtempSync(join(tmpdir(), 'records-'));
afterAll(() => rmSync(records, { recursive: true, force: true }));

/** Test files that keep records: whoever imports the recorder, itself or through a topic. */
const testFilesIn = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.test.ts') && !file.endsWith('validation.test.ts'))
    .map((file) => join(root, folder, file))
    .filter((file) => /from '[^']*\/(record|topic)\.ts'/.test(readFileSync(file, 'utf8')));

const readAll = <T>(isWanted: (file: string) => boolean): readonly T[] =>
  readdirSync(records)
    .filter(isWanted)
    .flatMap((file) => readFileSync(join(records, file), 'utf8').trim().split('\n'))
    .map((line) => JSON.parse(line) as T);

/**
 * Every case of every reference file that was copied here, as `topic id`. A file with a script of its
 * name beside it is no publication but what that script computed.
 */
const allCases = (): readonly string[] => {
  const files = readdirSync(join(root, 'test/reference'));
  return files
    .filter((file) => file.endsWith('.json') && !files.includes(file.replace('.json', '.py')))
    .flatMap((file) => {
      const topic = file.replace('.json', '');
      return casesOf(topic).map((each) => `${topic} ${each.id}`);
    });
};

describe('docs/validation.md', () => {
  it('says what the tests check today (renew it with UPDATE_VALIDATION=1)', { timeout: 180_000 }, () => {
    const files = ['test', 'src'].flatMap(testFilesIn).map((file) => relative(root, file));
    const run = spawnSync(
      process.execPath,
      [join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--reporter=dot', ...files],
      { cwd: root, encoding: 'utf8', env: { ...process.env, HANDSPIKE_RECORDS: records } },
    );
    expect(run.status, `the published checks themselves fail:\n${run.stdout}\n${run.stderr}`).toBe(0);
    const isLeft = (file: string) => file.endsWith('.not-run.jsonl');
    const checks = readAll<ValidationRecord>((file) => !isLeft(file));
    const left = readAll<NotRunRecord>(isLeft);
    const mentioned = [...checks, ...left].map((each) => `${each.topic} ${each.id}`);
    const forgotten = allCases().filter(
      (id) => !mentioned.some((each) => each === id || each.startsWith(`${id}.`)),
    );
    expect(forgotten, 'cases of test/reference that are neither run nor listed').toEqual([]);
    const written = validationPage(checks, left);
    if (process.env.UPDATE_VALIDATION === '1') writeFileSync(page, written);
    expect(readFileSync(page, 'utf8')).toBe(written);
  });
});

describe('the validation page', () => {
  const entry: ValidationRecord = {
    topic: 'levers',
    id: 'lev-1',
    basis: 'published',
    source: 'A Book | 1',
    quantity: 'effort',
    expected: 2,
    got: 2.00000049,
    unit: 'N',
    tolerance: 0.01,
  };

  it('keeps the groups apart, counts cases and figures, and names what was not run', () => {
    const own: ValidationRecord = { ...entry, id: 'lev-2', basis: 'own theory', expected: true, got: true };
    const written = validationPage(
      [entry, entry, { ...entry, quantity: 'load' }, own],
      [
        { topic: 'levers', id: 'lev-1.sag', gist: '', reason: 'no bending here' },
        { topic: 'levers', id: 'lev-4.3', gist: '', reason: 'no bending here' },
      ],
    );
    expect(written).toContain('| Published | 1 | 2 |');
    expect(written).toContain('| Own sheet | 1 | 1 |');
    expect(written).toContain('| A Book \\| 1 | lev-1 | effort | 2 | 2 | N | 0.01 |');
    expect(written).toContain('| levers | lev-1.sag, lev-4.3 | no bending here |');
    expect(written).toContain('| *not run* | 1 |  |');
    expect(written).toContain('| *figures not run, of cases above* |  | 1 |');
    expect(written).not.toContain('From memory');
  });

  it('has no place for a claim that it does not know', () => {
    expect(() => validationPage([{ ...entry, basis: 'hearsay' }], [])).toThrow('hearsay');
  });
});

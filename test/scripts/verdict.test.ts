import { describe, expect, test } from 'vitest';
import { countsOf, isInstalled, nodeFault, verdict } from '../../scripts/verdict.mjs';

describe('the version of Node', () => {
  test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('%s will do', (version) => {
    expect(nodeFault(version)).toBeNull();
  });

  test.each(['18.20.0', '20.18.3'])('%s is told to be too old', (version) => {
    expect(nodeFault(version)).toContain(`needs Node 20.19 or newer; this is ${version}`);
  });
});

describe('what is installed', () => {
  const lock = {
    packages: {
      '': {},
      'node_modules/a': { version: '1.0.0' },
      'node_modules/b': { version: '2.0.0', optional: true },
    },
  };

  test('is what the lock file says, apart from packages for other machines', () => {
    expect(isInstalled(lock, { packages: { 'node_modules/a': { version: '1.0.0' } } })).toBe(true);
  });

  test('is missing, of another version, or incomplete', () => {
    expect(isInstalled(lock, null)).toBe(false);
    expect(isInstalled(lock, { packages: { 'node_modules/a': { version: '1.0.1' } } })).toBe(false);
    expect(isInstalled(lock, { packages: { 'node_modules/b': { version: '2.0.0' } } })).toBe(false);
  });
});

describe('the last lines of the test command', () => {
  const counts = { passed: 7, failed: 0, skipped: 0 };
  const steps: [string, number][] = [
    ['types', 0],
    ['tests', 0],
  ];

  test('a green run ends with its count', () => {
    const { lines, code } = verdict({ steps, notRun: [], counts, isCi: true });
    expect(code).toBe(0);
    expect(lines).toEqual(['handspike: types: passed', 'handspike: tests: passed', '7 passed, 0 failed']);
  });

  test('a suite that could not run is named once, and fails only where CI is true', () => {
    const notRun = ['package: no npm', 'package: no npm'];
    const skipped = { ...counts, skipped: 2 };
    const alone = verdict({ steps, notRun, counts: skipped, isCi: false });
    expect(alone.code).toBe(0);
    expect(alone.lines.slice(2)).toEqual([
      'handspike: NOT RUN: package: no npm',
      '7 passed, 0 failed, 2 skipped',
    ]);
    const refused = verdict({ steps, notRun, counts: skipped, isCi: true });
    expect(refused.code).toBe(1);
    expect(refused.lines).toContain('handspike: with CI=true a suite that could not run is a failure');
  });

  test('a failed step, a failed test and a run without tests are failures', () => {
    const code = (change: object) => verdict({ steps, notRun: [], counts, isCi: false, ...change }).code;
    expect(
      code({
        steps: [
          ['types', 2],
          ['tests', 0],
        ],
      }),
    ).toBe(1);
    expect(code({ counts: { ...counts, failed: 1 } })).toBe(1);
    expect(code({ counts: { ...counts, passed: 0 } })).toBe(1);
  });

  test('a file of tests that could not be loaded counts as a failure, and so does a lost report', () => {
    const file = (status: string, tests: number) => ({
      status,
      assertionResults: Array.from({ length: tests }),
    });
    const report = { numPassedTests: 3, numFailedTests: 1, numPendingTests: 1, numTodoTests: 0 };
    const testResults = [file('passed', 3), file('failed', 1), file('failed', 0)];
    expect(countsOf({ ...report, testResults })).toEqual({ passed: 3, failed: 2, skipped: 1 });
    expect(countsOf(null)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});

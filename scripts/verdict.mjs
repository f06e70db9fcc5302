// What scripts/run.mjs decides, apart from doing it, so that it can be tested. Plain Node.

const LEAST_NODE = [20, 19];

/**
 * `null` for a version of Node that will do, or what to tell the person.
 * @param {string} version
 */
export function nodeFault(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  const isEnough = major > LEAST_NODE[0] || (major === LEAST_NODE[0] && minor >= LEAST_NODE[1]);
  return isEnough
    ? null
    : `Handspike needs Node ${LEAST_NODE.join('.')} or newer; this is ${version}. Install a newer one and run the command again.`;
}

/**
 * Whether node_modules holds what the lock file says, by npm's own list of what it installed. A
 * package may be missing only where it is optional: built for another kind of machine.
 * @param {{ packages: Record<string, { version?: string, optional?: boolean }> }} lock
 * @param {{ packages: Record<string, { version?: string }> } | null} present
 */
export function isInstalled(lock, present) {
  if (present === null) return false;
  return Object.entries(lock.packages).every(([path, wanted]) => {
    if (path === '') return true;
    const found = present.packages[path];
    return found === undefined ? wanted.optional === true : found.version === wanted.version;
  });
}

/**
 * The counts of a test run. A file that could not be loaded holds no test, yet counts as a failure;
 * a run that left no report failed.
 * @param {{ numPassedTests: number, numFailedTests: number, numPendingTests: number, numTodoTests: number, testResults: { status: string, assertionResults: unknown[] }[] } | null} report
 */
export function countsOf(report) {
  if (report === null) return { passed: 0, failed: 1, skipped: 0 };
  const unloaded = report.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + unloaded.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/**
 * The last lines of the test command and its exit code.
 * @param {{ steps: [name: string, code: number][], notRun: string[], counts: { passed: number, failed: number, skipped: number }, isCi: boolean }} run
 */
export function verdict({ steps, notRun, counts, isCi }) {
  const lines = steps.map(([name, code]) => `handspike: ${name}: ${code === 0 ? 'passed' : 'FAILED'}`);
  const suites = [...new Set(notRun)];
  for (const suite of suites) lines.push(`handspike: NOT RUN: ${suite}`);
  const isRefused = isCi && suites.length > 0;
  if (isRefused) lines.push('handspike: with CI=true a suite that could not run is a failure');
  const skipped = counts.skipped > 0 ? `, ${counts.skipped} skipped` : '';
  lines.push(`${counts.passed} passed, ${counts.failed} failed${skipped}`);
  const isGreen = steps.every(([, code]) => code === 0) && counts.passed > 0 && counts.failed === 0;
  return { lines, code: isGreen && !isRefused ? 0 : 1 };
}

import { appendFileSync, mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { TestContext } from 'vitest';

const list = join(dirname(dirname(fileURLToPath(import.meta.url))), 'build', 'not-run.txt');

/**
 * Ends a test whose suite can't run here, and says so: the test command names the suite in its last
 * lines, and with CI=true that is a failure. The one place where a test may be left out.
 */
export function notRun(suite: string, why: string, context: TestContext): never {
  mkdirSync(dirname(list), { recursive: true });
  appendFileSync(list, `${suite}: ${why.replaceAll('\n', ' ')}\n`);
  return context.skip(why);
}

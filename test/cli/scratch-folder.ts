import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const examples = join(import.meta.dirname, '../../examples');

/** An empty folder that is gone when the test file is through; its name has a space and an umlaut. */
export function scratchFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'hand spike ü-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A copy of an example that may be spoilt, in a folder of its own. */
export function exampleIn(folder: string, example: string, name: string = example): string {
  const copy = join(folder, name);
  cpSync(join(examples, example), copy, { recursive: true });
  return copy;
}

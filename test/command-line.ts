import { spawnSync } from 'node:child_process';
import { join } from 'node:path';

/** The command as it is handed over, in one file. */
export const bundle = join(import.meta.dirname, '../dist/handspike.js');

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the bundled command as a shell would. `npm test` builds it first. */
export function runCommand(
  args: readonly string[],
  options: { readonly folder?: string; readonly env?: Readonly<Record<string, string>> } = {},
): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bundle, ...args], {
    encoding: 'utf8',
    cwd: options.folder ?? import.meta.dirname,
    env: { ...process.env, ...options.env },
    maxBuffer: 64 * 1024 * 1024,
  });
  return { code: status, out: stdout, err: stderr };
}

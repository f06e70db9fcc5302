import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';

const newest = (folder: string): number =>
  Math.max(
    ...readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => statSync(join(entry.parentPath, entry.name)).mtimeMs),
  );

let building: Promise<unknown> | null = null;

/** `npm test` has just built the pages; a test on its own builds them where the source is newer. */
export async function buildPagesWhereStale(): Promise<void> {
  const page = join('dist', 'web', 'group.html');
  // The engine of the page for preparing is made of core and documents, and begins with the demo.
  const sources = ['src/web', 'src/store', 'src/core', 'src/documents', 'examples/brackwater'];
  const isFresh = existsSync(page) && statSync(page).mtimeMs > Math.max(...sources.map(newest));
  if (isFresh) return;
  building ??= build({ configFile: 'vite.config.ts' });
  await building;
}

import { existsSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type SourceFile, sourceFile } from './source-file.ts';

export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));

const LEFT_OUT = new Set(['node_modules', 'dist', 'build', 'out', '.git']);

/** Paths from the root of every file under a folder, with slashes, in order; none where it isn't there. */
export function pathsUnder(folder: string): readonly string[] {
  if (!existsSync(join(root, folder))) return [];
  const entries = readdirSync(join(root, folder), { withFileTypes: true });
  return entries
    .filter((entry) => !LEFT_OUT.has(entry.name))
    .flatMap((entry) => {
      const path = folder === '.' ? entry.name : `${folder}/${entry.name}`;
      return entry.isDirectory() ? pathsUnder(path) : [path];
    })
    .sort();
}

export const read = (path: string): SourceFile => sourceFile(path, root);

import type { SourceText } from './source-text.ts';

/**
 * What stands under a key at the top of a file, read before the file is: which other files belong to it.
 *
 * @example writtenUnder({ name: 'a', text: 'serial: BB-03 # ours\n' }, 'serial') // => 'BB-03'
 */
export function writtenUnder(file: SourceText, key: string): string | undefined {
  const found = new RegExp(`^${key}\\s*:\\s*(.+?)\\s*$`, 'm').exec(file.text)?.[1];
  return found?.replace(/\s+#.*$/, '').replace(/^(["'])(.*)\1$/, '$2');
}

/**
 * A path without its folders.
 *
 * @example baseName('examples/bench-book/slipway.kit.yaml') // => 'slipway.kit.yaml'
 */
export const baseName = (path: string): string =>
  path.slice(Math.max(path.lastIndexOf('/'), path.lastIndexOf('\\')) + 1);

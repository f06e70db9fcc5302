import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { noticeOf, noticesText, packageFolderOf } from '../../scripts/third-party-notices.ts';

test('a bundled file belongs to the innermost package that it lies in', () => {
  expect(packageFolderOf('/p/node_modules/yaml/dist/index.js')).toBe('/p/node_modules/yaml');
  expect(packageFolderOf('/p/node_modules/a/node_modules/@b/c/d.js?x')).toBe(
    '/p/node_modules/a/node_modules/@b/c',
  );
  expect(packageFolderOf('\0/p/node_modules/yaml/dist/index.js')).toBe('/p/node_modules/yaml');
  expect(packageFolderOf('/p/src/cli/main.ts')).toBeNull();
});

test('a notice carries the licence text, and a package without one is refused', () => {
  const folder = mkdtempSync(join(tmpdir(), 'handspike-notice-'));
  try {
    writeFileSync(join(folder, 'package.json'), '{"name":"rope","version":"1.2.3","license":"MIT"}');
    expect(() => noticeOf(folder)).toThrow('rope is bundled but brings no licence text');
    writeFileSync(join(folder, 'LICENSE.md'), 'Use it freely.\r\n');
    const notice = noticeOf(folder);
    expect(notice).toEqual({ name: 'rope', version: '1.2.3', licence: 'MIT', text: 'Use it freely.' });
    expect(noticesText([notice], 'dist/rope.js')).toContain('rope 1.2.3 (MIT)\n\nUse it freely.\n');
    expect(noticesText([notice], 'dist/rope.js')).toMatch(/^dist\/rope\.js contains code/);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Rolldown } from 'tsdown';

export interface Notice {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  readonly text: string;
}

/**
 * A bundler plugin: writes a file of notices beside the bundle, with the licence of every package
 * of which code went into it. A package without a licence text stops the build.
 */
export function thirdPartyNotices(bundled: string, fileName: string): Rolldown.Plugin {
  return {
    name: 'third-party-notices',
    generateBundle(_options, bundle) {
      const folders = new Set<string>();
      for (const chunk of Object.values(bundle)) {
        if (chunk.type !== 'chunk') continue;
        for (const id of Object.keys(chunk.modules)) {
          const folder = packageFolderOf(id);
          if (folder !== null) folders.add(folder);
        }
      }
      const notices = [...folders].map(noticeOf).sort((a, b) => (a.name < b.name ? -1 : 1));
      this.emitFile({ type: 'asset', fileName, source: noticesText(notices, bundled) });
    },
  };
}

/** The folder of the package that a bundled module came from; `null` for our own source. */
export function packageFolderOf(id: string): string | null {
  const path = id.split('\0').join('').replace(/\?.*$/, '').split(sep).join('/');
  return /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? null;
}

/** Name, version, licence name and licence text of an installed package. */
export function noticeOf(folder: string): Notice {
  const manifest: { name: string; version: string; license?: string } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  );
  const text = ownText(folder) ?? (manifest.license === 'Apache-2.0' ? apacheText() : null);
  if (text === null) throw new Error(`${manifest.name} is bundled but brings no licence text`);
  return {
    name: manifest.name,
    version: manifest.version,
    licence: manifest.license ?? 'see the text',
    text: text.replaceAll('\r\n', '\n').trim(),
  };
}

function ownText(folder: string): string | null {
  const file = readdirSync(folder).find((name) => /^(licen[sc]e|copying)(\.|$)/i.test(name));
  return file === undefined ? null : readFileSync(join(folder, file), 'utf8');
}

/** Of a package that only names its licence: the text that stands in ours, without the appendix on how to apply it. */
const apacheText = (): string =>
  readFileSync(fileURLToPath(new URL('../LICENSE', import.meta.url)), 'utf8').replace(/\s+APPENDIX:.*$/s, '');

export function noticesText(notices: readonly Notice[], what = 'dist/handspike.js'): string {
  const head = `${what} contains code of the packages below, each under the licence printed with it.`;
  const rule = '-'.repeat(72);
  const parts = notices.map((each) => `${each.name} ${each.version} (${each.licence})\n\n${each.text}`);
  return `${[head, ...parts].join(`\n\n${rule}\n\n`)}\n`;
}

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';
import { noticeOf, noticesText, packageFolderOf } from './scripts/third-party-notices.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const FONT = here('node_modules/@expo-google-fonts/atkinson-hyperlegible/LICENSE_FONT');

/** Pages of the browser's room; each is one entry, and shares with the others what both use. */
export const PAGES = ['index', 'group', 'teacher', 'chart', 'helper'] as const;

/** Licences of what went into the pages, beside them. */
const licences: Plugin = {
  name: 'licences',
  generateBundle(_options, bundle) {
    const folders = Object.values(bundle).flatMap((chunk) =>
      chunk.type === 'chunk' ? Object.keys(chunk.modules).map(packageFolderOf) : [],
    );
    const found = [...new Set(folders.filter((folder) => folder !== null))].map(noticeOf);
    const notices = found.sort((a, b) => (a.name < b.name ? -1 : 1));
    const font = readFileSync(FONT, 'utf8');
    this.emitFile({
      type: 'asset',
      fileName: 'third-party-notices.txt',
      source: `${noticesText(notices, 'The pages')}\nThe font Atkinson Hyperlegible:\n\n${font}`,
    });
  },
};

/** The worker is told what there is to keep; with another list it is another worker, and is taken anew. */
const filesForWorker: Plugin = {
  name: 'files-for-worker',
  enforce: 'post',
  generateBundle(_options, bundle) {
    const worker = bundle['service-worker.js'];
    if (worker?.type !== 'chunk') return;
    const assets = Object.keys(bundle).filter((name) => name.startsWith('assets/'));
    const files = ['/', '/group', ...assets.map((name) => `/${name}`).sort()];
    worker.code = worker.code.replace(/['"`]__FILES__['"`]/, JSON.stringify(JSON.stringify(files)));
  },
};

export default defineConfig({
  root: here('src/web'),
  base: '/',
  publicDir: here('src/web/public'),
  logLevel: 'warn',
  plugins: [licences, filesForWorker],
  oxc: { jsx: { runtime: 'automatic', importSource: 'preact' } },
  build: {
    outDir: here('dist/web'),
    emptyOutDir: true,
    target: ['es2022', 'safari15', 'chrome100', 'firefox100'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    reportCompressedSize: false,
    rolldownOptions: {
      input: {
        ...Object.fromEntries(PAGES.map((page) => [page, here(`src/web/${page}.html`)])),
        'service-worker': here('src/web/worker/service-worker.ts'),
      },
      output: {
        entryFileNames: ({ name }) =>
          name === 'service-worker' ? 'service-worker.js' : 'assets/[name]-[hash].js',
      },
    },
  },
});

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin, type Rolldown } from 'vite';
import { noticeOf, noticesText, packageFolderOf } from './scripts/third-party-notices.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));
const FONT = here('node_modules/@expo-google-fonts/atkinson-hyperlegible/LICENSE_FONT');

/** Pages of the browser's room; each is one entry, and shares with the others what both use. */
export const PAGES = [
  'index',
  'group',
  'teacher',
  'chart',
  'helper',
  'visits',
  'prepare',
  'discuss',
] as const;

/** The page for preparing begins with the demo, which comes along as text. */
const demoText = (name: string) => ({
  name,
  text: readFileSync(here(`examples/brackwater/${name}`), 'utf8'),
});
const DEMO = {
  kit: demoText('boathouse.kit.yaml'),
  activity: demoText('harbour-day.activity.yaml'),
  visit: demoText('harbour-day.visit.yaml'),
};

/** What the engine of the page for preparing is made of: it is built by itself, before the pages. */
const engineFolders = new Set<string>();
const licencesOfEngine: Plugin = {
  name: 'licences-of-engine',
  generateBundle(_options, bundle) {
    for (const folder of foldersIn(bundle)) engineFolders.add(folder);
  },
};

const foldersIn = (bundle: Rolldown.OutputBundle): readonly string[] =>
  Object.values(bundle)
    .flatMap((chunk) => (chunk.type === 'chunk' ? Object.keys(chunk.modules).map(packageFolderOf) : []))
    .filter((folder) => folder !== null);

/** Licences of what went into the pages, beside them. */
const licences: Plugin = {
  name: 'licences',
  generateBundle(_options, bundle) {
    const found = [...new Set([...foldersIn(bundle), ...engineFolders])].map(noticeOf);
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
    const assets = [...assetsOf(bundle, ['index', 'group'])];
    const files = ['/', '/group', ...assets.map((name) => `/${name}`).sort()];
    worker.code = worker.code.replace(/['"`]__FILES__['"`]/, JSON.stringify(JSON.stringify(files)));
  },
};

/** What pages are made of, with all that they can load later: a group's tablet isn't made to keep the engines of the desk. */
function assetsOf(bundle: Rolldown.OutputBundle, pages: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  const follow = (name: string): void => {
    const part = bundle[name];
    if (part === undefined || found.has(name)) return;
    found.add(name);
    if (part.type !== 'chunk') return;
    const { importedCss, importedAssets } = part.viteMetadata ?? {};
    for (const other of [...part.imports, ...part.dynamicImports]) follow(other);
    for (const other of [...(importedCss ?? []), ...(importedAssets ?? [])]) follow(other);
  };
  for (const part of Object.values(bundle))
    if (part.type === 'chunk' && part.isEntry && pages.includes(part.name)) follow(part.fileName);
  return found;
}

/** Pages that any host of files can hold find their files beside themselves, wherever they are put. */
const addressesOfAnyHost: Plugin = {
  name: 'addresses-of-any-host',
  enforce: 'post',
  generateBundle(_options, bundle) {
    for (const name of ['prepare.html', 'discuss.html']) {
      const page = bundle[name];
      if (page?.type === 'asset') page.source = String(page.source).replaceAll(/(src|href)="\//g, '$1="./');
    }
  },
};

export default defineConfig({
  root: here('src/web'),
  base: '/',
  define: {
    __DEMO_TEXTS__: JSON.stringify(DEMO),
    __DEMO_READINGS__: JSON.stringify(demoText('readings.csv')),
  },
  // The pages for preparing and for the talk work under any path of any host; the others are at home at the top of ours.
  experimental: {
    renderBuiltUrl: (_file, { hostType }) => (hostType === 'html' ? undefined : { relative: true }),
  },
  worker: {
    format: 'es',
    plugins: () => [licencesOfEngine],
    rolldownOptions: { output: { entryFileNames: 'assets/[name]-[hash].js' } },
  },
  publicDir: here('src/web/public'),
  logLevel: 'warn',
  plugins: [licences, filesForWorker, addressesOfAnyHost],
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

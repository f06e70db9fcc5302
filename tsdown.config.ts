import { defineConfig, type Rolldown } from 'tsdown';
import { thirdPartyNotices } from './scripts/third-party-notices.ts';

/** What is loaded from here when it is needed is a file of its own in `dist`, and not part of this one. */
const asideFile = (path: RegExp, file: string): Rolldown.Plugin => ({
  name: 'aside-file',
  resolveId: (specifier) => (path.test(specifier) ? { id: file, external: true } : null),
});

const shared = {
  outDir: 'dist',
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  fixedExtension: false,
  tsconfig: 'src/cli/tsconfig.json',
  dts: false,
  outputOptions: { codeSplitting: false },
} as const;

export default defineConfig([
  {
    ...shared,
    entry: { handspike: 'src/cli/handspike.ts' },
    // Everything goes into the one file, so that it starts fast; the server is a file beside it.
    deps: { onlyBundle: false },
    plugins: [asideFile(/\/server\/serve\.ts$/, './server.js'), thirdPartyNotices()],
  },
  {
    ...shared,
    entry: { typesetter: 'src/cli/typesetter/set-sheets.ts' },
    // The engine is a native module and stays a package of its own.
    clean: false,
  },
  {
    ...shared,
    entry: { server: 'src/server/serve.ts' },
    // The database is a native module and stays a package of its own; so does what the server is built on.
    deps: { neverBundle: ['libsql', 'fastify', 'qrcode'] },
    clean: false,
  },
  {
    ...shared,
    // What a class has written is judged in a thread of its own.
    entry: { desk: 'src/server/desk/desk-thread.ts' },
    deps: { onlyBundle: false },
    clean: false,
  },
]);

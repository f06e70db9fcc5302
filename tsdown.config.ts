import { defineConfig } from 'tsdown';
import { thirdPartyNotices } from './scripts/third-party-notices.ts';

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
    // Everything goes into the one file, so that it starts fast.
    deps: { onlyBundle: false },
    plugins: [thirdPartyNotices()],
  },
  {
    ...shared,
    entry: { typesetter: 'src/cli/typesetter/set-sheets.ts' },
    // The engine is a native module and stays a package of its own.
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

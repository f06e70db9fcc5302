import { defineConfig } from 'tsdown';
import { thirdPartyNotices } from './scripts/third-party-notices.ts';

export default defineConfig({
  entry: { handspike: 'src/cli/handspike.ts' },
  outDir: 'dist',
  format: 'esm',
  platform: 'node',
  target: 'node20.19',
  fixedExtension: false,
  tsconfig: 'src/cli/tsconfig.json',
  dts: false,
  // Everything goes into the one file: an install fetches nothing, and one file starts fastest.
  deps: { onlyBundle: false },
  outputOptions: { codeSplitting: false },
  plugins: [thirdPartyNotices()],
});

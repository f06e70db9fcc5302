// Builds dist/handspike.js as tsdown.config.ts says and dist/web as vite.config.ts says; quiet unless something is wrong.
import { fileURLToPath } from 'node:url';
import { build } from 'tsdown';
import { build as buildPages } from 'vite';

try {
  // The command first: it empties dist.
  await build({ logLevel: 'error' });
  await buildPages({ configFile: fileURLToPath(new URL('../vite.config.ts', import.meta.url)) });
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : fault);
  process.exit(1);
}

// Builds dist/handspike.js as tsdown.config.ts says; quiet unless something is wrong.
import { build } from 'tsdown';

try {
  await build({ logLevel: 'error' });
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : fault);
  process.exit(1);
}

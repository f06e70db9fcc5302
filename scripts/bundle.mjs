// Builds dist/handspike.js as tsdown.config.ts says; quiet unless something is wrong.
import { build } from 'tsdown';

await build({ logLevel: 'error' });

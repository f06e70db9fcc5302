import { join } from 'node:path';
import { packageRoot } from './package-root.ts';

/** The folder of an example that comes with the program. */
export const exampleFolder = (name: string): string => join(packageRoot(), 'examples', name);

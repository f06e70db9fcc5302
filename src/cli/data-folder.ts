import { resolve } from 'node:path';
import type { Terminal } from './command.ts';

/** Where a server keeps its visits, in the folder it is started in, unless another is named. */
export const DATA_FOLDER = 'handspike-data';

export const DATA_OPTION = `--data FOLDER   where everything is kept (else ${DATA_FOLDER})`;

export const dataFolder = (terminal: Terminal, named: string | null): string =>
  resolve(terminal.folder, named ?? DATA_FOLDER);

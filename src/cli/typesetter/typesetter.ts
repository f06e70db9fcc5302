import { type ChildProcess, fork } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { packageRoot } from '../package-root.ts';
import type { Answered } from './set-sheets.ts';

/** After this many sheets the process is replaced: the engine keeps about a megabyte of each. */
const SHEETS_A_PROCESS = 200;

/** Sets sheets one after the other in a process of its own. */
export interface Typesetter {
  readonly set: (sheet: SheetOfPaper) => Promise<Uint8Array>;
  readonly close: () => void;
}

/** A sheet that the engine could not set: a fault of the program, told with the sheet's name. */
export class TypesettingFault extends Error {}

/** Starts the typesetter; the process comes with the first sheet. */
export function startTypesetter(): Typesetter {
  let child: ChildProcess | null = null;
  let count = 0;
  const close = (): void => {
    child?.kill();
    child = null;
  };
  return {
    set: (sheet) => {
      if (count % SHEETS_A_PROCESS === 0) close();
      count += 1;
      child ??= startProcess();
      return setIn(child, count, sheet);
    },
    close,
  };
}

function startProcess(): ChildProcess {
  const script = join(packageRoot(), 'dist', 'typesetter.js');
  if (!existsSync(script)) throw new TypesettingFault('the typesetter is not built: run "npm run build"');
  return fork(script, [], {
    serialization: 'advanced',
    // Gives memory back to the system after each page.
    env: { ...process.env, MALLOC_TRIM_THRESHOLD_: '65536', MALLOC_MMAP_THRESHOLD_: '65536' },
  });
}

function setIn(child: ChildProcess, number: number, sheet: SheetOfPaper): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const fail = (why: string): void => reject(new TypesettingFault(`${sheet.name}: ${why}`));
    const onExit = (code: number | null): void => fail(`the typesetter ended with ${code}`);
    child.once('exit', onExit);
    child.once('message', (answered: Answered) => {
      child.off('exit', onExit);
      if ('fault' in answered) fail(answered.fault);
      else resolve(answered.pdf);
    });
    child.send({ number, sheet });
  });
}

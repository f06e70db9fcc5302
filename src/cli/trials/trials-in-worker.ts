import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { RangeAtSetup } from '../../documents/text/trials-text.ts';
import { FileFault } from '../command.ts';
import { packageRoot } from '../package-root.ts';
import type { TrialsJob, TrialsTold } from './trials-job.ts';

/** Runs the trials in a thread of their own, the same program once more, and tells how far they are. */
export function trialsInWorker(
  job: TrialsJob,
  progress: (text: string) => void,
): Promise<readonly RangeAtSetup[]> {
  const script = join(packageRoot(), 'dist', 'handspike.js');
  if (!existsSync(script)) throw new FileFault(`can't read ${script}: run "npm run build" first`);
  return new Promise((resolve, reject) => {
    const worker = new Worker(script, { workerData: job });
    worker.on('message', (told: TrialsTold) => {
      if ('ranges' in told) resolve(told.ranges);
      else progress(`${told.number} of ${told.of}  ${told.setup}`);
    });
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`the trials ended with ${code} and no result`)));
  });
}

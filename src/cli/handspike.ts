#!/usr/bin/env node
import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import { run } from './main.ts';
import { runTrials } from './trials/run-trials.ts';

const isBold = process.stderr.isTTY === true && !process.env.NO_COLOR && process.env.TERM !== 'dumb';

// A reader that has seen enough (`| head`) is no fault.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (fault: NodeJS.ErrnoException) => {
    if (fault.code !== 'EPIPE') throw fault;
  });

// The same file once more, in a thread of its own, for trials.
if (!isMainThread) runTrials(workerData, (told) => parentPort?.postMessage(told));
else
  process.exitCode = await run(process.argv.slice(2), {
    folder: process.cwd(),
    print: (text) => process.stdout.write(text.endsWith('\n') ? text : `${text}\n`),
    tell: (text) => process.stderr.write(text.endsWith('\n') ? text : `${text}\n`),
    progress: (text) => {
      if (process.stderr.isTTY === true) process.stderr.write(`\r\u001b[2K${text}`);
    },
    strong: (text) => (isBold ? `\u001b[1m${text}\u001b[22m` : text),
  });

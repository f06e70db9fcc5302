// The command from cold, bundled, against a node that does nothing: whole processes, in turn.
import { spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';

const ROUNDS = 21;
const command = fileURLToPath(new URL('../dist/handspike.js', import.meta.url));
const folder = fileURLToPath(new URL('../examples/brackwater/', import.meta.url));
const cases = {
  'handspike key': [command, 'key'],
  'handspike --help': [command, '--help'],
  'bare node': ['-e', '0'],
};
const times = Object.fromEntries(Object.keys(cases).map((name) => [name, []]));

for (let round = 0; round <= ROUNDS; round += 1)
  for (const [name, args] of Object.entries(cases)) {
    const start = performance.now();
    const { status } = spawnSync(process.execPath, args, { cwd: folder, stdio: 'ignore' });
    if (status !== 0) throw new Error(`${name} ended with ${status}`);
    // The first round warms the disk's cache and is not counted.
    if (round > 0) times[name].push(performance.now() - start);
  }

const bare = median(times['bare node']);
for (const [name, all] of Object.entries(times))
  console.log(
    `  ${name.padEnd(18)} median ${median(all).toFixed(0)} ms, ${(median(all) - bare).toFixed(0)} ms over bare node, ratio ${(median(all) / bare).toFixed(2)}`,
  );

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

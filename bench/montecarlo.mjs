// Monte Carlo against numpy doing the same vectorised work, one thread each, in turn; and the memory of
// ten thousand and of a million trials. Four inputs through a law, value, u and both 95 % intervals.
import { spawn, spawnSync } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { gaussian, rectangular } from '../build/core/uncertainty/distribution.js';
import { monteCarlo } from '../build/core/uncertainty/monte-carlo.js';

const TRIALS = 1_000_000;
const ROUNDS = 11;
const GOAL = 0.7;

// Load 2 N, height 0.2 m of a board of 0.8 m, friction 0.25..0.35, hand scatter: pull along a slope.
const inputs = [gaussian(2, 0.02), gaussian(0.2, 0.002), rectangular(0.25, 0.35), gaussian(0, 0.03)];
function law([load, height, friction, hand], out) {
  for (let n = 0; n < out.length; n += 1) {
    const sine = height[n] / 0.8;
    out[n] = load[n] * (sine + friction[n] * Math.sqrt(1 - sine * sine)) + hand[n];
  }
}
const work = (seed, trials = TRIALS) => monteCarlo({ inputs, law, seed, trials });

if (process.argv[2] === 'memory') {
  work(1, Number(process.argv[3]));
  console.log(process.resourceUsage().maxRSS);
} else {
  memory();
  await race();
}

/** Greatest memory of a process of its own that does nothing but so many trials. */
function memory() {
  const of = (trials) => {
    const args = [fileURLToPath(import.meta.url), 'memory', String(trials)];
    return Number(spawnSync(process.execPath, args, { encoding: 'utf8' }).stdout) / 1024;
  };
  const [few, many] = [1e4, 1e6].map(of);
  console.log(`greatest memory: ${few.toFixed(1)} MB at 10,000 trials, ${many.toFixed(1)} MB at 1,000,000`);
}

async function race() {
  const peer = await startNumpy();
  if (peer === null) {
    console.log('against numpy: not run, there is no python3 with numpy here (apt install python3-numpy)');
    return;
  }
  const ours = [];
  const theirs = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const start = performance.now();
    const found = work(round);
    ours.push({ ms: performance.now() - start, found });
    theirs.push(await peer.round(round));
  }
  peer.end();
  const [mine, other] = [ours, theirs].map((list) => median(list.map(({ ms }) => ms)));
  console.log(`${TRIALS} trials of four inputs, ${ROUNDS} rounds in turn, one thread each (${peer.version})`);
  console.log(`  ours, median    ${mine.toFixed(0)} ms (first round ${ours[0].ms.toFixed(0)} ms)`);
  console.log(`  numpy, median   ${other.toFixed(0)} ms`);
  console.log(`  ratio           ${(mine / other).toFixed(2)} (goal at most ${GOAL})`);
  const last = (list) => list.at(-1).found;
  console.log(`  ours last       ${printed(last(ours))}`);
  console.log(`  numpy last      ${printed(last(theirs))}`);
}

function printed({ value, u, symmetric, shortest }) {
  const ends = ({ from, to }) => `${from.toFixed(4)}..${to.toFixed(4)}`;
  return `${value.toFixed(5)}  u ${u.toFixed(5)}  symmetric ${ends(symmetric)}  shortest ${ends(shortest)}`;
}

/** numpy in a process of its own: started once, so that only its work is timed; it times itself. */
async function startNumpy() {
  const script = fileURLToPath(new URL('montecarlo.py', import.meta.url));
  const one = { OMP_NUM_THREADS: '1', OPENBLAS_NUM_THREADS: '1', MKL_NUM_THREADS: '1' };
  const child = spawn('python3', [script, String(TRIALS)], {
    env: { ...process.env, ...one },
    stdio: ['pipe', 'pipe', 'ignore'],
  });
  child.on('error', () => undefined);
  child.stdin.on('error', () => undefined);
  const lines = createInterface({ input: child.stdout })[Symbol.asyncIterator]();
  const next = async () => {
    const { value, done } = await lines.next();
    return done ? null : JSON.parse(value);
  };
  const hello = await next();
  if (hello === null) return null;
  return {
    version: hello.version,
    round: async (seed) => {
      child.stdin.write(`${seed}\n`);
      return next();
    },
    end: () => child.stdin.end(),
  };
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

// One shop from a file, solved in a process of its own: what a command takes from cold.
import { readFileSync } from 'node:fs';
import { solveShop } from '../../build/core/rotation/shop-solve.js';

const [file, steps] = process.argv.slice(2);
const answer = solveShop(JSON.parse(readFileSync(file, 'utf8')), { seed: 1, steps: Number(steps) });
console.log(`${answer.end} ${answer.proof}`);

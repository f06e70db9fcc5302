// Simulated classes against the diagnosis: `npm run bench -- diagnosis [--classes N] [--seed N]`.
// The generator in bench/diagnosis/ shares no code, friction or chance with the program.
import { parseArgs } from 'node:util';
import { prepare } from '../build/core/prepare.js';
import { review } from '../build/core/review.js';
import { drawClass } from './diagnosis/classes.mjs';
import { judgeClass } from './diagnosis/judging.mjs';
import { chanceFrom } from './diagnosis/mersenne.mjs';
import { report, verdicts } from './diagnosis/report.mjs';
import { add, newScore } from './diagnosis/score.mjs';

const { values } = parseArgs({
  options: {
    classes: { type: 'string', default: '2000' },
    seed: { type: 'string', default: '2026' },
    rates: { type: 'string', default: '1,3,0.333' },
    top: { type: 'string', default: '25' },
  },
});
const classes = Number(values.classes);
const factors = values.rates.split(',').map(Number);
const scores = factors.map(newScore);
for (let n = 0; n < classes; n += 1) {
  const drawn = drawClass(chanceFrom(Number(values.seed) * 100003 + n));
  for (const [f, rateFactor] of factors.entries())
    add(scores[f], judgeClass({ prepare, review }, drawn, { rateFactor }));
}
for (const [f, factor] of factors.entries()) {
  console.log(`\nbase rates of the program x ${factor}`);
  console.log(report(scores[f], f === 0 ? Number(values.top) : 5));
}
process.exitCode = scores.every((score) => verdicts(score).every(({ isReached }) => isReached)) ? 0 : 1;

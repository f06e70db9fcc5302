// 40 rounds of kill -9 in a simulated class: readings shown as stored and lost, and doubled.
import { parseArgs } from 'node:util';
import { killedClass } from './live/killed-class.mjs';

const { values } = parseArgs({
  options: { rounds: { type: 'string', default: '40' }, seed: { type: 'string', default: '2026' } },
});
const found = await killedClass({
  rounds: Number(values.rounds),
  seed: Number(values.seed),
  tell: (line) => console.log(`  ${line}`),
});
console.log(
  [
    `  ${found.rounds} times killed; ${found.written} readings written in ${found.deliveries} deliveries`,
    `  shown as stored ${found.acknowledged}: lost ${found.lost}, doubled ${found.doubled}, changed ${found.changed}`,
    `  never arrived ${found.missing}; out of order ${found.outOfOrder}`,
  ].join('\n'),
);
const faults = found.lost + found.doubled + found.changed + found.missing + found.outOfOrder;
process.exitCode = faults === 0 && found.acknowledged > 0 ? 0 : 1;

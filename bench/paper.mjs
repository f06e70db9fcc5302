// The whole set of paper from cold, and one more card from a typesetter that is warm.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { fileURLToPath } from 'node:url';
import { startTypesetter } from '../build/cli/typesetter/typesetter.js';
import { prepare } from '../build/core/prepare.js';
import { preparedForCards } from '../build/core/prepare-cards.js';
import { sheetOf } from '../build/documents/prepare.js';
import { cardsOf } from '../build/documents/sheets/table-card.js';

const ROUNDS = 5;
const command = fileURLToPath(new URL('../dist/handspike.js', import.meta.url));
const examples = new URL('../examples/brackwater/', import.meta.url);

const folder = mkdtempSync(join(tmpdir(), 'handspike-paper-'));
const whole = [];
const bare = [];
for (let round = 0; round < ROUNDS; round += 1) {
  whole.push(timed(() => run([command, 'demo', '--once', '--to', 'all'])));
  bare.push(timed(() => run(['-e', '0'])));
}
const count = readdirSync(join(folder, 'all')).filter((name) => name.endsWith('.pdf')).length;
rmSync(folder, { recursive: true });
console.log(
  `  key, pages and ${count} sheets from cold  median ${(median(whole) / 1000).toFixed(2)} s, ${(median(whole) / median(bare)).toFixed(0)} times bare node`,
);

const read = (name) => ({ name, text: readFileSync(new URL(name, examples), 'utf8') });
const prepared = prepare({
  kit: read('boathouse.kit.yaml'),
  activity: read('harbour-day.activity.yaml'),
  visit: read('harbour-day.visit.yaml'),
});
const kept = preparedForCards(prepared);
const typesetter = startTypesetter();
await typesetter.set(card(0));
const again = [];
for (let round = 0; round < 3 * kept.tables.length; round += 1) {
  const start = performance.now();
  await typesetter.set(card(round % kept.tables.length));
  again.push(performance.now() - start);
}
typesetter.close();
console.log(
  `  one more card, drawn and set again      median ${median(again).toFixed(0)} ms, longest ${Math.max(...again).toFixed(0)} ms`,
);

/** The card of one table, drawn anew. */
function card(n) {
  const one = { ...kept, tables: [kept.tables[n]] };
  const languages = { cards: 'en', key: 'en' };
  return cardsOf({ prepared: one, sheet: sheetOf(one), paper: 'a4', languages })[0].card;
}

function run(args) {
  const { status } = spawnSync(process.execPath, args, { cwd: folder, stdio: 'ignore' });
  if (status !== 0) throw new Error(`ended with ${status}`);
}

function timed(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

// A key of 200 setups: three files in, every prediction with its budget out, in process.
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { parseDocument } from 'yaml';
import { prepare } from '../build/core/prepare.js';

const SETUPS = 200;
const ROUNDS = 15;
const folder = new URL('../examples/brackwater/', import.meta.url);
const read = (name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') });
const kit = read('boathouse.kit.yaml');
const visit = read('harbour-day.visit.yaml');
const activity = repeated(read('harbour-day.activity.yaml'));
const files = { kit, activity, visit };

const prepared = prepare(files);
const count = prepared.tables.reduce((sum, table) => sum + table.setups.length, 0);
if (count < SETUPS) throw new Error(`only ${count} setups were prepared`);

const ours = [];
const peer = [];
for (let round = 0; round < ROUNDS; round += 1) {
  ours.push(timed(() => prepare(files)));
  peer.push(timed(() => [kit, activity, visit].map(({ text }) => parseDocument(text))));
}
const fresh = timed(() => prepare(files));
console.log(`${count} setups in ${prepared.tables.length} tables, ${ROUNDS} rounds in turn`);
console.log(
  `  key, median          ${median(ours).toFixed(1)} ms (first round ${ours[0].toFixed(1)} ms, last ${fresh.toFixed(1)} ms)`,
);
console.log(`  YAML alone, median   ${median(peer).toFixed(1)} ms`);
console.log(`  ratio                ${(median(ours) / median(peer)).toFixed(2)}`);

/** The demo's own setups over and over, each copy under new marks, until there are enough. */
function repeated({ name, text }) {
  const copies = Math.ceil(SETUPS / text.match(/- setup:/g).length);
  const tables = text.split(/^tables:\n/m);
  const [head, body] = tables;
  const blocks = body.split(/(?=^ {2}- table:)/m).filter((block) => block.trim() !== '');
  const grown = blocks.map((block) => {
    const [before, setups] = block.split(/^ {4}setups:\n/m);
    const again = Array.from({ length: copies }, (_, n) =>
      setups.replace(
        /(setup|partner): (\w+)/g,
        (_all, key, mark) => `${key}: ${mark}${n === 0 ? '' : `-${n}`}`,
      ),
    );
    return `${before}    setups:\n${again.map((each) => each.replace(/\n*$/, '\n')).join('')}`;
  });
  return { name, text: `${head}tables:\n${grown.join('\n')}` };
}

function timed(work) {
  const start = performance.now();
  work();
  return performance.now() - start;
}

function median(values) {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];
}

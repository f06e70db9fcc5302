// Timetables as tables free up: Taillard's shops and balanced ones beside MiniZinc with Gecode, and whole classes.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { solveShop } from '../build/core/rotation/shop-solve.js';
import { hasJudge, judge, timed } from './timetable/judge.mjs';
import { balanced, classShop, openShop, taillard } from './timetable/shops.mjs';

const LIMIT = 60;
/** The judge would need minutes for some of the balanced ones, and hours for all: what it proves in this time counts. */
const BALANCED_LIMIT = 20;
const STEPS = 1_000_000;
/** Steps for a class, so that the greatest takes 2 s here. */
const CLASS_STEPS = 6000;
const one = fileURLToPath(new URL('./timetable/one.mjs', import.meta.url));
const isJudged = hasJudge();
if (!isJudged) console.log('minizinc is not here: nothing is judged');
let misses = 0;

const parts = { published: published, balanced: balancedShops, rules: smallClasses, classes: classes };
const asked = process.argv.slice(2);
for (const [name, part] of Object.entries(parts)) if (asked.length === 0 || asked.includes(name)) part();
process.exitCode = misses > 0 ? 1 : 0;

/** Every published shop that the reference holds, at its optimum and proved. */
function published() {
  console.log(
    'Taillard: processor seconds, median and most; in process (after one shop to warm up), then as commands from cold',
  );
  inProcess(openShop(balanced(5, 1)), STEPS);
  for (const size of [4, 5, 7, 10, 15, 20]) {
    const cases = taillard(size);
    const rows = cases.map(({ id, shop, optimum }) => {
      const ours = inProcess(shop, STEPS);
      if (ours.answer.end !== optimum || ours.answer.proof === 'none')
        miss(`${id} ends at ${ours.answer.end}, not ${optimum}`);
      if (size > 7) return { ours: ours.seconds };
      const known = Math.ceil(1.2 * optimum);
      const theirs = isJudged ? judge(shop, known, LIMIT) : null;
      if (theirs !== null && theirs.end !== optimum)
        miss(`the judge ends ${id} at ${theirs.end}, not ${optimum}`);
      return { ours: ours.seconds, cold: fromCold(shop), whole: theirs?.whole, alone: theirs?.alone };
    });
    const figure = (name, key) =>
      rows[0][key] === undefined ? '' : `  ${name} ${spread(rows.map((row) => row[key]))}`;
    console.log(
      `  ${size}x${size}, ${cases.length} at the optimum and proved:${figure('ours', 'ours')}${figure('Gecode alone', 'alone')}${figure('| ours from cold', 'cold')}${figure('MiniZinc and Gecode', 'whole')}`,
    );
  }
}

/** All totals alike, where the end is often later than the totals: the judge has to agree. */
function balancedShops() {
  for (const size of [5, 6]) {
    const rows = Array.from({ length: 100 }, (_, n) => {
      const shop = openShop(balanced(size, 1000 * size + n));
      const { answer, seconds } = inProcess(shop, STEPS);
      if (answer.proof === 'none') miss(`balanced ${size}x${size} ${n} is not proved`);
      const theirs = isJudged ? judge(shop, Math.ceil(1.2 * answer.end), BALANCED_LIMIT, true) : null;
      if (theirs !== null && theirs.end !== null && theirs.end !== answer.end)
        miss(`balanced ${size}x${size} ${n}: ${answer.end}, and the judge says ${theirs.end}`);
      return { ours: seconds, isLater: answer.proof === 'search', ...theirs };
    });
    const judged = rows.filter(({ end }) => typeof end === 'number').length;
    console.log(
      `balanced ${size}x${size}: 100 proved, ${rows.filter(({ isLater }) => isLater).length} end later than their totals; judged ${judged}; ours ${spread(rows.map(({ ours }) => ours))}${judged > 0 ? `  Gecode alone ${spread(rows.map(({ alone }) => alone))}` : ''}`,
    );
  }
}

/** Small classes with all rules, where the judge can prove its answer. */
function smallClasses() {
  if (!isJudged) return;
  let judged = 0;
  for (let n = 0; n < 60; n += 1) {
    const { shop, rules } = classShop(5000 + n, 3 + (n % 2), 3);
    const { answer } = inProcess(shop, STEPS / 10);
    if (answer.proof === 'none') miss(`a small class is not proved: ${rules}`);
    const theirs = judge(shop, answer.end + 300, 10);
    if (theirs.end === null) continue;
    judged += 1;
    if (theirs.end !== answer.end)
      miss(`small class ${n} (${rules}): ${answer.end}, and the judge says ${theirs.end}`);
  }
  console.log(
    `small classes with rules: 60 proved, the judge proved ${judged} of them in 10 s and says the same`,
  );
}

/** Whole classes with real rules: proved, or how far from the bound. */
function classes() {
  console.log('classes with rules: gap to the bound, seconds');
  const rows = [];
  for (const [groups, tables] of [
    [4, 4],
    [6, 5],
    [6, 6],
    [8, 6],
    [8, 8],
    [10, 8],
    [12, 9],
  ])
    for (let n = 0; n < 10; n += 1) {
      const { shop, rules } = classShop(100 * groups + 10 * tables + n, groups, tables);
      const { answer, seconds } = inProcess(shop, CLASS_STEPS);
      const gap = (100 * (answer.end - answer.bound)) / answer.bound;
      if (seconds > 2) miss(`${groups} x ${tables} took ${seconds.toFixed(1)} s`);
      rows.push({ size: `${groups} groups x ${tables} tables`, gap, seconds, rules, answer });
    }
  for (const size of new Set(rows.map((row) => row.size))) {
    const own = rows.filter((row) => row.size === size);
    const open = own.filter(({ answer }) => answer.proof === 'none');
    console.log(
      `  ${size}: proved ${own.length - open.length} of ${own.length}, the widest gap ${Math.max(...own.map(({ gap }) => gap)).toFixed(1)} %, seconds ${spread(own.map(({ seconds }) => seconds))}`,
    );
    for (const { rules, gap } of open) console.log(`    within ${gap.toFixed(2)} %: ${rules}`);
  }
}

function inProcess(shop, steps) {
  const before = process.cpuUsage();
  const answer = solveShop(shop, { seed: 1, steps });
  const { user, system } = process.cpuUsage(before);
  return { answer, seconds: (user + system) / 1e6 };
}

function fromCold(shop) {
  const folder = mkdtempSync(join(tmpdir(), 'handspike-shop-'));
  const file = join(folder, 'shop.json');
  writeFileSync(file, JSON.stringify(shop));
  const { seconds } = timed([process.execPath, one, file, String(STEPS)]);
  rmSync(folder, { recursive: true });
  return seconds;
}

function spread(seconds) {
  const sorted = [...seconds].sort((a, b) => a - b);
  return `${sorted[Math.floor(sorted.length / 2)].toFixed(3)} to ${sorted.at(-1).toFixed(3)}`;
}

function miss(what) {
  misses += 1;
  console.log(`missed: ${what}`);
}

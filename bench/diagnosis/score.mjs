// What is counted over all classes, and whether the goals are reached.

/** How far a slip has to carry a reading before it has to be found: half-ranges of the good range. */
const CLEAR = 3;

export const GOALS = {
  flagged: { least: 0.95, words: 'clear mistakes flagged' },
  firstTwo: { least: 0.9, words: 'true cause among the first two' },
  queried: { most: 0.02, words: 'honest readings queried' },
  queriedHeld: { most: 0.02, words: 'honest readings queried, held still' },
  reliable: { most: 0.05, words: 'says against is right, widest gap' },
};

export const newScore = () => ({
  classes: 0,
  honest: count(),
  held: count(),
  insideKits: count(),
  outsideKits: count(),
  outOfRange: count(),
  clear: { all: 0, flagged: 0, firstTwo: 0, first: 0, unclear: 0 },
  byMachine: new Map(),
  bySlip: new Map(),
  byWhy: new Map(),
  byKind: new Map(),
  confused: new Map(),
  queriedFor: new Map(),
  bins: Array.from({ length: 10 }, () => ({ all: 0, right: 0, said: 0 })),
  binsNotGood: Array.from({ length: 10 }, () => ({ all: 0, right: 0, said: 0 })),
  binsEach: Array.from({ length: 10 }, () => ({ all: 0, right: 0, said: 0 })),
});

const count = () => ({ all: 0, of: 0 });

/** True where physics makes a difference that a reading can show. */
export const isClear = ({ reading: { slip, meant, right, isOut, swappedTo, stray }, half, siOf }) => {
  if (slip === null || half === null) return false;
  if (stray) return false;
  if (isOut) return true;
  const written = swappedTo === undefined ? meant : swappedTo * siOf;
  return Math.abs(written - right) > CLEAR * half;
};

/** A slip that moves nothing by half a mark is as good as none. */
const truthOf = ({ slip, meant, right, step, siOf, isOut, swappedTo, stray }) =>
  slip === null ||
  (!isOut && !stray && swappedTo === undefined && Math.abs(meant - right) < 0.5 * step * siOf)
    ? 'good'
    : slip.name;

export function add(score, { judged, tables }) {
  score.classes += 1;
  for (const each of judged) {
    const truth = truthOf(each.reading);
    if (each.verdict === 'not judged' || each.verdict === 'unreadable') {
      bump(score.confused, `${truth} (${each.reading.machine}) -> ${each.verdict}`);
      continue;
    }
    const isQueried = each.verdict === 'look again' || each.stationIs !== null;
    reliability(score, each, truth);
    if (truth === 'good') honest(score, each, isQueried);
    else mistaken(score, each, isQueried, truth, tables);
  }
  return score;
}

function honest(score, { reading, isOutside, causes }, isQueried) {
  hit(score.honest, isQueried);
  hit(reading.isSpoilt ? score.outsideKits : score.insideKits, isQueried);
  if (reading.way === 'held') hit(score.held, isQueried);
  hit(score.outOfRange, isOutside);
  if (isQueried)
    bump(
      score.queriedFor,
      `${reading.machine} ${reading.way}${reading.isSpoilt ? ' (spoilt)' : ''}: ${causes[0]?.name}`,
    );
}

function mistaken(score, each, isQueried, truth) {
  if (!isClear(each)) {
    score.clear.unclear += 1;
    return;
  }
  const place = each.causes.findIndex(({ name }) => name === truth);
  const isNamed = each.stationIs === truth;
  const flagged = isQueried || isNamed;
  const firstTwo = (place >= 0 && place < 2) || isNamed;
  const { reading } = each;
  for (const tally of [
    score.clear,
    tallyIn(score.byMachine, reading.machine),
    tallyIn(score.bySlip, `${truth} (${reading.machine})`),
    tallyIn(score.byWhy, reading.why),
    tallyIn(score.byKind, reading.slip.kind),
  ]) {
    tally.all += 1;
    if (flagged) tally.flagged += 1;
    if (firstTwo) tally.firstTwo += 1;
    if (place === 0) tally.first += 1;
    if (each.oracle?.slice(0, 2).includes(truth)) tally.oracle = (tally.oracle ?? 0) + 1;
  }
  if (!firstTwo)
    bump(
      score.confused,
      `${truth} (${reading.machine} ${reading.way}, ${reading.why}) -> ${
        each.causes
          .slice(0, 2)
          .map(({ name }) => name)
          .join(' | ') || each.verdict
      }`,
    );
}

function reliability(score, { causes }, truth) {
  const [top] = causes;
  if (top === undefined) return;
  const bin = (bins, cause) => {
    const each = bins[Math.min(9, Math.floor(cause.probability * 10))];
    each.all += 1;
    each.said += cause.probability;
    if (cause.name === truth) each.right += 1;
  };
  bin(score.bins, top);
  if (top.name !== 'good') bin(score.binsNotGood, top);
  for (const cause of causes) bin(score.binsEach, cause);
}

const hit = (counted, is) => {
  counted.all += 1;
  if (is) counted.of += 1;
};
const bump = (map, key) => map.set(key, (map.get(key) ?? 0) + 1);
const tallyIn = (map, key) => {
  if (!map.has(key)) map.set(key, { all: 0, flagged: 0, firstTwo: 0, first: 0 });
  return map.get(key);
};

export const share = ({ all, of }) => (all === 0 ? 0 : of / all);

/** Each goal with what was found. A bin counts for reliability where chance alone moves it by under 5 %. */
export function verdicts(score) {
  const { clear, honest: all, held, bins, binsNotGood } = score;
  const gaps = [...bins, ...binsNotGood]
    .filter((bin) => bin.all >= 400)
    .map((bin) => Math.abs(bin.right - bin.said) / bin.all);
  const found = {
    flagged: clear.flagged / clear.all,
    firstTwo: clear.firstTwo / clear.all,
    queried: share(all),
    queriedHeld: share(held),
    reliable: Math.max(...gaps),
  };
  return Object.entries(GOALS).map(([name, { words, least, most }]) => ({
    words,
    found: found[name],
    goal: least === undefined ? `<= ${percent(most)}` : `>= ${percent(least)}`,
    isReached: least === undefined ? found[name] <= most : found[name] >= least,
  }));
}

export const percent = (value) => `${(100 * value).toFixed(1)} %`;

export function report(score, { top = 15 } = {}) {
  const lines = [
    `${score.classes} classes: ${score.honest.all} honest readings, ${score.clear.all} clear mistakes, ${score.clear.unclear} that differ too little`,
  ];
  for (const { words, found, goal, isReached } of verdicts(score))
    lines.push(
      `  ${words.padEnd(40)} ${percent(found).padStart(8)}   goal ${goal.padEnd(10)} ${isReached ? 'yes' : 'NO'}`,
    );
  lines.push(
    `  true cause first ${percent(score.clear.first / score.clear.all)}; who knew the true apparatus would have it among two: ${percent((score.clear.oracle ?? 0) / score.clear.all)}`,
    `  honest queried, kits as filed ${percent(share(score.insideKits))}, spoilt tables ${percent(share(score.outsideKits))}; honest outside the good range ${percent(share(score.outOfRange))}`,
  );
  lines.push('', 'says / is right, first cause (all; not good; every cause listed)');
  score.bins.forEach((bin, n) => {
    const cell = ({ all, right, said }) =>
      all === 0
        ? '-'.padStart(24)
        : `${percent(said / all)} / ${percent(right / all)} of ${all}`.padStart(26);
    lines.push(
      `  ${n * 10}-${n * 10 + 10} %`.padEnd(12) +
        cell(bin) +
        cell(score.binsNotGood[n]) +
        cell(score.binsEach[n]),
    );
  });
  const part = (title, map) => {
    lines.push('', `${title.padEnd(46)} count  flagged  in two   first  knower`);
    for (const [name, t] of [...map].sort((a, b) => b[1].all - a[1].all))
      lines.push(
        `  ${name.padEnd(44)} ${`${t.all}`.padStart(5)} ${percent(t.flagged / t.all).padStart(8)} ${percent(t.firstTwo / t.all).padStart(8)} ${percent(t.first / t.all).padStart(7)} ${percent((t.oracle ?? 0) / t.all).padStart(7)}`,
      );
  };
  part('by machine', score.byMachine);
  part('by kind of slip', score.byKind);
  part('by what kept it going', score.byWhy);
  part('by slip', score.bySlip);
  const most = (title, map) => {
    lines.push('', title);
    for (const [name, n] of [...map].sort((a, b) => b[1] - a[1]).slice(0, top))
      lines.push(`  ${`${n}`.padStart(5)}  ${name}`);
  };
  most('not among the first two: truth -> said', score.confused);
  most('honest and queried for', score.queriedFor);
  return lines.join('\n');
}

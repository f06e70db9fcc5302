// Counts as a table with the goals and yes or no beside each.
import { gapError } from './score.mjs';

export const share = ({ all, of }) => (all === 0 ? 0 : of / all);
export const percent = (value) => `${(100 * value).toFixed(1)} %`;

/** A bin is held to the reliability goal from so many readings on; by how much chance moves it is printed beside it. */
const FULL_BIN = 400;

export const GOALS = [
  { words: 'clear mistakes flagged', least: 0.95, of: ({ clear }) => clear.flagged / clear.all },
  { words: 'true cause among the first two', least: 0.9, of: ({ clear }) => clear.firstTwo / clear.all },
  { words: 'honest readings queried', most: 0.02, of: ({ honest }) => share(honest) },
  { words: 'honest readings queried, held still', most: 0.02, of: ({ held }) => share(held) },
  { words: 'says against is right, first cause', most: 0.05, of: ({ bins }) => widestGap(bins) },
  { words: 'the same where it is not "good"', most: 0.05, of: ({ binsNotGood }) => widestGap(binsNotGood) },
];

const widestGap = (bins) =>
  Math.max(
    0,
    ...bins.filter(({ all }) => all >= FULL_BIN).map(({ all, right, said }) => Math.abs(right - said) / all),
  );

/** Each goal with what was found. */
export const verdicts = (score) =>
  GOALS.map(({ words, least, most, of }) => {
    const found = of(score);
    const isReached = least === undefined ? found <= most : found >= least;
    const goal = least === undefined ? `<= ${percent(most)}` : `>= ${percent(least)}`;
    return { words, found, goal, isReached };
  });

/** All of it as text; `top` lines of each list that can be long. */
export function report(score, top) {
  const { clear, tables, habits } = score;
  return [
    `${score.classes} classes: ${score.honest.all} honest readings, ${clear.all} clear mistakes, ${score.unclear} that differ too little`,
    ...verdicts(score).map(
      ({ words, found, goal, isReached }) =>
        `  ${words.padEnd(40)} ${percent(found).padStart(8)}   goal ${goal.padEnd(10)} ${isReached ? 'yes' : 'NO'}`,
    ),
    `  true cause first ${percent(clear.first / clear.all)}; who knew the true apparatus would have it among two: ${percent(clear.knower / clear.all)}`,
    `  honest queried: kits as filed ${percent(share(score.asFiled))}, tables outside the priors ${percent(share(score.spoilt))}; honest outside the good range ${percent(share(score.outOfRange))}`,
    `  tables changed or led astray: named ${shareOf(tables.changed)}, what is behind among those said ${shareOf(tables.named)}`,
    `  sound tables with a finding ${shareOf(tables.falseAlarm)}; tables outside the priors said to be off the list ${shareOf(tables.spoiltSeen)}`,
    `  habits shown twice or more: named ${shareOf(habits.kept)}; habits said that the group never had ${shareOf(habits.alleged)}`,
    ...reliability(score),
    ...part('by machine', score.byMachine),
    ...part('by kind', score.byKind),
    ...part('by what kept it going', score.byWhy),
    ...part('by slip', score.bySlip),
    ...rivals(score, top),
    ...most('not among the first two: truth -> said', score.confused, top),
    ...most('honest and queried for', score.queriedFor, top),
  ].join('\n');
}

const shareOf = (counted) => `${percent(share(counted))} of ${counted.all}`;

function reliability({ bins, binsNotGood }) {
  const cell = (bin) => {
    const { all, right, said } = bin;
    const error = (100 * gapError(bin)).toFixed(1);
    return (
      all === 0 ? '-' : `${percent(said / all)} / ${percent(right / all)} ± ${error} of ${all}`
    ).padStart(34);
  };
  return [
    '',
    'says / is right ± standard error    first cause, all           where it is not "good"',
    ...bins.map(
      (bin, n) => `  ${`${n * 10}-${n * 10 + 10} %`.padEnd(10)}${cell(bin)}${cell(binsNotGood[n])}`,
    ),
  ];
}

const part = (title, map) => [
  '',
  `${title.padEnd(46)} count  flagged   in two    first   knower`,
  ...[...map]
    .sort((a, b) => b[1].all - a[1].all)
    .map(([name, { all, flagged, firstTwo, first, knower }]) => {
      const shares = [flagged, firstTwo, first, knower].map((each) => percent(each / all).padStart(8));
      return `  ${name.padEnd(44)} ${`${all}`.padStart(5)} ${shares.join(' ')}`;
    }),
];

/** Pairs of causes that lead to the same number so often that one reading can't tell them. */
const rivals = (score, top) => [
  '',
  "what one reading can't tell apart, of the cases of the first",
  ...[...score.rivals]
    .map(([pair, n]) => ({ pair, n, of: score.slipCases.get(pair.split(' | ')[0]) }))
    .filter(({ n, of }) => n >= 3 && n / of >= 0.1)
    .sort((a, b) => b.n - a.n)
    .slice(0, top)
    .map(({ pair, n, of }) => `  ${percent(n / of).padStart(8)} of ${`${of}`.padStart(4)}  ${pair}`),
];

const most = (title, map, top) => [
  '',
  title,
  ...[...map]
    .sort((a, b) => b[1] - a[1])
    .slice(0, top)
    .map(([name, n]) => `  ${`${n}`.padStart(5)}  ${name}`),
];

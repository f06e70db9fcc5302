// What is counted over all classes.
import { nameOf } from './knower.mjs';

/** How far a slip has to carry a reading before it has to be found: half-ranges of the good range. */
const CLEAR = 3;

const count = () => ({ all: 0, of: 0 });
const tenths = () => Array.from({ length: 10 }, () => ({ all: 0, right: 0, said: 0, tables: new Map() }));

export const newScore = () => ({
  classes: 0,
  honest: count(),
  held: count(),
  asFiled: count(),
  spoilt: count(),
  outOfRange: count(),
  clear: tally(),
  unclear: 0,
  byMachine: new Map(),
  byKind: new Map(),
  byWhy: new Map(),
  bySlip: new Map(),
  confused: new Map(),
  queriedFor: new Map(),
  rivals: new Map(),
  slipCases: new Map(),
  /** First cause whatever it is; first cause where it isn't "good". */
  bins: tenths(),
  binsNotGood: tenths(),
  tables: { changed: count(), named: count(), falseAlarm: count(), spoiltSeen: count() },
  habits: { kept: count(), alleged: count() },
});

function tally() {
  return { all: 0, flagged: 0, firstTwo: 0, first: 0, knower: 0 };
}

/** Counts one judged class. */
export function add(score, judgedClass) {
  score.classes += 1;
  for (const each of judgedClass.judged) addReading(score, each);
  addTables(score, judgedClass);
  addHabits(score, judgedClass);
  return score;
}

function addReading(score, each) {
  const truth = truthOf(each.reading);
  // What the program says of the station is said of the readings that were taken there.
  const isQueried = each.verdict === 'look again' || each.stationIs !== null;
  addReliability(score, each, truth);
  if (truth === 'good') addHonest(score, each, isQueried);
  else if (isClear(each)) addMistaken(score, each, isQueried, truth);
  else score.unclear += 1;
}

/** A slip that moves nothing by half a mark is as good as none. */
function truthOf({ slip, meant, right, step, siOf, swappedTo, stray }) {
  if (slip === null) return 'good';
  const moves = stray || swappedTo !== undefined || Math.abs(meant - right) >= 0.5 * step * siOf;
  return moves ? nameOf(slip) : 'good';
}

/** True where physics makes a difference that a reading can show. A stray number has no figure to differ. */
export function isClear({ reading: { slip, meant, right, swappedTo, stray, siOf }, half }) {
  if (slip === null || half === null || stray) return false;
  const written = swappedTo === undefined ? meant : swappedTo * siOf;
  return Math.abs(written - right) > CLEAR * half;
}

function addHonest(score, { reading, verdict, causes }, isQueried) {
  hit(score.honest, isQueried);
  hit(reading.isSpoilt ? score.spoilt : score.asFiled, isQueried);
  if (reading.way === 'held') hit(score.held, isQueried);
  hit(score.outOfRange, verdict === 'look again' || verdict === 'a little off');
  if (isQueried)
    bump(
      score.queriedFor,
      `${reading.machine} ${reading.way}${reading.isSpoilt ? ' (spoilt)' : ''}: ${causes[0]?.name}`,
    );
}

function addMistaken(score, each, isQueried, truth) {
  const { reading, causes, stationIs, knower, rivals } = each;
  const place = causes.findIndex(({ name }) => name === truth);
  const isAmongTwo = (place >= 0 && place < 2) || stationIs === truth;
  const slip = `${reading.slip.name} (${reading.machine})`;
  for (const into of [
    score.clear,
    tallyIn(score.byMachine, reading.machine),
    tallyIn(score.byKind, reading.slip.kind),
    tallyIn(score.byWhy, reading.why),
    tallyIn(score.bySlip, slip),
  ]) {
    into.all += 1;
    into.flagged += isQueried ? 1 : 0;
    into.firstTwo += isAmongTwo ? 1 : 0;
    into.first += place === 0 ? 1 : 0;
    into.knower += knower.slice(0, 2).includes(truth) ? 1 : 0;
  }
  bump(score.slipCases, slip);
  for (const name of new Set(rivals.map((rival) => rival.name.replace(/ W\d+$/, ''))))
    bump(score.rivals, `${slip} | ${name}`);
  if (!isAmongTwo) bump(score.confused, `${slip}, ${reading.way}, ${reading.why} -> ${firstTwoOf(each)}`);
}

const firstTwoOf = ({ causes, verdict }) =>
  causes
    .slice(0, 2)
    .map(({ name }) => name)
    .join(' | ') || verdict;

function addReliability(score, { causes: [top], reading: { table } }, truth) {
  if (top === undefined) return;
  for (const bins of top.name === 'good' ? [score.bins] : [score.bins, score.binsNotGood]) {
    const bin = bins[Math.min(9, Math.floor(top.probability * 10))];
    bin.all += 1;
    bin.said += top.probability;
    bin.right += top.name === truth ? 1 : 0;
    const at = `${score.classes} ${table}`;
    const before = bin.tables.get(at) ?? { all: 0, gap: 0 };
    const gap = before.gap + (top.name === truth ? 1 : 0) - top.probability;
    bin.tables.set(at, { all: before.all + 1, gap });
  }
}

/**
 * Standard error of "is right less says" in a tenth. Readings of one table of one class are right or wrong
 * together (a changed station that nobody saw), so that tables are what is counted as independent.
 */
export function gapError({ all, right, said, tables }) {
  const gap = (right - said) / all;
  const squares = [...tables.values()].reduce((sum, each) => sum + (each.gap - gap * each.all) ** 2, 0);
  return Math.sqrt(squares) / all;
}

/** Readings that show a change clearly before the program has to have seen it. */
const ENOUGH = 3;

function addTables(score, { drawn, judged, findings }) {
  const { changed, named, falseAlarm, spoiltSeen } = score.tables;
  for (const table of drawn.tables) {
    const here = judged.filter(({ reading }) => reading.table === table.mark);
    const finding = findings.find((each) => each.table === table.mark) ?? null;
    const those = here.filter(({ reading }) => reading.why === 'station' || reading.why === 'card');
    const clear = those.filter(isClear);
    if (clear.length >= ENOUGH) {
      const isNamed = finding?.name === nameOf(clear[0].reading.slip);
      hit(changed, isNamed);
      const kind = clear[0].reading.why;
      if (isNamed)
        hit(
          named,
          finding.behind.some(({ what }) => what === kind),
        );
    } else if (those.length === 0) {
      if (table.isSpoilt) hit(spoiltSeen, finding?.kind === 'off the list');
      else hit(falseAlarm, finding !== null);
    }
  }
}

function addHabits(score, { drawn, judged, habits }) {
  for (const group of drawn.groups) {
    const own = judged.filter(({ reading }) => reading.group === group.name);
    const kept = own.filter((each) => each.reading.why === 'habit' && isClear(each)).length;
    const said = habits.filter((each) => each.group === group.name).map(({ name }) => name);
    if (kept >= 2) hit(score.habits.kept, said.includes(group.habit));
    const made = new Set(own.map(({ reading }) => (reading.slip === null ? 'good' : nameOf(reading.slip))));
    for (const name of said) hit(score.habits.alleged, !made.has(name));
  }
}

function hit(counted, is) {
  counted.all += 1;
  counted.of += is ? 1 : 0;
}

const bump = (map, key) => map.set(key, (map.get(key) ?? 0) + 1);

function tallyIn(map, key) {
  const known = map.get(key) ?? tally();
  map.set(key, known);
  return known;
}

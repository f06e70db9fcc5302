// A class: a kit as its teacher describes it and as it is, groups that go round, what goes wrong.
import { filesOf } from './files.mjs';
import { drawReader, drawScale } from './instrument.mjs';
import { gravityAt } from './laws.mjs';
import { askedOf, figureOf, readOne } from './readings.mjs';
import { slipsFor } from './slips.mjs';
import { compoundTable } from './tables/compound.mjs';
import { leverTable } from './tables/lever.mjs';
import { dragTable, inclineTable } from './tables/slope.mjs';
import { tackleTable } from './tables/tackle.mjs';
import { screwTable, windlassTable } from './tables/turning.mjs';
import { wedgeTable } from './tables/wedge.mjs';

const KINDS = [
  leverTable,
  inclineTable,
  tackleTable,
  windlassTable,
  screwTable,
  dragTable,
  wedgeTable,
  compoundTable,
];
const LETTERS = {
  lever: 'L',
  'inclined plane': 'S',
  tackle: 'T',
  windlass: 'C',
  screw: 'P',
  'drag on the level': 'R',
  wedge: 'G',
  compound: 'D',
};

/** How often things go wrong: the generator's own rates, unlike those of the program. */
export const RATES = {
  outsidePriors: 0.2,
  habit: 0.15,
  habitKept: 0.85,
  stationChanged: 0.07,
  cardLeads: 0.025,
  cardFollowed: 0.75,
  slip: 0.045,
};

/** One simulated class: the three files as text, and its readings with what truly happened. */
export function drawClass(chance) {
  const latitude = chance.between(30, 62);
  const gravity = gravityAt((latitude * Math.PI) / 180, 50);
  const kit = drawWeights(chance, gravity);
  const count = chance.whole(4, 6);
  const tables = chance
    .shuffled([...KINDS])
    .slice(0, count)
    .map((draw, n) => drawTable(chance, draw, kit, `${n + 1}`));
  const spoilt = chance.yes(RATES.outsidePriors) ? spoil(chance, tables) : null;
  const groups = 'ABCDEFGHIJ'
    .slice(0, chance.whole(4, 10))
    .split('')
    .map((name) => drawGroup(chance, name));
  const changes = new Map(tables.map((table) => [table.mark, drawChange(chance, table, groups.length, kit)]));
  return {
    files: filesOf(kit, tables, latitude, groups.length),
    readings: drawReadings(chance, { tables, groups, kit, changes }),
    changes,
    groups,
    tables,
    kit,
    spoilt,
  };
}

const MASSES = [100, 200, 300, 500, 750, 1000, 1500];

function drawWeights(chance, gravity) {
  const marks = MASSES.filter(() => chance.yes(0.8)).map((grams) => `W${grams}`);
  const all = marks.length < 4 ? MASSES.map((grams) => `W${grams}`) : marks;
  return {
    gravity,
    marks: all,
    mass: Object.fromEntries(all.map((mark) => [mark, Number(mark.slice(1)) / 1000])),
    truth: Object.fromEntries(
      all.map((mark) => [mark, (Number(mark.slice(1)) / 1000) * (1 + 0.0008 * chance.normal())]),
    ),
  };
}

/** A table whose readings can be read: drawn again until they stand well on the scale. */
function drawTable(chance, draw, kit, mark) {
  for (;;) {
    const drawn = draw(chance, kit);
    if (drawn === null) continue;
    const scale = drawn.isCounted ? null : drawScale(chance, kit.gravity);
    const table = {
      ...drawn,
      mark,
      scale,
      zeroed: chance.yes(0.7) ? 'in place' : 'hook down',
      nominal: { ...drawn.nominal, weight: (load) => kit.mass[load] * kit.gravity },
      truth: { ...drawn.truth, weight: (load) => kit.truth[load] * kit.gravity },
      setups: namedSetups(drawn, mark),
    };
    if (drawn.isCounted || isReadable(table, kit)) return table;
  }
}

function namedSetups({ machine, setups }, table) {
  const name = (n) => `${LETTERS[machine]}${table}${'abc'[n]}`;
  return setups.map((setup, n) => ({
    ...setup,
    mark: name(n),
    partner: n < 2 && setup.way !== 'count' ? name(1 - n) : null,
    unitSi: setup.state.watch === 'travel' ? 0.001 : 1,
  }));
}

function isReadable(table, kit) {
  const { scale } = table;
  const si = scale.unit === 'N' ? 1 : 9.80665e-3;
  const flawless = { ...scale.nominal, gain: 1, offset: 0, tube: 0 };
  const seen = table.setups.map((setup) =>
    figureOf(table, kit, askedOf(table, setup), table.nominal, flawless),
  );
  const isOn = seen.every(({ low, high }) => low > 5 * scale.step * si && high < 0.8 * scale.range * si);
  const pulls = table.setups.map(({ state, way }) =>
    table.force(table.nominal, state, way === 'lower' || way === 'held' ? -1 : 1, 'moving'),
  );
  const hangs = table.hang(table.nominal, table.setups[0].state) === Math.PI;
  const isHeavy = !hangs || pulls.every((pull) => pull > 1.25 * scale.nominal.mass * kit.gravity);
  return isOn && isHeavy && Math.abs(seen[0].low - seen[1].low) > 3 * scale.step * si;
}

/** One or two tables whose apparatus is not what the files say, nor what any list of sources has. */
function spoil(chance, tables) {
  const chosen = chance.shuffled(tables).slice(0, chance.whole(1, 2));
  for (const table of chosen) {
    const { weight } = table.truth;
    const way = chance.yes(0.25) && !table.isCounted ? chance.pick(['mass', 'scale']) : 'apparatus';
    if (way === 'apparatus') table.truth = { ...table.spoil(table.truth), weight };
    else if (way === 'scale') table.scale.truth = { ...table.scale.truth, gain: chance.pick([0.92, 1.08]) };
    else {
      const by = chance.pick([0.9, 1.1]);
      table.truth = { ...table.truth, weight: (load) => by * weight(load) };
    }
    table.isSpoilt = true;
  }
  return chosen.map(({ mark }) => mark);
}

const HABITS = [
  'old zero',
  'zeroed again',
  'in grams',
  'in newtons',
  'lowered',
  'speeding up',
  'start read',
  'half turns',
  'load from the other end',
  'pull from the other end',
  'in ounces',
  'in kilograms',
  'in centimetres',
  'marks of half',
];
const HABIT_WEIGHTS = [6, 2, 6, 6, 3, 3, 2, 2, 1.5, 1.5, 0.5, 0.5, 2, 2];

function drawGroup(chance, name) {
  const habit = chance.yes(RATES.habit)
    ? chance.weighed(HABITS.map((each, n) => ({ name: each, weight: HABIT_WEIGHTS[n] }))).name
    : null;
  return { name, reader: drawReader(chance), habit };
}

/** Groups go round the tables; what one leaves changed, the next ones find. */
function drawReadings(chance, { tables, groups, kit, changes }) {
  const readings = [];
  const turns = Math.max(groups.length, tables.length);
  const visits = new Map(tables.map(({ mark }) => [mark, 0]));
  for (let turn = 0; turn < turns; turn += 1)
    groups.forEach((group, g) => {
      const table = tables[(g + turn) % turns];
      if (table === undefined) return;
      const visit = visits.get(table.mark);
      visits.set(table.mark, visit + 1);
      for (const setup of table.setups) {
        const slips = slipsFor(table, setup, kit);
        const { slip, why } = slipNow(chance, {
          slips,
          group,
          change: changes.get(table.mark),
          visit,
          setup,
        });
        const reading = readOne(chance, { table, setup, kit, reader: group.reader, slip });
        const isVoid = reading.isVoid === true;
        readings.push({
          group: group.name,
          table: table.mark,
          machine: table.machine,
          setup: setup.mark,
          way: setup.way,
          isSpoilt: table.isSpoilt === true,
          slip: isVoid ? null : slip,
          why: isVoid ? null : why,
          turn: visit,
          ...reading,
        });
      }
    });
  return readings;
}

/** Slips of one pen, that no card leads to. */
const PEN_ONLY = ['ten times', 'a tenth', 'a hundred times', 'digits swapped'];

/** What changes for everybody at a table: the station from some group on, or a card that misleads. */
function drawChange(chance, table, groups, kit) {
  const [first] = table.setups;
  const slips = slipsFor(table, first, kit);
  if (chance.yes(RATES.stationChanged)) {
    const those = slips.filter(({ persists }) => persists.includes('station'));
    if (those.length > 0) {
      const { name, key } = chance.weighed(those);
      return { why: 'station', name, key, from: chance.whole(1, Math.max(1, groups - 2)) };
    }
  }
  if (chance.yes(RATES.cardLeads)) {
    const those = slips.filter(({ kind, name }) => kind !== 'stray' && !PEN_ONLY.includes(name));
    const { name, key } = chance.weighed(those);
    return { why: 'card', name, key, from: 0 };
  }
  return null;
}

/** At most one thing is wrong with a reading: the station, else the habit, else the card, else a slip. */
function slipNow(chance, { slips, group, change, visit, setup }) {
  const named = (name, key) =>
    slips.find(
      (slip) => slip.name === name && (key === undefined || slip.key === key || slip.key === undefined),
    );
  if (
    change !== null &&
    visit >= change.from &&
    (change.why === 'station' || chance.yes(RATES.cardFollowed))
  ) {
    const slip = named(change.name, change.key);
    if (slip !== undefined) return { slip, why: change.why };
  }
  if (group.habit !== null && chance.yes(RATES.habitKept)) {
    const slip = named(group.habit);
    if (slip !== undefined) return { slip, why: 'habit' };
  }
  if (chance.yes(RATES.slip)) return { slip: chance.weighed(slips), why: 'slip', setup };
  return { slip: null, why: null };
}

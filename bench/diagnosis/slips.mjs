// What goes wrong at a table, in the generator's own words and at its own rates. A slip changes how a
// reading is asked (`state`, `way`, `zeroed`, `rush`) or what is written of it (`pen`).
import { decimalsOf, UNITS } from './instrument.mjs';

/** All slips that this setup can see, with how often each comes among slips, and what keeps it going. */
export function slipsFor(table, setup, kit) {
  const own = table.slips(setup.state).map((slip) => ({ ...slip, kind: 'doing' }));
  if (table.isCounted) return [...own, ...penSlips(table, setup), STRAY];
  return [
    ...own,
    ...zeroSlips(table, setup),
    ...waySlips(setup, table),
    ...loadSlips(table, setup, kit),
    ...unitSlips(table.scale),
    ...penSlips(table, setup),
    STRAY,
  ];
}

/** Something that no list has: a number from anywhere on the marks. */
const STRAY = { name: 'stray', kind: 'stray', weight: 1.5, persists: 'reading', pen: { stray: true } };

function zeroSlips(table, setup) {
  if (table.hang(table.nominal, setup.state) === 0) return [];
  return table.zeroed === 'in place'
    ? [{ name: 'old zero', kind: 'doing', weight: 6, persists: 'group or station', zeroed: 'hook down' }]
    : [{ name: 'zeroed again', kind: 'doing', weight: 3, persists: 'group', zeroed: 'in place' }];
}

function waySlips({ way, state }, table) {
  const hasStart = state.rides === 'block' || table.machine === 'drag on the level';
  switch (way) {
    case 'raise':
      return [
        ...(table.force(table.nominal, state, -1, 'moving') <= 0
          ? []
          : [{ name: 'lowered', kind: 'doing', weight: 3, persists: 'group', way: 'lower' }]),
        ...(hasStart
          ? [{ name: 'start read', kind: 'doing', weight: 3, persists: 'group', way: 'start' }]
          : []),
        { name: 'speeding up', kind: 'doing', weight: 3, persists: 'group', rush: true },
      ];
    case 'lower':
      return [{ name: 'raised', kind: 'doing', weight: 4, persists: 'reading', way: 'raise' }];
    case 'start':
      return [{ name: 'moving read', kind: 'doing', weight: 4, persists: 'reading', way: 'raise' }];
    default:
      return [];
  }
}

/** Another weight of the kit, or the partner's setup. */
function loadSlips(table, setup, kit) {
  const { load } = setup.state;
  const others = load === undefined ? [] : kit.marks.filter((mark) => mark !== setup.state.load);
  const near = others
    .sort(
      (a, b) =>
        Math.abs(kit.mass[a] - kit.mass[setup.state.load]) -
        Math.abs(kit.mass[b] - kit.mass[setup.state.load]),
    )
    .slice(0, 2);
  const wrong = near.map((load) => ({
    name: 'wrong mass',
    kind: 'doing',
    weight: 2,
    persists: 'station',
    state: { ...setup.state, load },
    key: load,
  }));
  const partner = table.setups.find(({ mark }) => mark === setup.partner);
  return [
    ...wrong,
    ...(partner === undefined
      ? []
      : [
          {
            name: 'partner',
            kind: 'doing',
            weight: 3,
            persists: 'station',
            state: partner.state,
            way: partner.way,
          },
        ]),
  ];
}

/** The other column of a dual scale is read often, a unit that isn't on it seldom. */
function unitSlips({ unit, isDual }) {
  const slip = (name, to, weight) => ({
    name,
    kind: 'reading',
    weight,
    persists: 'group',
    pen: { times: UNITS[unit] / UNITS[to], to },
  });
  return unit === 'N'
    ? [
        slip('in grams', 'gf', isDual ? 5 : 1.5),
        slip('in ounces', 'ozf', 0.4),
        slip('in kilograms', 'kgf', 0.5),
        slip('in pounds', 'lbf', 0.2),
      ]
    : [
        slip('in newtons', 'N', isDual ? 5 : 1.5),
        slip('in ounces', 'ozf', 0.4),
        slip('in kilograms', 'kgf', 0.5),
      ];
}

function penSlips(table, setup) {
  const slip = (name, weight, pen, persists = 'reading') => ({
    name,
    kind: 'reading',
    weight,
    persists,
    pen,
  });
  const swap = slip('digits swapped', 1.5, { swap: true });
  if (table.isCounted)
    return setup.state.watch === 'turns'
      ? [swap]
      : [slip('in centimetres', 3, { times: 0.1 }, 'group'), swap];
  const { step } = table.scale;
  if (step >= 1) return [swap, ...halfMarks(step, slip)];
  return [
    swap,
    slip('ten times', 1, { times: 10 }),
    slip('a tenth', 0.5, { times: 0.1 }),
    ...(decimalsOf(step) > 1 ? [slip('a hundred times', 1, { times: 100 })] : []),
    ...halfMarks(step, slip),
  ];
}

/** Marks of 0.2 taken for marks of 0.1: what lies above the number below is halved. */
const halfMarks = (step, slip) =>
  /^0*\.?0*2/.test(String(step)) ? [slip('marks of half', 2, { halfMarks: true }, 'group')] : [];

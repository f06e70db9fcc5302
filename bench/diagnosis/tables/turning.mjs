import { travelAfter, turnsFor, windlassEffort } from '../laws.mjs';

const mm = (metres) => `${(metres * 1000).toFixed(1)} mm`;

/** A wheel and axle that turns in a plain bearing, under two loads. */
export function windlassTable(chance, kit) {
  const axle = chance.pick([8, 10, 12, 15]) / 1000;
  const wheel = chance.whole(40, 70) / 1000;
  const drum = chance.whole(90, 200) / 1000;
  const bearing = chance.pick([2.5, 3, 4]) / 1000;
  const thickness = chance.pick([1.2, 1.5, 1.8, 2]) / 1000;
  const [load, other] = chance.shuffled(kit.marks);
  const third = chance.pick(['lower', 'held', null]);
  const state = (mark) => ({ load: mark, layers: 0, isSwapped: false });
  const said = { part: 'line', thickness: `${mm(thickness)} ± 0.2 mm` };
  return {
    machine: 'windlass',
    parts: {
      capstan: {
        part: 'windlass',
        'axle diameter': mm(2 * axle),
        'wheel diameter': `${mm(2 * wheel)} ± 1 mm`,
        mass: `${drum * 1000} g ± 1 g`,
        'bearing diameter': mm(2 * bearing),
        'bearing friction': 'dry pin',
      },
      cord: said,
      twine: said,
    },
    roles: { windlass: 'capstan', 'axle line': 'cord', 'wheel line': 'twine' },
    hang: () => Math.PI,
    setups: [
      { state: state(load), way: 'raise' },
      { state: state(other), way: 'raise' },
      ...(third === null ? [] : [{ state: state(load), way: third }]),
    ],
    fields: () => ({ 'turned by': 'wheel', pull: 'down', 'scale hangs': 'upside down' }),
    nominal: { axle, wheel, drum, bearing, axleLine: thickness, wheelLine: thickness, mu: 0.25 },
    truth: {
      axle: axle + 0.00003 * chance.normal(),
      wheel: wheel + 0.0002 * chance.normal(),
      drum: drum + 0.0004 * chance.normal(),
      bearing,
      axleLine: thickness + 0.00008 * chance.normal(),
      wheelLine: thickness + 0.00008 * chance.normal(),
      mu: chance.about(0.17, 0.33),
    },
    force: (at, { load: mark, layers, isSwapped }, up) =>
      windlassEffort(
        {
          load: at.weight(mark),
          drum: at.drum * kit.gravity,
          axle: isSwapped ? at.wheel : at.axle,
          wheel: isSwapped ? at.axle : at.wheel,
          axleLine: at.axleLine,
          wheelLine: at.wheelLine,
          layers,
          mu: at.mu,
          bearing: at.bearing,
          pullIs: 'down',
        },
        up,
      ),
    slips: (at) => [
      { name: 'line winds on itself', weight: 2, persists: 'reading', state: { ...at, layers: 1 } },
      { name: 'lines swapped', weight: 1, persists: 'station', state: { ...at, isSwapped: true } },
    ],
    spoil: (truth) => ({ ...truth, mu: truth.mu * chance.between(1.8, 2.4) }),
  };
}

const THREADS = { M6: 1, M8: 1.25, M10: 1.5, M12: 1.75 };

/** A screw: turns for a travel, and travel after some turns. */
export function screwTable(chance) {
  const thread = chance.pick(Object.keys(THREADS));
  const lead = THREADS[thread] / 1000;
  const travel = chance.whole(6, 14) / 1000;
  const turns = chance.whole(5, 12);
  return {
    machine: 'screw',
    isCounted: true,
    parts: { spindle: { part: 'screw', thread, 'lever arm': '8.0 cm' } },
    roles: { screw: 'spindle' },
    setups: [
      { state: { watch: 'turns', travel, extra: 0, perTurn: 1, gap: 0 }, step: 0.25, way: 'count' },
      { state: { watch: 'travel', turns, extra: 0, perTurn: 1, gap: 0 }, step: 0.001, way: 'count' },
    ],
    fields: (at) =>
      at.watch === 'turns'
        ? { watch: 'turns', travel: `${(at.travel * 1000).toFixed(1)} mm` }
        : { watch: 'travel', turns: at.turns },
    nominal: { lead, gap: 0 },
    truth: { lead: lead * (1 + 0.001 * chance.normal()), gap: chance.between(0, 0.06) * lead },
    figure: (screw, at) => {
      const full = { lead: screw.lead, gap: screw.gap + at.gap };
      return at.watch === 'turns'
        ? turnsFor(full, at.travel) * at.perTurn + at.extra
        : travelAfter(full, (at.turns + at.extra) / at.perTurn);
    },
    slips: (at) => {
      const by = at.watch === 'turns' ? 1 : -1;
      return [
        { name: 'turn more', weight: 3, persists: 'reading', state: { ...at, extra: by } },
        { name: 'turn less', weight: 3, persists: 'reading', state: { ...at, extra: -by } },
        { name: 'half turns', weight: 2, persists: 'group', state: { ...at, perTurn: 2 } },
        { name: 'not flush', weight: 2, persists: 'reading', state: { ...at, gap: lead / 2 } },
      ];
    },
    // Another thread than the one that is named: finer or coarser by a step.
    spoil: (truth) => ({ ...truth, lead: truth.lead * chance.pick([0.8, 1.2]) }),
  };
}

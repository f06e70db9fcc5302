import { leverEffort } from '../laws.mjs';

const cm = (metres) => `${(metres * 100).toFixed(1)} cm`;

/** A bar with holes: the pull on the other side and down, or beside the load and up. */
export function leverTable(chance, kit) {
  const holes = chance.pick([9, 11, 13, 15]);
  const spacing = 0.05;
  const length = (holes + 1) * spacing;
  const mass = chance.whole(70, 180) / 1000;
  const centre = length / 2 + 0.003 * chance.normal();
  const pullsDown = chance.yes(0.65);
  const fulcrum = pullsDown ? chance.whole(Math.ceil(holes / 2) - 2, Math.ceil(holes / 2)) : 1;
  const loadHole = pullsDown ? fulcrum - chance.whole(1, fulcrum - 1) : chance.whole(3, holes - 1);
  const pulls = chance
    .shuffled(Array.from({ length: holes }, (_, n) => n + 1))
    .filter((hole) => (pullsDown ? hole > fulcrum : hole > 2 && hole !== loadHole))
    .slice(0, 2);
  if (pulls.length < 2 || Math.abs(loadHole - fulcrum) < 1) return null;
  const load = chance.pick(kit.marks);
  const pin = chance.pick([4, 5, 6]) / 1000;
  const hang = pullsDown ? 'upside down' : 'hook down';
  const state = (pull) => ({ load, fulcrum, loadHole, pull });
  const thirdWay = chance.pick(['lower', 'held', null]);
  return {
    machine: 'lever',
    parts: {
      bar: {
        part: 'bar',
        length: cm(length),
        mass: `${mass * 1000} g ± 1 g`.replace(/\.0+ /, ' '),
        'mass centre': `${cm(centre)} ± 0.2 cm`,
        'first hole': cm(spacing),
        'hole spacing': cm(spacing),
        holes,
        'pin diameter': `${(pin * 1000).toFixed(1)} mm`,
      },
    },
    roles: { bar: 'bar' },
    hang: () => (pullsDown ? Math.PI : 0),
    setups: [
      ...pulls.map((pull) => ({ state: state(pull), way: 'raise' })),
      ...(thirdWay === null ? [] : [{ state: state(pulls[0]), way: thirdWay }]),
    ],
    fields: ({ fulcrum: f, loadHole: l, pull }) => ({
      'fulcrum at': `hole ${f}`,
      'load at': `hole ${l}`,
      'pull at': `hole ${pull}`,
      'scale hangs': hang,
    }),
    nominal: { mass, centre: Number((centre * 100).toFixed(1)) / 100, mu: 0.25, pin: pin / 2 },
    truth: {
      mass: mass + 0.0005 * chance.normal(),
      centre: centre + 0.0008 * chance.normal(),
      mu: chance.about(0.17, 0.33),
      pin: pin / 2,
    },
    force: (bar, at, up) => {
      const place = (hole) => hole * spacing;
      const side = Math.sign(at.loadHole - at.fulcrum);
      return leverEffort(
        {
          load: bar.weight(at.load),
          bar: bar.mass * kit.gravity,
          loadArm: Math.abs(place(at.loadHole) - place(at.fulcrum)),
          barArm: (bar.centre - place(at.fulcrum)) * side,
          effortArm: Math.abs(place(at.pull) - place(at.fulcrum)),
          mu: bar.mu,
          pinRadius: bar.pin,
          pullsDown,
        },
        up,
      );
    },
    slips: (at) => {
      const fits = (next) =>
        next.loadHole >= 1 &&
        next.pull >= 1 &&
        next.loadHole <= holes &&
        next.pull <= holes &&
        next.loadHole !== next.fulcrum &&
        next.pull !== next.fulcrum &&
        next.fulcrum >= 1 &&
        Math.sign(next.loadHole - next.fulcrum) === Math.sign(loadHole - fulcrum) &&
        Math.sign(next.pull - next.fulcrum) === Math.sign(at.pull - fulcrum) &&
        next.pull !== next.loadHole;
      const slip = (name, weight, next, persists = 'reading') =>
        fits({ ...at, ...next }) ? [{ name, weight, persists, state: { ...at, ...next } }] : [];
      return [
        ...slip('load hole right', 2, { loadHole: at.loadHole + 1 }),
        ...slip('load hole left', 2, { loadHole: at.loadHole - 1 }),
        ...slip('pull hole right', 2, { pull: at.pull + 1 }),
        ...slip('pull hole left', 2, { pull: at.pull - 1 }),
        ...slip('load from the other end', 1, { loadHole: holes + 1 - at.loadHole }, 'group'),
        ...slip('pull from the other end', 1, { pull: holes + 1 - at.pull }, 'group'),
      ];
    },
    spoil: (truth) =>
      chance.yes(0.5)
        ? { ...truth, centre: truth.centre + chance.pick([-1, 1]) * chance.between(0.01, 0.03) }
        : { ...truth, mu: truth.mu * 2 },
    spoilt: 'bar centre off or pin rough',
  };
}

import { leverEffort, slopeEffort } from '../laws.mjs';
import { drawCart } from './slope.mjs';

const cm = (metres) => `${(metres * 100).toFixed(1)} cm`;

/** A cart on a ramp whose string pulls at a bar: the pull of the one is the load of the other. */
export function compoundTable(chance, kit) {
  const holes = 15;
  const spacing = 0.05;
  const mass = chance.whole(120, 180) / 1000;
  const centre = 0.4 + 0.003 * chance.normal();
  const pin = 5 / 1000;
  const cart = drawCart(chance);
  const rise = chance.whole(16, 30) / 100;
  const slopeLength = 0.6;
  const fulcrum = 8;
  const loadHole = chance.whole(5, 7);
  const [first, second] = chance.shuffled([10, 11, 12, 13, 14, 15]);
  const load = chance.pick(kit.marks);
  const state = (pull) => ({ load, loadHole, pull });
  return {
    machine: 'compound',
    parts: {
      ramp: { part: 'board', length: cm(slopeLength) },
      dinghy: cart.said,
      loom: {
        part: 'bar',
        length: '80.0 cm',
        mass: `${mass * 1000} g ± 1 g`,
        'mass centre': `${cm(centre)} ± 0.3 cm`,
        'first hole': cm(spacing),
        'hole spacing': cm(spacing),
        holes,
        'pin diameter': '5.0 mm',
      },
    },
    roles: { board: 'ramp', cart: 'dinghy', bar: 'loom' },
    hang: () => Math.PI,
    setups: [
      { state: state(first), way: 'raise' },
      { state: state(second), way: 'raise' },
    ],
    fields: ({ pull }) => ({
      stages: [
        {
          machine: 'inclined plane',
          board: 'board',
          'rides on': 'cart',
          rise: cm(rise),
          'slope length': cm(slopeLength),
        },
        {
          machine: 'lever',
          bar: 'bar',
          'fulcrum at': `hole ${fulcrum}`,
          'load at': `hole ${loadHole}`,
          'pull at': `hole ${pull}`,
        },
      ],
      'scale hangs': 'upside down',
    }),
    nominal: { ...cart.nominal, mass, centre: Number((centre * 100).toFixed(1)) / 100, mu: 0.25 },
    truth: {
      ...cart.truth,
      mass: mass + 0.0005 * chance.normal(),
      centre: centre + 0.0012 * chance.normal(),
      mu: chance.about(0.17, 0.33),
    },
    force: (made, at, up) =>
      leverEffort(
        {
          load: slopeEffort(
            {
              weight: made.weight(at.load) + made.cartMass * kit.gravity,
              angle: Math.asin(rise / slopeLength),
              mu: made.rolling,
            },
            up,
          ),
          bar: made.mass * kit.gravity,
          loadArm: (fulcrum - at.loadHole) * spacing,
          barArm: fulcrum * spacing - made.centre,
          effortArm: (at.pull - fulcrum) * spacing,
          mu: made.mu,
          pinRadius: pin / 2,
          pullsDown: true,
        },
        up,
      ),
    slips: (at) =>
      [
        {
          name: 'load hole right',
          weight: 2,
          persists: 'reading',
          state: { ...at, loadHole: at.loadHole + 1 },
        },
        {
          name: 'load hole left',
          weight: 2,
          persists: 'reading',
          state: { ...at, loadHole: at.loadHole - 1 },
        },
        { name: 'pull hole right', weight: 2, persists: 'reading', state: { ...at, pull: at.pull + 1 } },
        { name: 'pull hole left', weight: 2, persists: 'reading', state: { ...at, pull: at.pull - 1 } },
      ].filter(({ state: next }) => next.loadHole < fulcrum && next.pull > fulcrum && next.pull <= holes),
    spoil: (truth) => ({
      ...truth,
      centre: truth.centre + chance.pick([-1, 1]) * chance.between(0.01, 0.03),
    }),
  };
}

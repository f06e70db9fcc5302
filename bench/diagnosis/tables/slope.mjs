import { rollingShare, slopeEffort } from '../laws.mjs';

const WOOD = { said: 'wood on wood', low: 0.31, high: 0.48, ratio: [1.35, 1.5] };
const LAMINATE = { said: 'wood on laminate', low: 0.17, high: 0.33, ratio: [1.15, 1.33] };

const statedFace = (chance, { said, ratio }) => {
  const mu = Number(chance.between(0.2, 0.4).toFixed(2));
  const half = 0.03;
  return { said: `${mu} ± ${half}, ${said}`, nominal: mu, mu: mu + (half / 2.2) * chance.normal(), ratio };
};

const namedFace = (chance, { said, low, high, ratio }) => ({
  said,
  nominal: (low + high) / 2,
  mu: chance.about(low, high),
  ratio,
});

/** A block with its face: a friction that was measured, or only named. */
function drawBlock(chance) {
  const kind = chance.pick([WOOD, LAMINATE]);
  const face = chance.yes(0.5) ? statedFace(chance, kind) : namedFace(chance, kind);
  const mass = chance.whole(60, 110) / 1000;
  return {
    mass,
    said: { part: 'block', mass: `${mass * 1000} g ± 0.5 g`, faces: face.said },
    nominal: { blockMass: mass, mu: face.nominal, muStart: face.nominal * 1.35 },
    truth: {
      blockMass: mass + 0.0003 * chance.normal(),
      mu: face.mu,
      muStart: face.mu * chance.about(face.ratio[0], face.ratio[1]),
    },
  };
}

/** A cart on wheels, its axle dry. */
export function drawCart(chance) {
  const mass = chance.whole(45, 80) / 1000;
  const wheelDiameter = chance.whole(24, 34) / 1000;
  const axleDiameter = chance.pick([2, 2.5, 3]) / 1000;
  const share = (axleMu, arm) => rollingShare({ axleMu, axleDiameter, wheelDiameter, arm });
  return {
    said: {
      part: 'cart',
      mass: `${mass * 1000} g ± 0.5 g`,
      'wheel diameter': `${(wheelDiameter * 1000).toFixed(1)} mm`,
      'axle diameter': `${(axleDiameter * 1000).toFixed(1)} mm`,
      'axle friction': 'dry pin',
      'rolling arm': '0.3 mm..0.6 mm',
    },
    nominal: { cartMass: mass, rolling: share(0.25, 0.00045) },
    truth: {
      cartMass: mass + 0.0003 * chance.normal(),
      rolling: share(chance.about(0.17, 0.33), chance.about(0.0003, 0.0006)),
    },
  };
}

/** A board on a prop with pins; a cart or a block goes up it. */
export function inclineTable(chance, kit) {
  const propAt = 0.8;
  const heights = chance.pick([
    [0.16, 0.24, 0.32, 0.4],
    [0.12, 0.2, 0.28, 0.36],
    [0.2, 0.3, 0.4],
  ]);
  const [first, second] = chance.shuffled(heights.map((_, n) => n));
  const load = chance.pick(kit.marks);
  const cart = drawCart(chance);
  const block = drawBlock(chance);
  const third = chance.pick([
    { rides: 'block', way: 'raise' },
    { rides: 'block', way: 'start' },
    { rides: 'cart', way: 'lower' },
    { rides: 'cart', way: 'held' },
  ]);
  const sine = (apparatus, { pin }) => (heights[pin] + apparatus.higher) / propAt;
  const state = (pin, rides) => ({ load, pin, rides, lean: 0 });
  return {
    machine: 'inclined plane',
    parts: {
      board: {
        part: 'board',
        length: '90.0 cm',
        'prop at': '80.0 cm',
        'pin heights': heights.map((each) => `${(each * 100).toFixed(1)} cm`).join(', '),
      },
      cart: cart.said,
      block: block.said,
    },
    roles: { board: 'board', cart: 'cart', block: 'block' },
    hang: (apparatus, at) => Math.PI / 2 - Math.asin(sine(apparatus, at)),
    setups: [
      { state: state(first, 'cart'), way: 'raise' },
      { state: state(second, 'cart'), way: 'raise' },
      { state: state(first, third.rides), way: third.way },
    ],
    fields: ({ pin, rides }) => ({
      'rides on': rides,
      'propped at': `hole ${pin + 1}`,
      'scale hangs': 'along the slope',
    }),
    nominal: { ...cart.nominal, ...block.nominal, higher: 0 },
    truth: { ...cart.truth, ...block.truth, higher: 0.0004 * chance.normal() },
    force: (apparatus, at, up, grip) => {
      const own = (at.rides === 'cart' ? apparatus.cartMass : apparatus.blockMass) * kit.gravity;
      const mu =
        at.rides === 'cart' ? apparatus.rolling : grip === 'starting' ? apparatus.muStart : apparatus.mu;
      const weight = own + (at.isEmpty ? 0 : apparatus.weight(at.load));
      return slopeEffort({ weight, angle: Math.asin(sine(apparatus, at)), mu, lean: at.lean }, up);
    },
    mass: (apparatus, at) =>
      apparatus.weight(at.load) / kit.gravity +
      (at.rides === 'cart' ? apparatus.cartMass : apparatus.blockMass),
    slips: (at) => [
      ...(at.pin + 1 < heights.length
        ? [{ name: 'pin too high', weight: 2, persists: 'station', state: { ...at, pin: at.pin + 1 } }]
        : []),
      ...(at.pin > 0
        ? [{ name: 'pin too low', weight: 2, persists: 'station', state: { ...at, pin: at.pin - 1 } }]
        : []),
      {
        name: 'string not along',
        weight: 2,
        persists: 'reading',
        state: { ...at, lean: (chance.between(7, 16) * Math.PI) / 180 },
      },
      ...(at.rides === 'cart'
        ? [{ name: 'cart left empty', weight: 2, persists: 'station', state: { ...at, isEmpty: true } }]
        : []),
    ],
    spoil: (truth) => {
      const way = chance.pick(['friction', 'prop', 'axle']);
      if (way === 'friction') return { ...truth, mu: truth.mu * 2, muStart: truth.muStart * 2 };
      if (way === 'prop') return { ...truth, higher: chance.pick([-1, 1]) * chance.between(0.012, 0.025) };
      return { ...truth, rolling: truth.rolling * chance.between(2, 3) };
    },
  };
}

/** A block dragged on the level under two loads, and the moment that it starts. */
export function dragTable(chance, kit) {
  const block = drawBlock(chance);
  const [load, other] = chance.shuffled(kit.marks);
  const state = (mark) => ({ load: mark, lean: 0 });
  return {
    machine: 'drag on the level',
    parts: { sledge: block.said },
    roles: { block: 'sledge' },
    hang: () => Math.PI / 2,
    setups: [
      { state: state(load), way: 'raise' },
      { state: state(other), way: 'raise' },
      ...(chance.yes(0.5) ? [{ state: state(load), way: 'start' }] : []),
    ],
    fields: () => ({ 'rides on': 'block', 'scale hangs': 'level' }),
    nominal: block.nominal,
    truth: block.truth,
    force: (apparatus, at, up, grip) =>
      slopeEffort(
        {
          weight: apparatus.blockMass * kit.gravity + (at.isEmpty ? 0 : apparatus.weight(at.load)),
          angle: 0,
          mu: grip === 'starting' ? apparatus.muStart : apparatus.mu,
          lean: at.lean,
        },
        up,
      ),
    mass: (apparatus, at) => apparatus.weight(at.load) / kit.gravity + apparatus.blockMass,
    slips: (at) => [
      {
        name: 'string not level',
        weight: 2,
        persists: 'reading',
        state: { ...at, lean: (chance.between(8, 22) * Math.PI) / 180 },
      },
      { name: 'cart left empty', weight: 1, persists: 'station', state: { ...at, isEmpty: true } },
    ],
    spoil: (truth) => {
      const by = chance.pick([2, 0.5]);
      return { ...truth, mu: truth.mu * by, muStart: truth.muStart * by };
    },
  };
}

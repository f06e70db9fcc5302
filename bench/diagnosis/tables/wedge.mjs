import { splittingPush } from '../laws.mjs';

/** A wedge pulled in between planks that cords hold together, to two marks. */
export function wedgeTable(chance, kit) {
  const length = chance.pick([0.12, 0.13, 0.15]);
  const thickness = chance.whole(28, 56) / 1000;
  const mass = chance.whole(70, 130) / 1000;
  const mu = Number(chance.between(0.22, 0.38).toFixed(2));
  const stiffness = chance.whole(15, 40) * 10;
  const preTension = chance.whole(20, 40) / 10;
  const [near, far] = [chance.whole(20, 45) / 1000, chance.whole(60, 95) / 1000];
  return {
    machine: 'wedge',
    parts: {
      thole: {
        part: 'wedge',
        'kind of wedge': 'splitting',
        length: `${length * 1000} mm ± 1 mm`,
        thickness: `${(thickness * 1000).toFixed(1)} mm ± 0.5 mm`,
        mass: `${mass * 1000} g ± 1 g`,
        'face friction': `${mu} ± 0.03`,
        'base friction': '0.2 ± 0.05',
      },
      cords: {
        part: 'cords',
        stiffness: `${stiffness} N/m ± ${stiffness / 10} N/m`,
        'pre-tension': `${preTension} N ± 0.2 N`,
        'most opening': '8 cm',
      },
    },
    roles: { wedge: 'thole', cords: 'cords' },
    hang: () => Math.PI / 2,
    setups: [
      { state: { advance: near }, way: 'raise' },
      { state: { advance: far }, way: 'raise' },
    ],
    fields: ({ advance }) => ({ 'pushed in': `${advance * 1000} mm ± 1 mm`, 'scale hangs': 'level' }),
    nominal: { length, thickness, mass, mu, stiffness, preTension, baseMu: 0.2 },
    truth: {
      length: length + 0.0004 * chance.normal(),
      thickness: thickness + 0.0002 * chance.normal(),
      mass: mass + 0.0004 * chance.normal(),
      mu: mu + 0.012 * chance.normal(),
      stiffness: stiffness * (1 + 0.04 * chance.normal()),
      preTension: preTension + 0.08 * chance.normal(),
      baseMu: 0.2 + 0.02 * chance.normal(),
    },
    force: (wedge, { advance }, up) =>
      splittingPush({ ...wedge, advance, weight: wedge.mass * kit.gravity }, up),
    mass: (wedge) => wedge.mass,
    slips: (at) => {
      const off = chance.between(0.003, 0.008);
      return [
        {
          name: 'short of the mark',
          weight: 3,
          persists: 'reading',
          state: { ...at, advance: at.advance - off },
        },
        {
          name: 'past the mark',
          weight: 1.5,
          persists: 'reading',
          state: { ...at, advance: at.advance + off },
        },
      ];
    },
    spoil: (truth) =>
      chance.yes(0.5)
        ? { ...truth, mu: truth.mu * chance.between(1.6, 2) }
        : { ...truth, preTension: truth.preTension * chance.pick([0.6, 1.5]) },
  };
}

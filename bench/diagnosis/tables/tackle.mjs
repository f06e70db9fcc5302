import { tackleEffort } from '../laws.mjs';

/** Two blocks, rove with two numbers of parts; the fall comes down from the fixed block, or goes up from the moving one. */
export function tackleTable(chance, kit) {
  const isMeasured = chance.yes(0.6);
  const efficiency = isMeasured ? 0.93 : 0.855;
  const sheaves = isMeasured ? { efficiency: '0.93 ± 0.03', 'constant drag': '0.005 N..0.015 N' } : {};
  const mass = chance.whole(26, 40) / 1000;
  const [few, many] = chance.pick([
    [2, 3],
    [2, 4],
    [3, 4],
  ]);
  const load = chance.pick(kit.marks);
  const isDown = chance.yes(0.7);
  const third = chance.pick(['lower', 'held', null]);
  const state = (parts) => ({ load, parts, offFixed: isDown });
  const shareOf = (e) => (2 * (1 - e)) / (1 + e);
  const block = { part: 'pulley block', sheaves: 2, mass: `${mass * 1000} g ± 0.5 g`, ...sheaves };
  return {
    machine: 'tackle',
    parts: { upper: block, lower: block },
    roles: { upper: 'upper', lower: 'lower' },
    hang: () => (isDown ? Math.PI : 0),
    setups: [
      { state: state(few), way: 'raise' },
      { state: state(many), way: 'raise' },
      ...(third === null ? [] : [{ state: state(many), way: third }]),
    ],
    fields: ({ parts }) => ({
      'fixed block': 'upper',
      'moving block': 'lower',
      'parts of line': parts,
      'fall leaves': isDown ? 'fixed block' : 'moving block',
      pull: isDown ? 'down' : 'up',
      'scale hangs': isDown ? 'upside down' : 'hook down',
    }),
    nominal: { block: mass, share: shareOf(efficiency), drag: 0.01 },
    truth: {
      block: mass + 0.0003 * chance.normal(),
      share: shareOf(isMeasured ? 0.93 + 0.012 * chance.normal() : chance.about(0.82, 0.9)),
      drag: isMeasured ? chance.about(0.005, 0.015) : chance.about(0.002, 0.018),
    },
    force: (blocks, at, up) =>
      tackleEffort(
        {
          load: blocks.weight(at.load) + blocks.block * kit.gravity,
          parts: at.parts,
          offFixed: at.offFixed,
          share: blocks.share,
          drag: blocks.drag,
        },
        up,
      ),
    slips: (at) => [
      ...(at.parts > 2
        ? [{ name: 'one part fewer', weight: 3, persists: 'station', state: { ...at, parts: at.parts - 1 } }]
        : []),
      ...(at.parts < (isDown ? 4 : 5)
        ? [{ name: 'one part more', weight: 2, persists: 'station', state: { ...at, parts: at.parts + 1 } }]
        : []),
    ],
    spoil: (truth) => ({ ...truth, share: truth.share + chance.between(0.1, 0.2) }),
  };
}

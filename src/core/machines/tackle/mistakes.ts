import { hungSpeedingUp } from '../../statics/speeding-up.ts';
import type { Machine, Reckoning, UsualMistake } from '../machine.ts';
import { sheavesNeeded, type Tackle } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const PART_OFF = 0.02;
const OTHER_BLOCK = 0.005;

/** What goes wrong in reeving a tackle: a part of line left out or added, the fall off the other block. */
export const mistakes: readonly UsualMistake<Tackle>[] = [
  {
    code: 'tackle.one-part-fewer',
    baseRate: PART_OFF,
    persists: 'station',
    change: (tackle) => rove({ ...tackle, parts: tackle.parts - 1 }),
  },
  {
    code: 'tackle.one-part-more',
    baseRate: PART_OFF / 2,
    persists: 'station',
    change: (tackle) => rove({ ...tackle, parts: tackle.parts + 1 }),
  },
  {
    code: 'tackle.fall-off-the-other-block',
    baseRate: OTHER_BLOCK,
    persists: 'station',
    change: (tackle) =>
      rove({ ...tackle, fallLeaves: tackle.fallLeaves === 'fixed block' ? 'moving block' : 'fixed block' }),
  },
];

/** The moving block rises with the load; a single fixed pulley has none. */
export const speedingUp: NonNullable<Machine<Tackle>['speedingUp']> = (tackle, at, asked, acceleration) =>
  hungSpeedingUp(
    asked,
    sheavesNeeded(tackle.parts, tackle.fallLeaves).moving > 0 ? at(tackle.inputs.blockMass) : 0,
    acceleration,
  );

/** Parts of line counted wrong: the fall as well, one too few, or the sheaves instead. */
export const reckonings: readonly Reckoning<Tackle>[] = [
  {
    code: 'tackle.fall-counted',
    // Where the fall leaves the moving block it does carry the load.
    ratio: (tackle) => (tackle.fallLeaves === 'fixed block' ? tackle.parts + 1 : null),
  },
  {
    code: 'tackle.fall-not-counted',
    ratio: (tackle) => (tackle.fallLeaves === 'moving block' && tackle.parts > 1 ? tackle.parts - 1 : null),
  },
  {
    code: 'tackle.sheaves-counted',
    ratio: ({ sheaves, parts }) => {
      const all = sheaves.fixed + sheaves.moving;
      return all === parts ? null : all;
    },
  },
  { code: 'tackle.parts-doubled', ratio: (tackle) => 2 * tackle.parts },
];

/** `null` where the blocks on the table can't be rove like that, or nothing would hang in the block. */
function rove(tackle: Tackle): Tackle | null {
  const needed = sheavesNeeded(tackle.parts, tackle.fallLeaves);
  const fits = needed.fixed <= tackle.sheaves.fixed && needed.moving <= tackle.sheaves.moving;
  return fits && needed.moving > 0 ? tackle : null;
}

import type { UsualMistake } from '../machine.ts';
import { sheavesNeeded, type Tackle } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const PART_OFF = 0.02;
const OTHER_BLOCK = 0.005;

/** What goes wrong in reeving a tackle: a part of line left out or added, the fall off the other block. */
export const mistakes: readonly UsualMistake<Tackle>[] = [
  {
    code: 'tackle.one-part-fewer',
    baseRate: PART_OFF,
    change: (tackle) => rove({ ...tackle, parts: tackle.parts - 1 }),
  },
  {
    code: 'tackle.one-part-more',
    baseRate: PART_OFF / 2,
    change: (tackle) => rove({ ...tackle, parts: tackle.parts + 1 }),
  },
  {
    code: 'tackle.fall-off-the-other-block',
    baseRate: OTHER_BLOCK,
    change: (tackle) =>
      rove({ ...tackle, fallLeaves: tackle.fallLeaves === 'fixed block' ? 'moving block' : 'fixed block' }),
  },
];

/** `null` where the blocks on the table can't be rove like that, or nothing would hang in the block. */
function rove(tackle: Tackle): Tackle | null {
  const needed = sheavesNeeded(tackle.parts, tackle.fallLeaves);
  const fits = needed.fixed <= tackle.sheaves.fixed && needed.moving <= tackle.sheaves.moving;
  return fits && needed.moving > 0 ? tackle : null;
}

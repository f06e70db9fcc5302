import type { Equipment } from '../../description/equipment.ts';
import { driveOf, type Wedge } from './station.ts';

/** What the wedge works on and what drives it, a tray for the parts, and what its cautions ask for. */
export function equipment(wedge: Wedge, isFelt = false): readonly Equipment[] {
  const isStruck = wedge.inputs.malletMass !== undefined;
  return [
    wedge.form === 'lifting' ? 'stop' : 'two blocks',
    ...(driveOf(wedge, isFelt) === 'pulled' ? (['string'] as const) : []),
    ...(isStruck ? (['wedge holder'] as const) : []),
    'tray',
    // How far it is in has to be measured.
    ...(wedge.hasMark ? (['ruler'] as const) : []),
    ...(wedge.hasCords || isStruck ? (['glasses'] as const) : []),
  ];
}

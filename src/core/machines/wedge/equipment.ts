import type { Equipment } from '../../description/equipment.ts';
import type { Wedge } from './station.ts';

/** What the wedge works on, a tray for the parts, and what its cautions ask for. */
export const equipment = (wedge: Wedge): readonly Equipment[] => [
  wedge.form === 'lifting' ? 'stop' : 'two blocks',
  'tray',
  ...(wedge.hasCords ? (['glasses'] as const) : []),
  ...(wedge.inputs.malletMass === undefined ? [] : (['wedge holder'] as const)),
];

import type { Equipment } from '../../description/equipment.ts';
import { isCounted, type Screw } from './station.ts';

/** What the screw turns in, a ruler for travel or arm, a tray; where turns are counted, what it moves and a pencil to mark it with. */
export const equipment = (screw: Screw): readonly Equipment[] => [
  'nut',
  ...(isCounted(screw) ? (['face'] as const) : []),
  'ruler',
  ...(isCounted(screw) ? (['pencil'] as const) : []),
  'tray',
];

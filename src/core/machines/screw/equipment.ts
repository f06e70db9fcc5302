import type { Equipment } from '../../description/equipment.ts';
import { isCounted, type Screw } from './station.ts';

/** What the screw turns in, a ruler for travel or arm, a tray; something to mark with where turns are counted. */
export const equipment = (screw: Screw): readonly Equipment[] => [
  'nut',
  'ruler',
  ...(isCounted(screw) ? (['pencil'] as const) : []),
  'tray',
];

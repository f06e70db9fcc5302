import type { Equipment } from '../../description/equipment.ts';
import type { Drag } from './station.ts';

/** The string and a tray for the load; a ruler where the reading is taken so far from the pulley. */
export const equipment = (drag: Drag): readonly Equipment[] => [
  'string',
  'tray',
  ...(drag.string === 'leans' ? [] : (['ruler'] as const)),
];

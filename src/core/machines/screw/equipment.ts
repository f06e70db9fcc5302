import type { Equipment } from '../../description/equipment.ts';
import { isCounted, type Screw } from './station.ts';

/** What the screw turns in; to count, something to mark with, a ruler and its tray; to pull, a ruler for the arm. */
export const equipment = (screw: Screw): readonly Equipment[] =>
  isCounted(screw) ? ['nut', 'pencil', 'ruler', 'tray'] : ['nut', 'ruler'];

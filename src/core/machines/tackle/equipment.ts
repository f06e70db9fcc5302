import type { Equipment } from '../../description/equipment.ts';

/** A frame to hang from, the line that is rove, and a tray below the load. */
export const equipment = (): readonly Equipment[] => ['frame', 'line', 'tray'];

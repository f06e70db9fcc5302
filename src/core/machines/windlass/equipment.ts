import type { Equipment } from '../../description/equipment.ts';
import type { Windlass } from './station.ts';

/** A stand that bears the axle, a line on the axle and one on the wheel, and a tray below the load. */
export const equipment = ({ turnedBy }: Windlass): readonly Equipment[] => [
  'axle stand',
  'line',
  ...(turnedBy === 'wheel' ? (['line'] as const) : []),
  'tray',
];

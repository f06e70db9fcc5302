import type { Equipment } from '../../description/equipment.ts';
import type { Lever } from './station.ts';

/** A stand that holds the pin, a tray below the load; a ruler where no hole says where a hook goes. */
export const equipment = ({ holes }: Lever): readonly Equipment[] => [
  'pin stand',
  'tray',
  ...([holes.fulcrum, holes.load, holes.pull].includes(undefined) ? (['ruler'] as const) : []),
];

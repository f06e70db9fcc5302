import type { Equipment } from '../../description/equipment.ts';
import type { InclinedPlane } from './station.ts';

/** What holds the board up and says how steep it is, the string, and a tray for the load. */
export function equipment(plane: InclinedPlane): readonly Equipment[] {
  const isMeasured = plane.string !== 'leans' || (plane.steep !== 'measured' && plane.pin === null);
  return [
    plane.pin === null ? 'prop' : 'prop with pins',
    'string',
    'tray',
    ...(plane.steep === 'measured' ? (['angle gauge'] as const) : []),
    ...(isMeasured ? (['ruler'] as const) : []),
  ];
}

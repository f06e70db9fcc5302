import type { Fields } from '../description/fields.ts';
import { measuredIn } from '../description/filled.ts';
import type { LocalGravity } from '../kit/local-gravity.ts';
import type { Metres, MetresPerSecondSquared, Radians } from '../quantities/brands.ts';
import { checkFields } from './check-fields.ts';
import { atKey, type Context, mapAt } from './context.ts';
import { entryOf, type MapNode } from './node.ts';

export const gravityField: Fields = {
  gravity: {
    type: 'quantity',
    dimensions: ['acceleration'],
    above: 0,
    meaning: 'file.field.gravity',
    example: '9.813 m/s2',
  },
};

export const placeFields: Fields = {
  latitude: {
    type: 'quantity',
    dimensions: ['angle'],
    least: -Math.PI / 2,
    most: Math.PI / 2,
    required: true,
    meaning: 'file.field.latitude',
    example: '54 deg',
  },
  height: {
    type: 'quantity',
    dimensions: ['length'],
    least: -500,
    most: 9000,
    meaning: 'file.field.height',
    example: '120 m',
  },
};

/** Gravity of a kit's home or of a visit: written outright, or from the place. Both at once is refused. */
export function readGravity(
  root: MapNode,
  written: LocalGravity | null,
  context: Context,
): LocalGravity | null {
  const place = mapAt(root, 'place', [], context);
  if (place === null) return written;
  if (entryOf(root, 'gravity') !== undefined) atKey(context, ['place'], 'gravity-twice');
  const owner = { path: ['place'], idOf: (field: string) => `place/${field}` };
  const { filled } = checkFields(place, placeFields, owner, context);
  const latitude = measuredIn<Radians>(filled, 'latitude');
  if (written !== null || latitude === undefined) return written;
  return { kind: 'place', latitude, height: measuredIn<Metres>(filled, 'height') ?? null };
}

export const writtenGravity = (filled: Parameters<typeof measuredIn>[0]): LocalGravity | null => {
  const gravity = measuredIn<MetresPerSecondSquared>(filled, 'gravity');
  return gravity === undefined ? null : { kind: 'written', gravity };
};

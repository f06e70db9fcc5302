import { describe, expect, it } from 'vitest';
import { metres, metresPerSecondSquared, radians } from '../quantities/brands.ts';
import { normalGravity } from '../sources/gravity.ts';
import { exactly, standardUncertainty } from '../uncertainty/measured.ts';
import { gravityHere } from './gravity-here.ts';

const written = (value: number) =>
  ({ kind: 'written', gravity: exactly(metresPerSecondSquared(value)) }) as const;
const place = (degrees: number, height: number | null) =>
  ({
    kind: 'place',
    latitude: exactly(radians((degrees * Math.PI) / 180)),
    height: height === null ? null : exactly(metres(height)),
  }) as const;

describe('gravity at the tables', () => {
  it('is what the visit says before what the kit says', () => {
    expect(gravityHere(written(9.83), written(9.78)).gravity.value).toBe(9.83);
    expect(gravityHere(null, written(9.78)).from).toBe('written');
  });

  // The formula itself is held to published figures beside the other sources.
  it('follows from latitude and height, and less the higher the place lies', () => {
    const low = gravityHere(place(45, 0), null).gravity;
    expect(low.value).toBe(normalGravity(Math.PI / 4, 0));
    expect(gravityHere(place(45, 1000), null).gravity.value).toBeLessThan(low.value);
    expect(standardUncertainty(low)).toBe(0);
  });

  it('shows a height that was left out as assumed', () => {
    const { gravity } = gravityHere(place(45, null), null);
    expect(gravity.parts.map((part) => part.unknown.origin)).toEqual(['assumed']);
  });

  it('is the standard figure, shown as assumed, where neither file says where the tables stand', () => {
    const { gravity, from } = gravityHere(null, null);
    expect([gravity.value, from]).toEqual([9.80665, 'standard']);
    expect(gravity.parts[0]?.unknown).toMatchObject({ id: 'place/gravity', origin: 'assumed' });
    // The whole world lies within the range: 9.7803 at the equator, 9.8322 at the poles.
    const half = Math.sqrt(3) * standardUncertainty(gravity);
    expect(9.80665 - half).toBeLessThan(9.781);
    expect(9.80665 + half).toBeGreaterThan(9.832);
  });
});

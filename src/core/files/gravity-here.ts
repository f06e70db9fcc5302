import type { LocalGravity } from '../kit/local-gravity.ts';
import type { MetresPerSecondSquared } from '../quantities/brands.ts';
import { metres } from '../quantities/brands.ts';
import { normalGravity, STANDARD_GRAVITY } from '../sources/gravity.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { propagate } from '../uncertainty/propagate.ts';

/** Gravity that acts on every mass, and what it was taken from. */
export interface GravityHere {
  readonly gravity: Measured<MetresPerSecondSquared>;
  readonly from: 'written' | 'place' | 'standard';
}

/** Half of what normal gravity differs by between equator (9.7803) and pole (9.8322), WGS 84. */
const WORLD_HALF_WIDTH = 0.026;
/** A height that was left out: half a kilometre up covers most schools; common practice, no source. */
const HEIGHT_HALF_WIDTH = 500;

/**
 * Gravity at the tables: of the visit before that of the kit, written outright before that of a
 * place, and the standard figure where neither file says anything: then shown as assumed.
 */
export function gravityHere(visit: LocalGravity | null, kit: LocalGravity | null): GravityHere {
  const local = visit ?? kit;
  if (local === null) return { gravity: standard, from: 'standard' };
  if (local.kind === 'written') return { gravity: local.gravity, from: 'written' };
  const height =
    local.height ??
    measured(metres(0), {
      id: 'place/height',
      u: HEIGHT_HALF_WIDTH / Math.sqrt(3),
      shape: 'even',
      origin: 'assumed',
      source: 'common practice, no source',
    });
  const gravity = propagate<MetresPerSecondSquared>(
    (at) => normalGravity(at(local.latitude), at(height)),
    [local.latitude, height],
  );
  return { gravity: gravity ?? standard, from: 'place' };
}

const standard = measured(STANDARD_GRAVITY, {
  id: 'place/gravity',
  u: WORLD_HALF_WIDTH / Math.sqrt(3),
  shape: 'even',
  origin: 'assumed',
  source: 'normal gravity between equator and pole, WGS 84',
});

import type { WorkingLine } from '../description/working.ts';
import type { LocalGravity } from '../kit/local-gravity.ts';
import type { MetresPerSecondSquared } from '../quantities/brands.ts';
import { metres } from '../quantities/brands.ts';
import { FREE_AIR, normalGravity, STANDARD_GRAVITY, WGS84 } from '../sources/gravity.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { propagate } from '../uncertainty/propagate.ts';

/** Gravity that acts on every mass, and what it was taken from. */
export interface GravityHere {
  readonly gravity: Measured<MetresPerSecondSquared>;
  readonly from: 'written' | 'place' | 'standard';
  /** How it follows from the place, where it does. */
  readonly working: readonly WorkingLine[];
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
  if (local === null) return { gravity: standard, from: 'standard', working: [] };
  if (local.kind === 'written') return { gravity: local.gravity, from: 'written', working: [] };
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
  return gravity === null
    ? { gravity: standard, from: 'standard', working: [] }
    : { gravity, from: 'place', working: [gravityLine(gravity.value, local.latitude.value, height.value)] };
}

const gravityLine = (g: number, latitude: number, height: number): WorkingLine => ({
  what: 'setup.gravity',
  symbol: 'g',
  formula: 'ge*(1 + q*sin(lat)^2)/sqrt(1 - e2*sin(lat)^2) + fa*height',
  values: {
    ge: WGS84.ge,
    q: WGS84.k,
    e2: WGS84.e2,
    lat: latitude,
    fa: FREE_AIR,
    height,
  },
  value: g,
  unit: 'm/s²',
  source: 'normal gravity, Somigliana, WGS 84, with the free-air change',
});

const standard = measured(STANDARD_GRAVITY, {
  id: 'place/gravity',
  u: WORLD_HALF_WIDTH / Math.sqrt(3),
  shape: 'even',
  origin: 'assumed',
  source: 'normal gravity between equator and pole, WGS 84',
});

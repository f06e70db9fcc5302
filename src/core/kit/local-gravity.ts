import type { Metres, MetresPerSecondSquared, Radians } from '../quantities/brands.ts';
import type { Measured } from '../uncertainty/measured.ts';

/** What a file says about gravity: the place, or the figure outright. */
export type LocalGravity =
  | { readonly kind: 'written'; readonly gravity: Measured<MetresPerSecondSquared> }
  | {
      readonly kind: 'place';
      readonly latitude: Measured<Radians>;
      /** Above sea level; `null` where it was left out. */
      readonly height: Measured<Metres> | null;
    };

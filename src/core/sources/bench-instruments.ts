import { type Kilograms, kilograms, type Metres, metres } from '../quantities/brands.ts';
import { NO_SOURCE, type Row } from './source.ts';

/** An instrument that lies on every bench: off by at most so much either way, evenly. */
type Within<Q extends number> = Row & { readonly within: Q };

export const kitchenBalance: Within<Kilograms> = {
  name: 'kitchen balance that shows grams',
  within: kilograms(0.001),
  source: NO_SOURCE,
  provenance: 'common practice',
};

export const schoolRuler: Within<Metres> = {
  name: 'ruler with millimetres',
  within: metres(0.0005),
  source: NO_SOURCE,
  provenance: 'common practice',
};

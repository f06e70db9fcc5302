import { type Kilograms, kilograms, type Newtons, newtons, type Ratio, ratio } from '../quantities/brands.ts';
import { NO_SOURCE, type Range, type Row } from './source.ts';

/** What is taken of a spring scale, and of who reads it, until somebody has measured it. */
type Assumed<Q extends number> = Row & { readonly between: Range<Q> };

/** Marks are off by up to this share of full scale, either way, evenly. Makers often claim 1 to 2 percent. */
export const scaleAccuracy: Row & { readonly share: Ratio } = {
  name: 'accuracy of a classroom spring scale, share of full scale',
  share: ratio(0.02),
  source: 'usual claims of makers, 1 to 2 percent of full scale, from memory',
  provenance: 'memory',
};

/** The pointer sticks in its tube by this much, against the motion; a tapped tube doesn't. */
export const tubeFriction: Assumed<Newtons> = {
  name: 'friction in the tube of a spring scale',
  between: [newtons(0.02), newtons(0.05)],
  source: NO_SOURCE,
  provenance: 'common practice',
};

/** Weigh it instead: the balance knows better. */
export const scaleMass: Assumed<Kilograms> = {
  name: 'mass of a tubular spring scale',
  between: [kilograms(0.03), kilograms(0.1)],
  source: NO_SOURCE,
  provenance: 'common practice',
};

/**
 * Hook, rod and pointer with half of the spring, as a share of the whole scale: 10 to 25 g of a scale
 * of 70 g. The turn-over test measures it in a minute.
 */
export const scaleMovingShare: Assumed<Ratio> = {
  name: 'moving part of a spring scale, share of its mass',
  between: [ratio(0.15), ratio(0.35)],
  source: NO_SOURCE,
  provenance: 'common practice',
};

/** How much readings of one careful hand scatter: a standard deviation, as a share of the reading. */
export const handScatter: Row & { readonly share: Ratio } = {
  name: 'scatter of the hand, standard deviation as a share of the reading',
  share: ratio(0.03),
  source: NO_SOURCE,
  provenance: 'common practice',
};

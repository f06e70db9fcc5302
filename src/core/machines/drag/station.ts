import type { Ride } from '../../statics/carriage.ts';
import type { StringPull } from '../../statics/guided-pull.ts';

/** A load on a level floor or table that rides on its base, on rollers or on wheels, and its string. */
export type Drag = Ride & StringPull & { readonly machine: 'drag on the level' };

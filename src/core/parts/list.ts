import type { PartKind } from '../description/part.ts';
import { block, cart, rollers } from './carriage.ts';
import { line } from './line.ts';
import { guidePulley } from './sheave.ts';
import { weight } from './weight.ts';

/** Kinds of part that more than one machine uses. */
export const parts: readonly PartKind[] = [weight, block, cart, rollers, guidePulley, line];

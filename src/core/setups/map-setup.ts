import { isNotDefined } from '../description/not-defined.ts';
import type { Station } from '../machines/machine.ts';
import type { Load } from '../parts/weight.ts';
import type { Measured } from '../uncertainty/measured.ts';
import { predictScale } from './predict-scale.ts';
import { predictTally } from './predict-tally.ts';
import type { Around, Setup } from './setup.ts';

/** Another value in place of each measured one: moved, better known. */
export type Change = <Q extends number>(value: Measured<Q>) => Measured<Q>;

/**
 * The same setup with every value of it changed in the same way: station, load, gravity, scale, how it
 * hangs. Whatever is discrete about it (holes, kinds, marks) stays.
 */
export function mapSetup(setup: Setup, change: Change): Setup {
  const { station, scale, hang, lift } = setup;
  return {
    ...setup,
    station: mapped(station, change) as Station,
    load: mapped(setup.load, change) as Load,
    gravity: change(setup.gravity),
    scale: scale === null ? null : { ...scale, inputs: mapped(scale.inputs, change) as typeof scale.inputs },
    hang: typeof hang === 'object' ? { angle: change(hang.angle) } : hang,
    lift: lift === null ? null : change(lift),
  };
}

/** What lies and stands around a setup, changed in the same way: it may be taken for what belongs there. */
export const mapAround = (around: Around, change: Change): Around => ({
  ...around,
  weights: around.weights.map(({ mark, load }) => ({ mark, load: mapped(load, change) as Load })),
  partners: around.partners.map((partner) => mapSetup(partner, change)),
});

/** A station is plain data: measured values stand in its inputs, in lists, and in stages. */
function mapped(data: unknown, change: Change): unknown {
  if (isMeasured(data)) return change(data);
  if (Array.isArray(data)) return data.map((each) => mapped(each, change));
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, mapped(value, change)]));
}

const isMeasured = (data: unknown): data is Measured =>
  typeof data === 'object' &&
  data !== null &&
  'value' in data &&
  typeof data.value === 'number' &&
  'parts' in data &&
  Array.isArray(data.parts);

/**
 * The one figure of a setup as one group reads it, with its unknowns; `null` where it is a band, a
 * feeling, or no figure at all.
 */
export function figureAt(setup: Setup): Measured | null {
  const { outcome, read } = setup.watched === 'pull' ? predictScale(setup) : predictTally(setup);
  return isNotDefined(outcome) || outcome.kind === 'band' ? null : read;
}

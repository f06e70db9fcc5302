import type { Step } from '../description/step.ts';
import type { Predicted } from '../setups/difference.ts';
import type { Hang, Setup } from '../setups/setup.ts';
import { asPacked } from './rekey.ts';
import { figureFact, followedSpan, plausibleSpan } from './rekey-table.ts';

/**
 * The one trial reading of a table on arrival: a steady pull up, or a count or length where nothing is
 * pulled. Taken is the one with the fewest surprises that keeps off the ends of its scale, and among
 * such the one that is largest beside its own doubt (graduation, hand and apparatus together), so that
 * a scale that is off shows soonest. `null` where the table has no reading of that sort.
 */
export function arrivalCheckOf(table: readonly Predicted[]): Predicted | null {
  const ranked = table
    .map(asPacked)
    .filter(canBeTried)
    .map((at) => ({ at, surprises: surprisesOf(at), clear: clearness(at) }))
    .sort((a, b) => a.surprises - b.surprises || b.clear - a.clear);
  return ranked[0]?.at ?? null;
}

/** One figure, read moving up; a setup for groups that wait is not built yet when the boxes arrive. */
const canBeTried = ({ setup, prediction }: Predicted): boolean =>
  prediction.outcome.kind === 'reading' &&
  (setup.watched !== 'pull' || setup.way === 'raise') &&
  !setup.isExtra;

/** Findings about it, a cut at the scale's own weight, and an end of the scale within what it may show. */
function surprisesOf(at: Predicted): number {
  const { prediction, setup } = at;
  const { outcome, diagnostics } = prediction;
  const isCut = outcome.kind === 'reading' && outcome.cutAtOwnWeight === true;
  const span = plausibleSpan(at);
  const { scale } = setup;
  const atAnEnd =
    setup.watched === 'pull' &&
    span !== null &&
    scale !== null &&
    (span.from <= scale.stop || span.to >= scale.range);
  return diagnostics.length + (isCut ? 1 : 0) + (atAnEnd ? 1 : 0);
}

/** The reading over its doubt. */
const clearness = ({ prediction: { outcome } }: Predicted): number =>
  outcome.kind === 'reading' && outcome.u > 0 ? outcome.expected / outcome.u : 0;

/** What is done with every arrival reading of a table whose key follows it. */
export const STEP_TO_ROW: Step = { key: 'arrival.row', facts: {} };

/**
 * What to do when the arrival reading lies outside its good range, in this order. Only where the key
 * follows the reading is there a row to take for the second one.
 */
export function stepsOutside(arrival: Predicted, isKeyMoved: boolean): readonly Step[] {
  const at = asPacked(arrival);
  const span = followedSpan(at);
  const { setup } = at;
  const rows = span === null ? {} : { from: figureFact(at, span.from), to: figureFact(at, span.to) };
  return [
    ...(setup.watched === 'pull' && setup.scale !== null
      ? [{ key: `arrival.outside.zero-${zeroName(setup)}`, facts: { scale: setup.scale.mark } }]
      : []),
    { key: 'arrival.outside.check', facts: {} },
    { key: 'arrival.outside.again', facts: {} },
    ...(isKeyMoved ? [{ key: 'arrival.outside.row', facts: {} }] : []),
    { key: 'arrival.outside.close', facts: rows },
  ];
}

/** A scale that was zeroed as it hangs is zeroed in place; else as the setup says. */
function zeroName(setup: Setup): string {
  const { zeroed, hang } = setup;
  if (zeroed === 'in place' || zeroed === hang) return 'in-place';
  return nameOf(zeroed);
}

const nameOf = (hang: Hang): string => (typeof hang === 'object' ? 'angle' : hang.replaceAll(' ', '-'));

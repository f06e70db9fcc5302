import type { Predicted } from '../setups/difference.ts';
import { ownUnit } from './judgement.ts';
import { readWritten } from './written-reading.ts';

/** A reading taken on arrival: its figure in SI, or `null` where it is no number with a unit. */
export function arrivalReading({ setup }: Predicted, written: string): number | null {
  const own = ownUnit(setup);
  const meaning = readWritten(written, [own.dimension]);
  // A table is re-keyed by what was read, not by what was guessed or may mean two things.
  if (meaning.kind !== 'number' || meaning.hedged === true || meaning.otherwise !== undefined) return null;
  // Turns are counted and need no unit; newtons and grams stand side by side on a scale.
  const unit = meaning.unit ?? (setup.watched === 'turns' ? own : null);
  return unit === null ? null : meaning.number * unit.si;
}

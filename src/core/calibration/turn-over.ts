import { type NotDefined, notDefined } from '../description/not-defined.ts';
import { forceFact } from '../diagnostics/facts.ts';
import type { Graduations } from '../instruments/graduations.ts';
import { type Kilograms, type MetresPerSecondSquared, type Newtons, newtons } from '../quantities/brands.ts';
import { between, type Measured, measured, minus, plus, product } from '../uncertainty/measured.ts';

/** The two numbers of the turn-over test, and what stands around them. */
export interface TurnOver {
  readonly mark: string;
  /** The whole scale on a balance. */
  readonly mass: Measured<Kilograms>;
  /** What it shows upside down by its own hook, with its zero set hook down. */
  readonly shows: Newtons;
  readonly graduations: Graduations;
  readonly gravity: Measured<MetresPerSecondSquared>;
  /** What its marks are off by, and its pointer sticks by: 0 with their doubts where nothing better is known. */
  readonly accuracy: Measured<Newtons>;
  readonly sticksBy: Newtons;
}

/**
 * The turn-over shift of a scale: D = M g - shown, with what is not known about weighing and reading.
 *
 * Zero hook down; weigh the scale; hang it upside down by its own hook; read it. Its whole weight then
 * pulls at its own hook, and it shows less by D. Derived from the balance of the moving part; no
 * published page states it. A D below nothing or above twice the weight can't be, and is told as such.
 */
export function turnOverShiftBy(test: TurnOver): Measured<Newtons> | NotDefined {
  const weight = product<Newtons>(test.mass, test.gravity);
  const read = measured(test.shows, {
    id: `${test.mark}/turn-over reading`,
    u: test.graduations.step / Math.sqrt(12),
    shape: 'even',
    origin: 'stated',
  });
  const sticking = between<Newtons>(
    `${test.mark}/turn-over sticking`,
    newtons(-test.sticksBy),
    newtons(test.sticksBy),
    'stated',
  );
  const shift = minus(weight, plus(read, sticking, test.accuracy));
  const facts = { shift: forceFact(shift.value), weight: forceFact(weight.value) };
  if (shift.value < 0) return notDefined('turn-over.below-nothing', facts);
  if (shift.value > 2 * weight.value) return notDefined('turn-over.more-than-the-scale', facts);
  return shift;
}

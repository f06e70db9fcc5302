import { measuredIn } from '../description/filled.ts';
import type { Part } from '../description/part.ts';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import { forceFact } from '../diagnostics/facts.ts';
import type { Kilograms, Newtons } from '../quantities/brands.ts';
import { STANDARD_GRAVITY } from '../sources/gravity.ts';

/** Figures of a spring scale that can't all be true: each is told with the figure that it crosses. */
export function springScaleFaults(part: Part, place: (field: string) => Place): readonly Diagnostic[] {
  const force = (field: string): Newtons | undefined => measuredIn<Newtons>(part.fields, field)?.value;
  const range = force('range');
  if (range === undefined) return [];
  const found: Diagnostic[] = [];
  const crosses = (field: string, isWrong: (value: Newtons) => boolean): void => {
    const value = force(field);
    if (value === undefined || !isWrong(value)) return;
    const facts = { field, value: forceFact(value), range: forceFact(range), part: part.mark };
    found.push({ code: 'scale.figures-cross', severity: 'error', at: place(field), facts });
  };
  crosses('graduation', (value) => value > range);
  crosses('stop', (value) => value >= range);
  crosses('overload', (value) => value < range);
  return [...found, ...shiftFaults(part, place)];
}

/** The moving part is a part of the scale: turned over, it can't take more than twice its weight. */
function shiftFaults(part: Part, place: (field: string) => Place): readonly Diagnostic[] {
  const shift = measuredIn<Newtons>(part.fields, 'turn-over shift')?.value;
  const mass = measuredIn<Kilograms>(part.fields, 'mass')?.value;
  if (shift === undefined) return [];
  const at = place('turn-over shift');
  if (part.fields['moving part'] !== undefined || part.fields.spring !== undefined)
    return [{ code: 'scale.shift-stated-twice', severity: 'error', at, facts: { part: part.mark } }];
  const most = mass === undefined ? Number.POSITIVE_INFINITY : 2 * mass * STANDARD_GRAVITY;
  if (shift <= most) return [];
  const facts = { shift: forceFact(shift), most: forceFact(most), part: part.mark };
  return [{ code: 'scale.shift-too-large', severity: 'error', at, facts }];
}

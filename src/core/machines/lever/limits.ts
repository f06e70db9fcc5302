import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import type { Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { arms } from './lever.ts';
import type { Lever } from './station.ts';

/** An arm shorter than this is measured worse than one part in ten with a school ruler. */
const SHORT_ARM = 0.01;

/** Where the lever's law is a poor guide: holes above the pin (the bar flips), arms of a centimetre. */
export function limits(
  lever: Lever,
  at: At,
  balance: Balance,
  place: Preparation['place'],
): readonly Diagnostic[] {
  const { a, c } = arms(lever, at);
  const found: Diagnostic[] = [];
  const above = at(lever.inputs.holesAbove);
  if (above * hangingAtTheHooks(lever, at, balance) > 0)
    found.push({
      code: 'lever.unstable',
      severity: 'warning',
      at: place(null),
      facts: { above: lengthFact(above) },
    });
  for (const [field, arm] of [
    ['load at', a],
    ['pull at', c],
  ] as const)
    if (Math.abs(arm) < SHORT_ARM)
      found.push({
        code: 'lever.short-arm',
        severity: 'warning',
        at: place(field),
        facts: { arm: lengthFact(Math.abs(arm)), least: lengthFact(SHORT_ARM) },
      });
  return found;
}

/** Net force down at the hooks of load and scale: it steadies the bar below the pin and tips it above. */
function hangingAtTheHooks(lever: Lever, at: At, balance: Balance): number {
  const { a, c, dy } = arms(lever, at);
  const load = balance.work.find((term) => term.by === 'load')?.rate ?? 0;
  return Math.abs((load * c) / a) - balance.effort * dy;
}

import type { RehearsalOptions } from '../core/rehearse.ts';
import type { Arguments } from './arguments.ts';
import { UsageFault } from './command.ts';

/** Most groups and mistakes that fit a page, and that anybody would want. */
const MOST = { groups: 12, mistakes: 20, seed: 1e9 } as const;

/** Help on the class that never was, an option a line. */
export const REHEARSAL_HELP = [
  '--groups N         how many groups (those of the visit, else 6)',
  '--mistakes N       how many mistakes happen among them (4)',
  '--seed N           another number is another class (1)',
] as const;

/** The class that is asked for; what isn't said is as usual. */
export function rehearsalAsked(found: Arguments, usual: RehearsalOptions): RehearsalOptions {
  const whole = (name: keyof RehearsalOptions, least: number): number => {
    const text = found.text(name);
    if (text === null) return usual[name];
    const number = Number(text);
    if (!/^\d+$/.test(text) || number < least || number > MOST[name])
      throw new UsageFault(`--${name} is a whole number from ${least} to ${MOST[name]}, not "${text}"`);
    return number;
  };
  return { groups: whole('groups', 1), mistakes: whole('mistakes', 0), seed: whole('seed', 0) };
}

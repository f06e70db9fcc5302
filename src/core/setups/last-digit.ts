import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import type { Predicted } from './difference.ts';

/** More than this share of a reading's doubt from one bare value: then it was written too shortly. */
const DECIDES = 0.5;

/**
 * A value written without ± counts as known to half its last digit: `1 in` is anything from a half to
 * one and a half. Where that makes most of the doubt of a reading, whoever wrote it will want to know;
 * each value is told once, with the setups that it decides.
 */
export function lastDigitDecides(kitFile: string, all: readonly Predicted[]): readonly Diagnostic[] {
  const decided = new Map<string, Predicted[]>();
  for (const each of all) {
    const [first] = each.prediction.budget;
    if (first === undefined || first.origin !== 'bare' || first.share < DECIDES) continue;
    decided.set(first.unknown, [...(decided.get(first.unknown) ?? []), each]);
  }
  return [...decided].flatMap(([unknown, setups]) => {
    const [first] = setups;
    if (first === undefined) return [];
    return {
      code: 'last-digit-decides',
      severity: 'warning',
      at: placeOf(unknown, first, kitFile),
      facts: {
        setups: setups.map(({ setup }) => setup.mark),
        percent: Math.round(
          Math.max(...setups.map(({ prediction }) => prediction.budget[0]?.share ?? 0)) * 100,
        ),
      },
    } satisfies Diagnostic;
  });
}

/** An unknown is named for its owner and its field. */
function placeOf(unknown: string, { setup }: Predicted, kitFile: string): Place {
  const [owner = '', field = ''] = unknown.split('/');
  return owner === setup.mark
    ? setup.place(field)
    : { file: kitFile, path: ['parts', owner, field], on: 'value' };
}

import { isNotDefined } from '../description/not-defined.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Persists } from '../machines/machine.ts';
import type { Predicted } from '../setups/difference.ts';
import type { Setup } from '../setups/setup.ts';
import { BASE_RATES } from './base-rates.ts';
import { type Cause, causeKey, causesOf } from './causes.ts';
import { doingMistakes } from './doing-mistakes.ts';
import { ownUnit } from './judgement.ts';
import type { ReadingUnit } from './reading-units.ts';

/** A mistake of the catalogue that would show at a setup, so that it can be practised. */
export interface PlantableMistake {
  readonly code: string;
  readonly facts?: Facts;
  /** The cause with what tells it from others of its code. */
  readonly key: string;
  readonly kind: 'doing' | 'reading';
  readonly rate: number;
  readonly persists: Persists;
  readonly how: HowItGoes;
}

/** What becomes of a reading by it: the setup stands otherwise, or the number is written otherwise. */
export type HowItGoes =
  | { readonly of: 'setup'; readonly changed: Setup }
  | { readonly of: 'unit'; readonly unit: ReadingUnit }
  | { readonly of: 'digits' }
  | { readonly of: 'figure'; readonly value: number };

/** Every mistake that would show at a setup: its figure lies outside the good range by half of its width or more. */
export const plantableMistakes = (at: Predicted): readonly PlantableMistake[] =>
  mistakesAt(at).filter(({ doesShow }) => doesShow);

/** All mistakes that change a reading there at all: what a habit or a changed station does at other setups. */
export function mistakesAt(at: Predicted): readonly (PlantableMistake & { readonly doesShow: boolean })[] {
  const { setup, prediction } = at;
  const { outcome } = prediction;
  if (!('good' in outcome)) return [];
  const doing = new Map(doingMistakes(setup).map((mistake) => [causeKey(mistake), mistake.changed]));
  const own = ownUnit(setup);
  const found = causesOf(setup, own, prediction).flatMap((cause) => {
    const { code, facts, kind, rate, persists } = cause;
    const key = causeKey(cause);
    const how = howItGoes(cause, doing.get(key));
    return kind === 'good' || how === null
      ? []
      : [
          {
            code,
            ...(facts === undefined ? {} : { facts }),
            key,
            kind,
            rate,
            persists,
            how,
            doesShow: shows(cause, at),
          },
        ];
  });
  const digits = {
    code: 'reading.digits-swapped',
    key: causeKey({ code: 'reading.digits-swapped' }),
    kind: 'reading',
    rate: BASE_RATES['digits-swapped'],
    persists: 'reading',
    how: { of: 'digits' },
    doesShow: true,
  } as const;
  return setup.watched === 'pull' ? [...found, digits] : found;
}

function howItGoes({ kind, unit, figure }: Cause, changed: Setup | undefined): HowItGoes | null {
  if (kind === 'doing') return changed === undefined ? null : { of: 'setup', changed };
  if (unit !== null) return { of: 'unit', unit };
  return figure === null ? null : { of: 'figure', value: figure.low };
}

/** Slips of the pen always show; a figure has to lie well outside of what is good. */
function shows({ kind, unit, figure }: Cause, { prediction }: Predicted): boolean {
  const { outcome } = prediction;
  if (kind === 'reading' && unit !== null) return true;
  if (isNotDefined(outcome) || !('good' in outcome) || figure === null) return figure === null;
  const { from, to } = outcome.good;
  return figure.high < from - (to - from) / 2 || figure.low > to + (to - from) / 2;
}

import type { Prepared, PreparedSetup } from '../../core/prepare.ts';
import { setupNamed, setupsOf } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { expectedText, outcomeShort } from './prediction-text.ts';

/** What the key says of a setup now, and what it said before. */
export interface KeyMoved {
  readonly setup: string;
  readonly now: string;
  readonly before: string;
}

/** Setups of which the key prints something else than it did, in its order. */
export function keyMoved(language: Language, before: Prepared, after: Prepared): readonly KeyMoved[] {
  return setupsOf(after).flatMap((at) => {
    const { mark } = at.setup;
    const old = setupNamed(before, mark);
    if (old === null) return [];
    const told = { setup: mark, now: keyFigures(language, at), before: keyFigures(language, old) };
    return told.now === told.before ? [] : [told];
  });
}

function keyFigures(language: Language, { prediction }: PreparedSetup): string {
  const expected = expectedText(language, prediction);
  const good = outcomeShort(language, prediction);
  return expected === null ? good : sentence(language, 'bench.key', { good, expected });
}

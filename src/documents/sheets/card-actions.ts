import type { KitPart } from '../../core/kit/kit.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import { holdLines } from '../sentences/hang-words.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { kindName } from './kit-parts.ts';

/** A setup as a card tells it, with the parts that only some setups of the table use. */
export interface ToldSetup {
  readonly setup: SetupSheet;
  readonly ownParts: readonly KitPart[];
}

/** All that is done at a setup, in order: take, make the scale ready, build, pull, read. */
export function cardActions(language: Language, { setup, ownParts }: ToldSetup): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { scale, steps, prediction } = setup;
  const reads = prediction.watched === 'pull' ? `way.${prediction.way}` : `watched.${prediction.watched}`;
  return [
    ...ownParts.map(({ kind, mark }) => say('sheet.card.take', { kind: kindName(language, kind), mark })),
    ...(scale === null ? [] : holdLines(language, scale)),
    ...steps.map(({ key, facts }) => say(key, facts)),
    say(`${reads}.instruction`),
  ];
}

/** More changes than this are easier to follow as a whole list. */
const MOST_CHANGES = 3;

/** What is done otherwise than at an earlier setup; numbers are those of its list, from 1. */
export interface Changes {
  readonly like: string;
  readonly changes: readonly { readonly number: number; readonly text: string }[];
}

/**
 * The earlier setup that this one differs from least, and in what; `null` where the whole list is shorter
 * to follow. Only setups that are told in full are looked back at, so that nobody turns pages twice.
 */
export function changesFrom(
  told: readonly { readonly mark: string; readonly actions: readonly string[] }[],
  actions: readonly string[],
): Changes | null {
  const found = told
    .filter((each) => each.actions.length === actions.length)
    .map((each) => ({
      like: each.mark,
      changes: actions.flatMap((text, n) => (text === each.actions[n] ? [] : [{ number: n + 1, text }])),
    }))
    .sort((a, b) => a.changes.length - b.changes.length)[0];
  return found === undefined || found.changes.length > MOST_CHANGES ? null : found;
}

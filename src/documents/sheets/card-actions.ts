import type { KitPart } from '../../core/kit/kit.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import { holdLines } from '../sentences/hang-words.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import type { Block } from './block.ts';
import { kindName } from './kit-parts.ts';

/** A setup as a card tells it, with the parts that only some setups of the table use. */
export interface ToldSetup {
  readonly setup: SetupSheet;
  readonly ownParts: readonly KitPart[];
}

/** All that is done at a setup, in order: take, make the scale ready, build, pull, read. */
export function cardActions(language: Language, { setup, ownParts }: ToldSetup): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { scale, steps, reads } = setup;
  return [
    ...ownParts.map(({ kind, mark }) => say('sheet.card.take', { kind: kindName(language, kind), mark })),
    ...(scale === null ? [] : holdLines(language, scale)),
    ...steps.map(({ key, facts }) => say(key, facts)),
    reads.map(({ key, facts }) => say(key, facts)).join(' '),
  ];
}

/** Another setup of the table as it stood on the card before, with what was done at it. */
export interface Done {
  readonly mark: string;
  readonly actions: readonly string[];
}

/** What is undone first after the setup before on the card; nothing where only the reading differs. */
export function undoneFirst(
  language: Language,
  table: PreparedTable,
  { before, now }: { readonly before: Done | undefined; readonly now: Done },
): readonly Block[] {
  const [from, to] = [before, now].map((each) => table.setups.find(({ setup }) => setup.mark === each?.mark));
  const isBuiltAlike = before?.actions.slice(0, -1).join() === now.actions.slice(0, -1).join();
  if (before === undefined || from === undefined || to === undefined || isBuiltAlike) return [];
  const { machine, station } = to.setup;
  const items = (machine.between?.(from.setup.station, station) ?? []).map(({ key, facts }) =>
    sentence(language, key, facts),
  );
  if (items.length === 0) return [];
  return [
    { block: 'text', text: sentence(language, 'sheet.card.after', { before: before.mark }) },
    { block: 'list', items },
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
export function changesFrom(told: readonly Done[], actions: readonly string[]): Changes | null {
  const found = told
    .filter((each) => each.actions.length === actions.length)
    .map((each) => ({
      like: each.mark,
      changes: actions.flatMap((text, n) => (text === each.actions[n] ? [] : [{ number: n + 1, text }])),
    }))
    .sort((a, b) => a.changes.length - b.changes.length)[0];
  return found === undefined || found.changes.length > MOST_CHANGES ? null : found;
}

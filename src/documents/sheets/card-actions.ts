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

/**
 * All that is done at a setup, in order: take, build, make the scale ready, hook it on, pull, read. The
 * scale comes last because a slope has to stand before a zero can be set along it.
 */
export function cardActions(language: Language, { setup, ownParts }: ToldSetup): readonly string[] {
  const say = (key: string, facts = {}) => sentence(language, key, facts);
  const { scale, steps, reads } = setup;
  const built = Math.max(
    0,
    steps.findIndex(({ key }) => /\.step\.(?:hook|pull)/.test(key)),
  );
  const told = steps.map(({ key, facts }) => say(key, facts));
  return [
    ...takingOf(language, ownParts),
    ...told.slice(0, built),
    ...(scale === null ? [] : holdLines(language, scale)),
    ...told.slice(built),
    reads.map(({ key, facts }) => say(key, facts)).join(' '),
  ];
}

const takingOf = (language: Language, ownParts: readonly KitPart[]): readonly string[] =>
  ownParts.map(({ kind, mark }) =>
    sentence(language, 'sheet.card.take', { kind: kindName(language, kind), mark }),
  );

/** A setup of the table as it stands on the card, with what is done at it; the first are parts that are taken. */
export interface Done {
  readonly mark: string;
  readonly actions: readonly string[];
  readonly taken: number;
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
  readonly changes: readonly Change[];
  /** Whether some are no change, but stand there because the setup before did otherwise. */
  readonly reminds: boolean;
}

interface Change {
  readonly number: number;
  readonly text: string;
}

/**
 * The earlier setup that this one differs from least, and in what; `null` where the whole list is shorter
 * to follow. Only setups that are told in full are looked back at, so that nobody turns pages twice. What
 * the setup just before did otherwise stands there too, or its parts would stay: all of it where that is
 * short, and what is taken in any case.
 */
export function changesFrom(told: readonly Done[], now: Done, before: Done | undefined): Changes | null {
  const found = told
    .filter((each) => each.actions.length === now.actions.length)
    .map((each) => ({ like: each.mark, changes: differing(now, each) }))
    .sort((a, b) => a.changes.length - b.changes.length)[0];
  if (found === undefined || found.changes.length > MOST_CHANGES) return null;
  const { like, changes } = found;
  const undone = before === undefined || before.mark === like ? [] : differing(now, before);
  const merged = (others: readonly Change[]): readonly Change[] =>
    now.actions.flatMap((text, n) =>
      [...changes, ...others].some(({ number }) => number === n + 1) ? [{ number: n + 1, text }] : [],
    );
  const all = merged(undone);
  const shown = all.length <= MOST_CHANGES ? all : merged(undone.filter(({ number }) => number <= now.taken));
  return { like, changes: shown, reminds: shown.length > changes.length };
}

/** The actions of one setup that are not those of another at their places. */
const differing = (now: Done, other: Done): readonly Change[] =>
  now.actions.flatMap((text, n) => (text === other.actions[n] ? [] : [{ number: n + 1, text }]));

import type { Fields } from '../description/fields.ts';
import { groupsOf } from '../rotation/groups-of.ts';
import { checkField } from './check-field.ts';
import { asMap, asText, atKey, atValue, type Context, nearestFact } from './context.ts';
import { entryOf, type MapNode } from './node.ts';

/** Languages that cards and keys can be written in. */
export const paperLanguages = ['en', 'es'] as const;
export type PaperLanguage = (typeof paperLanguages)[number];

/** In which languages the paper of a visit is printed. */
export const languageFields: Fields = {
  'cards in': { type: 'choice', of: paperLanguages, meaning: 'visit.field.cards-in', example: 'es' },
  'key in': { type: 'choice', of: paperLanguages, meaning: 'visit.field.key-in', example: 'en' },
};

/** One group's own language, where it is not that of the cards. */
export const groupLanguageField = {
  type: 'choice',
  of: paperLanguages,
  meaning: 'visit.field.group-language',
  example: 'es',
} as const;

/** The groups of a visit, known by a label on their papers and never by a name. */
export interface GroupWords {
  /** As written, else letters for as many as there are; none where the visit says nothing of groups. */
  readonly groupLabels: readonly string[];
  /** Language by label, for groups that read another one than the cards are in. */
  readonly groupLanguages: Readonly<Record<string, PaperLanguage>>;
}

/** Reads labels and languages of the groups and holds them to how many there are. */
export function readGroups(root: MapNode, count: number | null, context: Context): GroupWords {
  const written = readLabels(root, context);
  if (written !== null && count !== null && written.length !== count)
    atKey(context, ['group labels'], 'groups-and-labels', { groups: count, labels: written });
  const groupLabels = written ?? Array.from({ length: count ?? 0 }, (_, n) => lettersOf(n));
  return { groupLabels, groupLanguages: readLanguages(root, groupLabels, context) };
}

/** As a list or as one text with commas between: `red, blue`; each label once. */
function readLabels(root: MapNode, context: Context): readonly string[] | null {
  const path = ['group labels'];
  const node = entryOf(root, 'group labels')?.node;
  if (node === undefined) return null;
  const found =
    node.kind === 'list'
      ? node.items.flatMap((item, n) => {
          const label = asText(item, [...path, n], context);
          return label === null ? [] : [{ label, at: [...path, n] }];
        })
      : (asText(node, path, context)?.split(/,\s*/) ?? []).map((label) => ({ label, at: path }));
  const labels: string[] = [];
  for (const { label, at } of found) {
    if (labels.includes(label)) atValue(context, at, 'group-label-twice', { label });
    else labels.push(label);
  }
  return labels;
}

function readLanguages(
  root: MapNode,
  known: readonly string[],
  context: Context,
): GroupWords['groupLanguages'] {
  const node = entryOf(root, 'group languages')?.node;
  const map = node === undefined ? null : asMap(node, ['group languages'], context);
  if (map === null) return {};
  const languages: Record<string, PaperLanguage> = {};
  for (const { key: label, node: written } of map.entries) {
    const path = ['group languages', label];
    if (!known.includes(label)) {
      atKey(context, path, 'unknown-group', { written: label, known, ...nearestFact(label, known) });
      continue;
    }
    const language = languageIn(written, label, context);
    if (language !== null) languages[label] = language;
  }
  return languages;
}

function languageIn(node: MapNode['entries'][number]['node'], label: string, context: Context) {
  const path = ['group languages', label];
  const filled = checkField(node, label, groupLanguageField, { path, id: `visit/${label}` }, context);
  const choice = filled?.type === 'choice' ? filled.choice : null;
  return paperLanguages.find((each) => each === choice) ?? null;
}

/**
 * How many groups a class makes of the size that is wanted.
 *
 * @example groupCount(26, 4) // => 6
 */
export const groupCount = (pupils: number, size: number | null): number =>
  groupsOf({ pupils, size, groups: null, places: null, tables: null, labels: [] }).groups.length;

const LETTERS = 26;

/**
 * A, B, C, and after Z with two letters.
 *
 * @example lettersOf(0) // => 'A'
 * @example lettersOf(27) // => 'AB'
 */
export const lettersOf = (n: number): string =>
  (n >= LETTERS ? lettersOf(Math.floor(n / LETTERS) - 1) : '') + String.fromCharCode(65 + (n % LETTERS));

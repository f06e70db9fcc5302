import type { Files, Tree, TreeMap } from './example-files.ts';

const isMap = (tree: Tree): tree is TreeMap =>
  typeof tree === 'object' && tree !== null && !Array.isArray(tree);

/** Every text of a tree through a change; keys stay. */
export function withTexts(tree: Tree, change: (text: string, key: string) => string, key = ''): Tree {
  if (typeof tree === 'string') return change(tree, key);
  if (tree === null) return null;
  if (!isMap(tree)) return tree.map((each) => withTexts(each, change, key));
  return Object.fromEntries(
    Object.entries(tree).map(([name, each]) => [name, withTexts(each, change, name)]),
  );
}

export const inEveryFile = (files: Files, change: (tree: Tree) => Tree): Files => ({
  kit: change(files.kit) as TreeMap,
  activity: change(files.activity) as TreeMap,
  visit: change(files.visit) as TreeMap,
});

/** Keys and lists in another order; the first line stays, and so does the order of stages, which has a meaning. */
export function shuffled(tree: Tree, chance: () => number, key = ''): Tree {
  if (tree === null || typeof tree === 'string') return tree;
  if (!isMap(tree)) {
    const items = tree.map((each) => shuffled(each, chance));
    return key === 'stages' ? items : mixed(items, chance);
  }
  const entries = Object.entries(tree).map(([name, each]) => [name, shuffled(each, chance, name)] as const);
  const first = entries.filter(([name]) => name === 'handspike');
  return Object.fromEntries([
    ...first,
    ...mixed(
      entries.filter(([name]) => name !== 'handspike'),
      chance,
    ),
  ]);
}

/** Fisher and Yates. */
function mixed<T>(items: readonly T[], chance: () => number): readonly T[] {
  const found = [...items];
  for (let n = found.length - 1; n > 0; n -= 1) {
    const other = Math.floor(chance() * (n + 1));
    [found[n], found[other]] = [found[other] as T, found[n] as T];
  }
  return found;
}

/** Parts, tables and setups under other marks, wherever one file names them. */
export function renamed(files: Files, markOf: (mark: string) => string): Files {
  const parts = Object.keys(files.kit.parts as TreeMap);
  const part = (text: string): string => (parts.includes(text) ? markOf(text) : text);
  const measured = ((files.kit.measured ?? []) as readonly TreeMap[]).map((line) => ({
    ...line,
    part: part(line.part as string),
  }));
  const keysOf = (tree: Tree | undefined, value: (each: Tree) => Tree): TreeMap =>
    Object.fromEntries(
      Object.entries((tree ?? {}) as TreeMap).map(([key, each]) => [markOf(key), value(each)]),
    );
  return {
    kit: {
      ...files.kit,
      parts: keysOf(files.kit.parts, (each) => each),
      ...(measured.length === 0 ? {} : { measured }),
    },
    activity: withTexts(files.activity, (text, key) =>
      ['table', 'setup', 'partner', 'after'].includes(key) ? markOf(text) : text,
    ) as TreeMap,
    visit: {
      ...files.visit,
      roles: keysOf(files.visit.roles, (roles) => withTexts(roles, part)),
    },
  };
}

/** From a unit to another of its kind, and what one of it is there. */
export type Units = Readonly<Record<string, readonly [unit: string, factor: number]>>;

/** Kept as they are: words, places on a bar in holes, dates and names. */
const WORDS = new Set([
  'title',
  'name',
  'note',
  'shows',
  'serial',
  'thread',
  'date',
  'period',
  'table',
  'setup',
]);

/**
 * The same quantities in other units. What was written with its doubt (`±`, `..`) keeps it; a bare
 * value, which says its doubt by its last digit, becomes the range that it stands for. A role's size is
 * a plain figure.
 */
export function inUnits(text: string, key: string, units: Units): string {
  if (WORDS.has(key)) return text;
  const role = /^(weight of|spring scale to) (.*)$/.exec(text);
  if (role !== null) return `${role[1]} ${amounts(role[2] ?? '', units)}`;
  if (key === 'pin heights')
    return text
      .split(', ')
      .map((each) => oneInUnits(each, units))
      .join(', ');
  return oneInUnits(text, units);
}

const AMOUNT = /(\d+(?:\.(\d+))?) (N\/m|[a-z]+)\b/gi;

const oneInUnits = (text: string, units: Units): string =>
  /±|\.\./.test(text) ? amounts(text, units) : bare(text, units);

const amounts = (text: string, units: Units): string =>
  text.replaceAll(AMOUNT, (whole, number: string, _, unit: string) => {
    const found = units[unit];
    return found === undefined ? whole : `${plain(Number(number) * found[1])} ${found[0]}`;
  });

/** `60.0 cm` is anything from 59.95 cm to 60.05 cm. */
const bare = (text: string, units: Units): string =>
  text.replace(
    new RegExp(`^${AMOUNT.source}$`, 'i'),
    (whole, number: string, decimals = '', unit: string) => {
      const found = units[unit];
      if (found === undefined) return whole;
      const half = 0.5 * 10 ** -decimals.length;
      const ends = [-half, half].map((each) => plain((Number(number) + each) * found[1]));
      return `${ends.join('..')} ${found[0]}`;
    },
  );

/** Fifteen significant digits and no exponent, as the files take them. */
const plain = (value: number): string => {
  const decimals = Math.max(0, 14 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.min(decimals, 25));
};

/** Numbers with a decimal comma; the file says so itself. */
export const withCommas = (tree: Tree): Tree => ({
  ...(withTexts(tree, (text) => text.replaceAll(/(\d)\.(?=\d)/g, '$1,')) as TreeMap),
  decimal: 'comma',
});

/** What is wanted of the groups of a class; `null` where nobody says. */
export interface GroupsAsked {
  readonly pupils: number;
  readonly size: number | null;
  /** How many groups: it goes before the size. */
  readonly groups: number | null;
  /** How many groups can be at a table at once: all copies of all tables. */
  readonly places: number | null;
  /** How many tables each group does. */
  readonly tables: number | null;
  /** What the groups are called, as far as somebody says. */
  readonly labels: readonly string[];
}

export interface ClassGroups {
  /** Sizes differ by one at most; the larger groups come first. */
  readonly groups: readonly { readonly label: string; readonly pupils: number }[];
  readonly findings: readonly GroupFinding[];
}

/** A wish that the class's number doesn't allow. */
export type GroupFinding =
  | { readonly kind: 'nobody' }
  /** So many groups are of another size than wanted. */
  | {
      readonly kind: 'other size';
      readonly wanted: number;
      readonly larger: number;
      readonly smaller: number;
    }
  | { readonly kind: 'fewer pupils than groups'; readonly wanted: number; readonly groups: number }
  /** Below `LEAST` some have two jobs at once; above `MOST` some have none of their own. */
  | { readonly kind: 'small groups'; readonly pupils: number; readonly groups: number }
  | { readonly kind: 'large groups'; readonly pupils: number; readonly groups: number }
  /** At any time so many groups have no table. */
  | { readonly kind: 'more groups than places'; readonly groups: number; readonly places: number }
  /** So many pupils of the largest group don't pull at a table, if the duties move on after each. */
  | { readonly kind: 'not all pull'; readonly pupils: number; readonly tables: number };

/** Groups of three to five with four duties, wanted four: common practice, no source. */
export const GROUP_SIZE = { least: 3, wanted: 4, most: 5 } as const;

/**
 * A class as groups, without a name. The number of groups is the one with the fewest groups that are too small or too
 * large, then the fewest without a place at a table, then the sizes nearest to the wanted one (least squares), then the fewest.
 *
 * @example
 * const nothing = { groups: null, places: null, tables: null, labels: [] };
 * groupsOf({ ...nothing, pupils: 26, size: 4 }).groups.map(({ pupils }) => pupils) // => [5, 5, 4, 4, 4, 4]
 * groupsOf({ ...nothing, pupils: 5, size: 4 }).findings // => [{ kind: 'other size', wanted: 4, larger: 1, smaller: 0 }]
 */
export function groupsOf(asked: GroupsAsked): ClassGroups {
  const { pupils, labels } = asked;
  if (!(Number.isInteger(pupils) && pupils > 0)) return { groups: [], findings: [{ kind: 'nobody' }] };
  const count =
    asked.groups === null ? bestCount(asked) : Math.min(Math.max(1, Math.floor(asked.groups)), pupils);
  const names = namesOf(labels, count);
  const groups = sizesOf(pupils, count).map((size, n) => ({ label: names[n] ?? '', pupils: size }));
  return {
    groups,
    findings: groupFindings(
      asked,
      groups.map((group) => group.pupils),
    ),
  };
}

/**
 * Sizes that differ by one at most, the larger ones first.
 *
 * @example sizesOf(14, 4) // => [4, 4, 3, 3]
 */
export const sizesOf = (pupils: number, groups: number): readonly number[] =>
  Array.from({ length: groups }, (_, n) => Math.floor(pupils / groups) + (n < pupils % groups ? 1 : 0));

function bestCount(asked: GroupsAsked): number {
  const wanted = wantedSize(asked);
  const { pupils, places } = asked;
  const { least, most } = bounds(wanted);
  const costs = Array.from({ length: pupils }, (_, n): readonly number[] => {
    const sizes = sizesOf(pupils, n + 1);
    return [
      sizes.filter((size) => size < least || size > most).length / sizes.length,
      Math.max(0, sizes.length - (places ?? Infinity)),
      sizes.reduce((sum, size) => sum + (size - wanted) ** 2, 0),
    ];
  });
  let best = 0;
  for (const [n, cost] of costs.entries()) if (isLess(cost, costs[best] ?? [])) best = n;
  return best + 1;
}

const isLess = (a: readonly number[], b: readonly number[]): boolean => {
  const at = a.findIndex((cost, n) => cost !== b[n]);
  return at >= 0 && (a[at] as number) < (b[at] as number);
};

const wantedSize = ({ size }: Pick<GroupsAsked, 'size'>): number =>
  Math.max(1, Math.round(size ?? GROUP_SIZE.wanted));

/** Who wants pairs, or six, gets them. */
const bounds = (wanted: number) => ({
  least: Math.min(GROUP_SIZE.least, wanted),
  most: Math.max(GROUP_SIZE.most, wanted),
});

/**
 * What there is to know of groups of these sizes, the larger first.
 *
 * @example groupFindings({ pupils: 15, size: null, groups: 3, places: null, tables: 4 }, [5, 5, 5]) // => [{ kind: 'not all pull', pupils: 1, tables: 4 }]
 */
export function groupFindings(
  asked: Omit<GroupsAsked, 'labels'>,
  sizes: readonly number[],
): readonly GroupFinding[] {
  const { groups, places, tables, size } = asked;
  const wanted = wantedSize(asked);
  const [largest, smallest] = [sizes[0] ?? 0, sizes.at(-1) ?? 0];
  const count = (is: (pupils: number) => boolean): number => sizes.filter(is).length;
  const [larger, smaller] = [count((each) => each > wanted), count((each) => each < wanted)];
  const when = (holds: boolean, finding: GroupFinding): readonly GroupFinding[] => (holds ? [finding] : []);
  return [
    ...when(groups !== null && groups > sizes.length, {
      kind: 'fewer pupils than groups',
      wanted: groups ?? 0,
      groups: sizes.length,
    }),
    ...when(size !== null && larger + smaller > 0, { kind: 'other size', wanted, larger, smaller }),
    ...when(smallest < GROUP_SIZE.least, {
      kind: 'small groups',
      pupils: smallest,
      groups: count((each) => each < GROUP_SIZE.least),
    }),
    ...when(largest > GROUP_SIZE.most, {
      kind: 'large groups',
      pupils: largest,
      groups: count((each) => each > GROUP_SIZE.most),
    }),
    ...when(places !== null && sizes.length > places, {
      kind: 'more groups than places',
      groups: sizes.length,
      places: places ?? 0,
    }),
    ...when(tables !== null && largest > tables, {
      kind: 'not all pull',
      pupils: largest - (tables ?? 0),
      tables: tables ?? 0,
    }),
  ];
}

/** Those that are given, then letters that are not among them. */
function namesOf(labels: readonly string[], count: number): readonly string[] {
  const names = labels.slice(0, count);
  for (let n = 0; names.length < count; n += 1) if (!names.includes(letters(n))) names.push(letters(n));
  return names;
}

/** A, B, …, Z, AA, AB, … */
const letters = (n: number): string =>
  (n < 26 ? '' : letters(Math.floor(n / 26) - 1)) + String.fromCharCode(65 + (n % 26));

import type { Field, Fields } from './description/fields.ts';
import { readActivityFile } from './files/activity-file.ts';
import { withGrown } from './files/grow-text.ts';
import { readVisitFile } from './files/visit-file.ts';
import { machineWords, type Vocabulary } from './files/vocabulary.ts';
import { readYaml } from './files/yaml-tree.ts';
import type { Kit, KitPart } from './kit/kit.ts';
import { bringTogether } from './prepare.ts';
import { troublesOf } from './setups/trouble.ts';
import { vocabulary } from './words.ts';

/** A first setup of a machine from what lies in a kit, as a file would say it, with a decimal point. */
export interface TableStart {
  /** Marks by slot. */
  readonly parts: Readonly<Record<string, string>>;
  readonly fields: Readonly<Record<string, string>>;
  /** Every reading is on the scale and can be told well. */
  readonly isClear: boolean;
}

/** Setups that are tried at most, so that nobody waits: the first that can be built, then better ones. */
const MOST_TRIED = 700;
const MOST_BETTERED = 250;
/** Values that are tried for one field, at most. */
const MOST_VALUES = 5;

type Cast = Readonly<Record<string, KitPart>>;
type Values = Readonly<Record<string, string>>;

/**
 * Kit and machine -> the smallest setup that gives a reading: needed parts and needed fields first, then one
 * or two more of each, parts that stand nowhere else before those in use; every one is built and reckoned by the same laws as any other. `null` where no such
 * setup is found.
 */
export function startTable(kit: Kit, machine: string, inUse: readonly string[] = []): TableStart | null {
  const words = machineWords(vocabulary, machine);
  if (words === undefined) return null;
  let best: TableStart | null = null;
  let tried = 0;
  const attempt = (cast: Cast, values: Values): boolean => {
    tried += 1;
    const judged = judge(kit, machine, cast, values);
    if (judged === 'unbuilt' || (best !== null && !judged)) return false;
    const parts = Object.fromEntries(Object.entries(cast).map(([slot, { mark }]) => [slot, mark]));
    best = { parts, fields: values, isClear: judged };
    return true;
  };
  const parts = kit.parts.toSorted((a, b) => Number(inUse.includes(a.mark)) - Number(inUse.includes(b.mark)));
  const shapes = shapesOf({ ...kit, parts }, words, vocabulary);
  const found = shapes.find(({ casts, fields }) => {
    const [cast] = casts;
    if (cast === undefined || tried > MOST_TRIED) return false;
    return choices(fields, cast).some((values) => tried <= MOST_TRIED && attempt(cast, values));
  });
  if (found === undefined) return best;
  tried = 0;
  for (const cast of found.casts)
    for (const values of choices(found.fields, cast)) {
      if (tried > MOST_BETTERED || (best as TableStart | null)?.isClear === true) return best;
      attempt(cast, values);
    }
  return best;
}

/** Whether a setup can be built, and if so whether nothing is in the way of reading it. */
function judge(kit: Kit, machine: string, cast: Cast, values: Values): 'unbuilt' | boolean {
  const answers: readonly (readonly [readonly (string | number)[], string])[] = [
    [['tables', 0, 'machine'], machine],
    ...Object.entries(cast).map(([slot, { kind }]) => [['tables', 0, 'roles', slot], kind] as const),
    [['tables', 0, 'setups', 0, 'setup'], '?'],
    ...Object.entries(values).map(([field, value]) => [['tables', 0, 'setups', 0, field], value] as const),
  ];
  const head = 'handspike: activity 1\ntitle: "?"\ntables:\n  - table: "?"\n';
  const text = answers.reduce((before, [path, value]) => {
    const { source } = readYaml({ name: '?', text: before });
    return withGrown(source, path, value) ?? before;
  }, head);
  const { activity } = readActivityFile({ name: '?', text }, vocabulary);
  const { visit } = readVisitFile({ name: '?', text: 'handspike: visit 1\nkit: "?"\nactivity: "?"\n' });
  if (activity === null || visit === null) return 'unbuilt';
  const roles = { '?': Object.fromEntries(Object.entries(cast).map(([slot, { mark }]) => [slot, mark])) };
  const { tables, diagnostics } = bringTogether(kit, activity, { ...visit, roles });
  const [built] = tables[0]?.setups ?? [];
  if (built === undefined || built.prediction.outcome.kind === 'not-defined') return 'unbuilt';
  const isTold = diagnostics.some(({ severity }) => severity !== 'note');
  return !isTold && troublesOf(built.setup, built.prediction).length === 0;
}

interface Shape {
  readonly casts: readonly Cast[];
  readonly fields: Fields;
}

/** Which slots are filled and which fields are said: the fewest first. */
function shapesOf(
  kit: Kit,
  { slots, fields }: NonNullable<ReturnType<typeof machineWords>>,
  { setupSlots, setupFields }: Vocabulary,
): readonly Shape[] {
  const needed = Object.keys(slots).filter((slot) => slots[slot]?.optional !== true);
  const others = Object.keys(slots).filter((slot) => slots[slot]?.optional === true);
  // What every setup may have is put in at once where the kit has it: a load and a scale, or nothing is read.
  const usual = ['scale', 'load'];
  const all = { ...setupSlots, ...slots };
  const filled = (names: readonly string[]) => castsOf(kit, names, all);
  const must = only(fields, (field) => field.required === true);
  const may = Object.entries({ ...only(fields, (field) => field.required !== true), ...setupFields });
  const more: readonly Fields[] = [
    {},
    ...may.map(([name, field]) => ({ [name]: field })),
    ...may.flatMap(([name, field], n) =>
      may.slice(n + 1).map(([other, second]) => ({ [name]: field, [other]: second })),
    ),
  ];
  const fillings = subsets(others).flatMap((some) =>
    [usual, usual.slice(0, 1)]
      .map((basic) => filled([...needed, ...some, ...basic]))
      .filter((casts) => casts.length > 0)
      .slice(0, 1),
  );
  return more
    .slice(0, 1 + may.length)
    .concat(more.slice(1 + may.length))
    .flatMap((extra) => fillings.map((casts) => ({ casts, fields: { ...must, ...extra } })));
}

/** Every way to fill these slots, no part in two of them; nothing where one of them stays empty. */
function castsOf(
  { parts }: Kit,
  names: readonly string[],
  slots: Readonly<Record<string, { readonly kinds: readonly string[] }>>,
): readonly Cast[] {
  return names.reduce<readonly Cast[]>(
    (casts, slot) =>
      casts.flatMap((cast) =>
        parts
          .filter(
            (part) =>
              !part.isFaulty && slots[slot]?.kinds.includes(part.kind) && !Object.values(cast).includes(part),
          )
          .map((part) => ({ ...cast, [slot]: part })),
      ),
    [{}],
  );
}

const subsets = (names: readonly string[]): readonly (readonly string[])[] =>
  names
    .reduce<readonly (readonly string[])[]>(
      (sets, name) => sets.concat(sets.map((set) => [...set, name])),
      [[]],
    )
    .toSorted((a, b) => a.length - b.length);

/** What is tried for each field: its own example, and what follows from the sizes of the parts. */
function candidatesOf(fields: Fields, cast: Cast): readonly (readonly [string, readonly string[]])[] {
  const lengths = Object.values(cast).flatMap(({ fields: own }) =>
    Object.values(own).flatMap((value) =>
      value.type === 'quantity' && value.dimension === 'length' ? [value] : [],
    ),
  );
  const longest = lengths.toSorted((a, b) => b.measured.value - a.measured.value)[0];
  const counts = Object.values(cast).flatMap(({ fields: own }) =>
    Object.values(own).flatMap((value) => (value.type === 'count' ? [value.count] : [])),
  );
  const holes = Math.max(0, ...counts);
  const share = (part: number): readonly string[] => {
    if (longest?.unit === undefined) return [];
    const figure = (longest.measured.value / longest.unit.si) * part;
    return [`${Number(figure.toPrecision(3))} ${longest.unit.symbol}`];
  };
  return Object.entries(fields).map(([name, field]) => [name, valuesFor(field, holes, share)]);
}

function valuesFor(
  field: Field,
  holes: number,
  share: (part: number) => readonly string[],
): readonly string[] {
  const shares = [0.5, 0.1, 0.9, 0.25, 0.75].flatMap(share);
  switch (field.type) {
    case 'choice':
      return field.of;
    case 'yes-no':
      return ['yes', 'no'];
    case 'count':
      return [...new Set([2, 1, 3, 4].filter((count) => count >= field.least).map(String))];
    case 'position': {
      const places = holes < 3 ? [] : [Math.ceil(holes / 2), Math.ceil(holes / 4), holes, 1];
      return [...new Set(places)]
        .map((hole) => `hole ${hole}`)
        .concat(shares)
        .slice(0, MOST_VALUES);
    }
    case 'quantity':
      return [...(field.dimensions.includes('length') ? [0.25, 0.5, 0.1].flatMap(share) : []), field.example];
    default:
      return [field.example];
  }
}

/** What is tried of all fields together; two places of one setup are two places. */
function choices(fields: Fields, cast: Cast): readonly Values[] {
  const places = Object.keys(only(fields, ({ type }) => type === 'position'));
  const isApart = (values: Values): boolean =>
    new Set(places.map((place) => values[place])).size === places.length;
  return product(candidatesOf(fields, cast)).filter(isApart);
}

/** Every choice of one value a field, the earlier values of all fields first. */
function product(fields: readonly (readonly [string, readonly string[]])[]): readonly Values[] {
  const all = fields.reduce<readonly { readonly values: Values; readonly rank: number }[]>(
    (made, [name, values]) =>
      made.flatMap(({ values: before, rank }) =>
        values.map((value, n) => ({ values: { ...before, [name]: value }, rank: rank + n })),
      ),
    [{ values: {}, rank: 0 }],
  );
  return all.toSorted((a, b) => a.rank - b.rank).map(({ values }) => values);
}

const only = (fields: Fields, keep: (field: Field) => boolean): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, field]) => keep(field)));

import type { Filled } from '../description/fields.ts';
import type { Part } from '../description/part.ts';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import type { Kit, KitPart } from '../kit/kit.ts';
import type { Preparation } from '../machines/machine.ts';
import type { Activity, ActivitySetup, ActivityTable, StageWords } from './activity.ts';
import { castRoles } from './casting.ts';
import { dayFindings } from './day-check.ts';
import { fileFinding } from './file-code.ts';
import { type GravityHere, gravityHere } from './gravity-here.ts';
import { secondCopies } from './second-copies.ts';
import type { OwnWords, Titled } from './titles.ts';
import type { Visit } from './visit-file.ts';
import { machineWords, type Vocabulary } from './vocabulary.ts';

/** Kit, activity and visit brought together: every setup with the parts that stand in it today. */
export interface Resolved {
  readonly tables: readonly ResolvedTable[];
  readonly gravity: GravityHere;
  readonly diagnostics: readonly Diagnostic[];
}

export interface ResolvedTable extends Titled {
  readonly table: string;
  readonly machine: string;
  /** Part marks by role, as cast today. */
  readonly parts: Readonly<Record<string, string>>;
  readonly setups: readonly ResolvedSetup[];
  /** Setups that can't be prepared; the diagnostics say why. */
  readonly notPrepared: readonly string[];
}

export interface ResolvedSetup {
  readonly mark: string;
  readonly machine: string;
  /** What the machine's maker takes. */
  readonly preparation: Preparation;
  readonly load: Part | null;
  readonly scale: Part | null;
  /** Every other instrument by slot: `ruler`, `turn counter`. */
  readonly instruments: Readonly<Record<string, Part>>;
  /** How it is pulled, read and watched: the fields of every setup. */
  readonly generic: Filled;
  readonly partner: string | null;
  readonly shows: OwnWords | null;
  /** Place of a setup field; `null` is the setup itself. */
  readonly place: (field: string | null) => Place;
  /** Place of a field of the part in a slot, load and scale included. */
  readonly partPlace: Preparation['partPlace'];
}

/** Brings the three files together; what can't be prepared is left out and told. */
export function resolve(kit: Kit, activity: Activity, visit: Visit | null, vocabulary: Vocabulary): Resolved {
  const { casting, diagnostics } = castRoles(kit, activity, visit);
  const found: Diagnostic[] = [
    ...diagnostics,
    ...sharedMarks(kit, activity),
    ...(visit === null
      ? []
      : [...secondCopies(kit, casting, activity, visit), ...dayFindings(activity, visit)]),
  ];
  const tables = activity.tables.map((table): ResolvedTable => {
    const cast = casting.get(table.mark) ?? new Map<string, KitPart>();
    const setups: ResolvedSetup[] = [];
    const notPrepared: string[] = [];
    for (const setup of table.setups) {
      const twice = standsTwice(setup, cast, activity);
      found.push(...twice);
      const resolved = twice.length > 0 ? null : resolveSetup(setup, table, cast, kit, activity, vocabulary);
      if (resolved === null) notPrepared.push(setup.mark);
      else setups.push(resolved);
    }
    return {
      table: table.mark,
      title: table.title,
      titles: table.titles,
      machine: table.machine,
      parts: Object.fromEntries([...cast].map(([role, part]) => [role, part.mark])),
      setups,
      notPrepared,
    };
  });
  return {
    tables,
    gravity: gravityHere(visit?.gravity ?? null, kit.gravity),
    diagnostics: found,
  };
}

type Cast = ReadonlyMap<string, KitPart>;

function resolveSetup(
  setup: ActivitySetup,
  table: ActivityTable,
  cast: Cast,
  kit: Kit,
  activity: Activity,
  vocabulary: Vocabulary,
): ResolvedSetup | null {
  const parts = partsBySlot(setup, cast);
  const stages = setup.stages.map((stage) => ({ stage, parts: partsBySlot(stage, cast) }));
  if (setup.isFaulty || parts === null) return null;
  const own = Object.keys(machineWords(vocabulary, table.machine)?.slots ?? {});
  const base = preparationOf(setup, pick(parts, own), kit, activity);
  const prepared = stages.flatMap(({ stage, parts: stageParts }) =>
    stageParts === null
      ? []
      : [
          {
            machine: stage.machine,
            preparation: preparationOf(stage, stageParts, kit, activity),
          },
        ],
  );
  if (prepared.length < stages.length) return null;
  const { load = null, scale = null, ...others } = parts;
  return {
    mark: setup.mark,
    machine: table.machine,
    preparation: { ...base, ...(prepared.length === 0 ? {} : { stages: prepared }) },
    load,
    scale,
    instruments: pick(
      others,
      Object.keys(vocabulary.setupSlots).filter((slot) => !own.includes(slot)),
    ),
    generic: setup.generic,
    partner: setup.partner,
    shows: setup.shows,
    place: base.place,
    partPlace: preparationOf(setup, parts, kit, activity).partPlace,
  };
}

function preparationOf(
  words: StageWords,
  parts: Readonly<Record<string, Part>>,
  kit: Kit,
  activity: Activity,
): Preparation {
  const place: Preparation['place'] = (field) => ({
    file: activity.file,
    path: [...words.path, field !== null && words.written.includes(field) ? field : headOf(words)],
    on: 'value',
  });
  return {
    parts,
    fields: words.fields,
    place,
    partPlace: (slot, field) => {
      const part = parts[slot];
      if (part === undefined) return place(null);
      const path = ['parts', part.mark];
      if (field !== null && Object.hasOwn(part.fields, field))
        return { file: kit.file, path: [...path, field], on: 'value' };
      return { file: kit.file, path, on: 'key' };
    },
  };
}

/** A setup is pointed at by its mark, a stage by its machine. */
const headOf = (words: StageWords): string => (words.written.includes('setup') ? 'setup' : 'machine');

/** `null` where a role has no part today, or one that could not be read. */
function partsBySlot(words: StageWords, cast: Cast): Readonly<Record<string, Part>> | null {
  const parts: Record<string, Part> = {};
  for (const [slot, role] of Object.entries(words.roles)) {
    const part = cast.get(role);
    if (part === undefined || part.isFaulty) return null;
    parts[slot] = { mark: part.mark, kind: part.kind, fields: part.fields };
  }
  return parts;
}

const pick = (
  parts: Readonly<Record<string, Part>>,
  slots: readonly string[],
): Readonly<Record<string, Part>> =>
  Object.fromEntries(Object.entries(parts).filter(([slot]) => slots.includes(slot)));

/** The same part in two slots of one setup can't be built. */
function standsTwice(setup: ActivitySetup, cast: Cast, activity: Activity): readonly Diagnostic[] {
  const slots = [setup, ...setup.stages].flatMap((words) =>
    Object.entries(words.roles).map(([slot, role]) => ({ slot, role, words })),
  );
  return slots.flatMap(({ slot, role, words }, n): readonly Diagnostic[] => {
    const part = cast.get(role)?.mark;
    const before = slots.slice(0, n).find((each) => cast.get(each.role)?.mark === part);
    if (part === undefined || before === undefined) return [];
    const key = words.written.includes(slot) ? slot : headOf(words);
    const at: Place = { file: activity.file, path: [...words.path, key], on: 'value' };
    const facts = { part, role, other: before.role };
    return [fileFinding('part-twice', at, facts)];
  });
}

/** What is not known about a setup and about a part is told apart by their marks. */
function sharedMarks(kit: Kit, activity: Activity): readonly Diagnostic[] {
  const marks = new Set(kit.parts.map((part) => part.mark));
  return activity.tables
    .flatMap((table) => table.setups)
    .filter((setup) => marks.has(setup.mark))
    .map((setup) => {
      const at: Place = { file: activity.file, path: [...setup.path, 'setup'], on: 'value' };
      return fileFinding('mark-of-a-part', at, { mark: setup.mark });
    });
}

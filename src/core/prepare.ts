import { setupWithKnowledge } from './calibration/knowledge.ts';
import type { Part } from './description/part.ts';
import { type Diagnostic, eachOnce } from './diagnostics/diagnostic.ts';
import type { Activity } from './files/activity.ts';
import { readActivityFile } from './files/activity-file.ts';
import { followArrival } from './files/arrival-entries.ts';
import { type Bench, type Known, readBench } from './files/bench-readings.ts';
import { type GravityHere, gravityHere } from './files/gravity-here.ts';
import { readKitFile } from './files/kit-file.ts';
import { type ResolvedSetup, type ResolvedTable, resolve } from './files/resolve.ts';
import type { SourceFile, SourceText } from './files/source-text.ts';
import type { OwnWords, Titled } from './files/titles.ts';
import { readVisitFile, type Visit } from './files/visit-file.ts';
import type { Kit, KitPart } from './kit/kit.ts';
import { machineNamed } from './machines/list.ts';
import { type Newtons, newtons } from './quantities/brands.ts';
import { withAround } from './setups/around.ts';
import { differenceToSee } from './setups/difference.ts';
import { rankEase } from './setups/ease.ts';
import { lastDigitDecides } from './setups/last-digit.ts';
import { makeSetup, type SetupDescription } from './setups/make-setup.ts';
import { predict } from './setups/predict.ts';
import type { Prediction } from './setups/prediction.ts';
import type { Reader, Setup } from './setups/setup.ts';
import { handScatter } from './sources/scales.ts';
import { vocabulary } from './words.ts';

/** Three files to predictions: the texts go in, everything that the key and the pages print comes out. */
export interface Prepared {
  readonly kit: Kit | null;
  readonly activity: Activity | null;
  readonly visit: Visit | null;
  readonly gravity: GravityHere | null;
  readonly tables: readonly PreparedTable[];
  /** What the bench readings tell; `null` where the kit keeps no bench book. */
  readonly bench: Bench | null;
  /** The files with their trees: what a diagnostic's place is looked up in. */
  readonly sources: readonly SourceFile[];
  readonly diagnostics: readonly Diagnostic[];
}

export interface PreparedTable extends Titled {
  readonly mark: string;
  readonly machine: string;
  readonly setups: readonly PreparedSetup[];
  /** Setups that can't be built today; the diagnostics say why. */
  readonly notPrepared: readonly string[];
}

export interface PreparedSetup {
  readonly setup: Setup;
  readonly prediction: Prediction;
  readonly load: Part | null;
  readonly shows: OwnWords | null;
  /** Marks of all parts that stand in it. */
  readonly parts: readonly string[];
  /** More to find, for groups that wait. */
  readonly isExtra: boolean;
}

/** The visit may be left out: the key is then of kit and activity alone. */
export interface PreparationFiles {
  readonly kit: SourceText;
  readonly activity: SourceText;
  readonly visit: SourceText | null;
  /** The bench book that the kit names. */
  readonly bench?: SourceText | null;
}

/** Three files -> checked files -> setups -> predictions; everything found on the way is told at once. */
export function prepare(files: PreparationFiles): Prepared {
  const kit = readKitFile(files.kit, vocabulary);
  const activity = readActivityFile(files.activity, vocabulary);
  const visit = files.visit === null ? null : readVisitFile(files.visit);
  const read = {
    kit: kit.kit,
    activity: activity.activity,
    visit: visit?.visit ?? null,
    sources: [kit.source, activity.source, ...(visit === null ? [] : [visit.source])],
  };
  const found = [...kit.diagnostics, ...activity.diagnostics, ...(visit?.diagnostics ?? [])];
  if (read.kit === null || read.activity === null || (visit !== null && visit.visit === null))
    return { ...read, gravity: null, tables: [], bench: null, diagnostics: found };
  const asFiled = bringTogether(read.kit, read.activity, read.visit);
  const bench = files.bench ? benchOf(files.bench, read.kit, read.activity, asFiled.tables) : null;
  const known = bench?.bench.known ?? null;
  const brought = known === null ? asFiled : bringTogether(read.kit, read.activity, read.visit, known);
  return {
    ...read,
    ...brought,
    bench: bench?.bench ?? null,
    sources: [...read.sources, ...(bench === null ? [] : [bench.source])],
    diagnostics: eachOnce([...found, ...(bench?.diagnostics ?? []), ...brought.diagnostics]),
  };
}

/**
 * One table of checked files by itself, as it stands among the others today and as its bench book has it,
 * for whoever changes it and looks. What only all tables together tell is `prepare`'s to say.
 */
export function prepareOne(
  kit: Kit,
  activity: Activity,
  visit: Visit | null,
  mark: string,
  book: SourceText | null = null,
): PreparedTable | null {
  const resolved = resolve(kit, activity, visit, vocabulary);
  const table = resolved.tables.find((each) => each.table === mark);
  if (table === undefined) return null;
  const reader = readerOf(activity);
  const madeAs = (each: ResolvedTable, known: Known | null): PreparedTable =>
    prepareTable(each, resolved.gravity, reader, kit.parts, known).table;
  // A line tells nothing of tables that no line names: they need not be made for it.
  const named = book === null ? [] : resolved.tables.filter((each) => isNamedIn(book.text, each));
  const filed = named.map((each) => madeAs(each, null));
  const known = book === null ? null : benchOf(book, kit, activity, filed).bench.known;
  return followArrival([madeAs(table, known)], visit).tables[0] ?? null;
}

const isNamedIn = (text: string, { setups, notPrepared }: ResolvedTable): boolean =>
  [...setups.map(({ mark }) => mark), ...notPrepared].some((mark) => text.includes(mark));

/** The bench book against the tables as the files alone have them. */
function benchOf(file: SourceText, kit: Kit, activity: Activity, tables: readonly PreparedTable[]) {
  return readBench(file, kit, {
    activity: activity.file,
    setups: tables.flatMap((table) => table.setups),
    notPrepared: tables.flatMap((table) => table.notPrepared),
    gravity: gravityHere(null, kit.gravity).gravity,
  });
}

/** Checked files -> setups -> predictions, which follow what was read on the bench and on arrival. */
export function bringTogether(
  kit: Kit,
  activity: Activity,
  visit: Visit | null,
  known: Known | null = null,
): Pick<Prepared, 'gravity' | 'tables' | 'diagnostics'> {
  const resolved = resolve(kit, activity, visit, vocabulary);
  const reader = readerOf(activity);
  const made = resolved.tables.map((table) =>
    prepareTable(table, resolved.gravity, reader, kit.parts, known),
  );
  const arrived = followArrival(
    made.map(({ table }) => table),
    visit,
  );
  const setups = arrived.tables.flatMap((table) => table.setups);
  return {
    gravity: resolved.gravity,
    tables: arrived.tables,
    diagnostics: [
      ...resolved.diagnostics,
      ...made.flatMap(({ diagnostics }) => diagnostics),
      ...arrived.diagnostics,
      ...setups.flatMap(({ prediction }) => prediction.diagnostics),
      ...arrived.tables.flatMap((table) => differenceToSee(table.setups)),
      ...lastDigitDecides(kit.file, setups),
    ],
  };
}

function prepareTable(
  table: ResolvedTable,
  gravity: GravityHere,
  reader: Reader,
  parts: readonly KitPart[],
  known: Known | null,
) {
  const made = table.setups.map((resolved) => ({ resolved, ...madeSetup(table, resolved, gravity, reader) }));
  const together = made.flatMap(({ setup }) => (setup === null ? [] : [setup]));
  const built = made.flatMap(({ resolved, setup }) =>
    setup === null
      ? []
      : [{ resolved, setup: asKnown(withAround(setup, resolved.load, together, parts), known) }],
  );
  const predictions = rankEase(built.map(({ setup }) => predict(setup)));
  const setups = built.flatMap(({ resolved, setup }, n): readonly PreparedSetup[] => {
    const prediction = predictions[n];
    return prediction === undefined
      ? []
      : [
          {
            setup,
            prediction,
            load: resolved.load,
            shows: resolved.shows,
            parts: partsIn(resolved),
            isExtra: setup.isExtra,
          },
        ];
  });
  const unbuilt = made.filter(({ setup }) => setup === null).map(({ resolved }) => resolved.mark);
  return {
    table: {
      mark: table.table,
      title: table.title,
      titles: table.titles,
      machine: table.machine,
      setups,
      notPrepared: [...table.notPrepared, ...unbuilt],
    },
    diagnostics: made.flatMap(({ diagnostics }) => diagnostics),
  };
}

/** A setup with what the bench readings tell. */
export const asKnown = (setup: Setup, known: Known | null): Setup =>
  known === null ? setup : { ...setupWithKnowledge(setup, known.knowledge), benchSince: known.since };

const partsIn = ({ preparation, load, scale, instruments }: ResolvedSetup): readonly string[] => [
  ...new Set(
    [
      preparation.parts,
      ...(preparation.stages ?? []).map((stage) => stage.preparation.parts),
      instruments,
      { ...(load === null ? {} : { load }), ...(scale === null ? {} : { scale }) },
    ].flatMap((parts) => Object.values(parts).map(({ mark }) => mark)),
  ),
];

function madeSetup(table: ResolvedTable, resolved: ResolvedSetup, gravity: GravityHere, reader: Reader) {
  const description = descriptionOf(table, resolved, gravity, reader);
  return description === null ? { setup: null, diagnostics: [] } : makeSetup(description);
}

/** A setup as the files give it: what it is made from, and what advice changes in it. */
export function descriptionOf(
  table: ResolvedTable,
  resolved: ResolvedSetup,
  gravity: GravityHere,
  reader: Reader,
): SetupDescription | null {
  const machine = machineNamed(resolved.machine);
  if (machine === undefined) return null;
  return {
    table: table.table,
    mark: resolved.mark,
    machine,
    preparation: resolved.preparation,
    load: resolved.load,
    scale: resolved.scale,
    scalePlace: (field) => resolved.partPlace('scale', field),
    ruler: resolved.instruments.ruler ?? null,
    counter: resolved.instruments['turn counter'] ?? null,
    fields: resolved.generic,
    gravity: gravity.gravity,
    gravityWorking: gravity.working,
    reader,
    partner: resolved.partner,
  };
}

/** From this age on nobody limits the pull unless the activity says so. */
const GROWN_ENOUGH = 11;
/** Small children should not pull above about 10 N: Institute of Physics primary outreach safety note. */
const SMALL_HANDS: Newtons = newtons(10);

/** Who reads: what the activity says, else the sourced scatter and the limit of small hands. */
export function readerOf(activity: Activity): Reader {
  const { age, handLimit, handScatter: stated } = activity;
  return {
    scatter: stated?.value ?? handScatter.share,
    handLimit: handLimit?.value ?? (age !== null && age.from < GROWN_ENOUGH ? SMALL_HANDS : null),
  };
}

import { type CausePosterior, causePosterior, type PosteriorCause } from './cause-posterior.ts';
import { changedStation } from './changed-station.ts';
import { atRates, type Counted, classRates, timesAsMany } from './class-rate.ts';
import { type GroupHabit, habitsOf, isSameShown, type Shown, shownTogether } from './group-habit.ts';
import type { ChangedStation, Judgement } from './judgement.ts';
import { judgementOf } from './reading-verdict.ts';
import {
  type StationTable,
  stationTable,
  type TableSource,
  type TakenReading,
  taken,
} from './station-table.ts';
import { type TableFinding, tableFinding } from './table-finding.ts';
import { type TableWeights, tableWeights } from './table-weights.ts';
import type { WrittenReading } from './written-reading.ts';

/**
 * A class as its readings come in: what they were, and how each table stands. A value: one more reading
 * makes a new one, in which that reading's table and its group's other readings are weighed again.
 */
export interface ClassState {
  readonly tables: readonly TableState[];
  /** Readings in the order they came, each by its table. */
  readonly order: readonly Place[];
  /** What is said of each, in the same order. */
  readonly judged: readonly Judged[];
  /** How many times as many mistakes as the base rates say this class makes: 1 until it has written enough to tell. */
  readonly ownRate: number;
}

interface Place {
  readonly table: number;
  readonly place: number;
}

interface Judged {
  readonly judgement: Judgement;
  readonly causes: readonly PosteriorCause[];
}

interface TableState {
  readonly table: StationTable;
  readonly weights: TableWeights;
  /** Posterior of each number of the table, before anything is known of its group. */
  readonly alone: readonly CausePosterior[];
  /** What each group's other readings have shown of the habits that a number may be of. */
  readonly others: readonly Shown[];
  /** Posterior of each number with that. */
  readonly inGroup: readonly CausePosterior[];
  /** The station that each number is judged against, where it is no longer as its card has it. */
  readonly stations: readonly (ChangedStation | null)[];
  readonly finding: TableFinding | null;
}

/** What is assumed beyond the model. */
export interface ClassOptions {
  /** Base rates times this: 3 and 1/3 show how much hangs on them. */
  readonly rateFactor?: number;
}

/** A class that has written nothing yet. */
export const classOf = (
  tables: readonly TableSource[],
  { rateFactor = 1 }: ClassOptions = {},
): ClassState => ({
  tables: tables.map((source) => stateOf(stationTable(source, rateFactor), [])),
  order: [],
  judged: [],
  ownRate: 1,
});

function stateOf(table: StationTable, readings: readonly TakenReading[], before?: TableWeights): TableState {
  const weights = tableWeights(table, readings, before);
  const alone = weights.numbers.map((_, n) => causePosterior(weights, n));
  const stations = weights.numbers.map((each, n) => changedStation(table, weights, each, n));
  const finding = tableFinding(table, weights, alone);
  return { table, weights, alone, others: [], inGroup: [], stations, finding };
}

/** The class with one more reading; `null` where there is no such setup. */
export function classWith(state: ClassState, reading: WrittenReading): ClassState | null {
  return classWithAll(state, [reading]);
}

/**
 * So many readings show how often a class errs. With each further one another table is weighed anew at the class's own rate,
 * so that no reading waits for all tables. Common practice, no source.
 */
const ENOUGH = 48;

/** The class with several more readings, in the order they came; `null` where one is of no known setup. */
export function classWithAll(state: ClassState, readings: readonly WrittenReading[]): ClassState | null {
  const missing = ENOUGH - state.order.length;
  if (missing <= 0 || readings.length < missing) return withReadings(state, readings);
  const first = withReadings(state, readings.slice(0, missing));
  return first === null
    ? null
    : withReadings({ ...first, ownRate: ownRateOf(first) }, readings.slice(missing));
}

/** How many times as many mistakes as the base rates say; one group alone is no class, and has its habits. */
function ownRateOf({ tables }: ClassState): number {
  const numbers = countedAt(tables);
  return numbers.every(({ group }) => group === numbers[0]?.group) ? 1 : timesAsMany(numbers);
}

function withReadings(state: ClassState, readings: readonly WrittenReading[]): ClassState | null {
  const added = state.tables.map((): Pick<TakenReading, 'reading' | 'setup'>[] => []);
  const order = [...state.order];
  for (const reading of readings) {
    const at = placeOf(state, reading.setup);
    const here = at === null ? undefined : added[at.table];
    if (at === null || here === undefined) return null;
    order.push({
      table: at.table,
      place: (state.tables[at.table]?.weights.readings.length ?? 0) + here.length,
    });
    here.push({ reading, setup: at.setup });
  }
  const read = state.tables.map((each, n) => {
    const isAnew = state.ownRate !== 1 && state.order.length <= ENOUGH + n && order.length > ENOUGH + n;
    const { weights } = each;
    const table = isAnew ? { ...each.table, rateFactor: each.table.rateFactor * state.ownRate } : each.table;
    const more = [...(isAnew ? weights.readings : []), ...(added[n] ?? [])].map(({ reading, setup }) =>
      taken(table, reading, setup),
    );
    if (more.length === 0) return each;
    return isAnew ? stateOf(table, more) : stateOf(table, [...weights.readings, ...more], weights);
  });
  const tables = withGroups(read, state.tables);
  return { ...state, order, tables, judged: judgedAt(tables, order) };
}

/**
 * What the groups' other readings make of each: weighed again where the table is new, or where they have shown
 * something new of the habits that it may be of.
 */
function withGroups(tables: readonly TableState[], before: readonly TableState[]): readonly TableState[] {
  const moved = movedGroups(tables, before);
  const now = shownByGroup(tables);
  return tables.map((table, t) => {
    const isNew = table !== before[t];
    const { weights, alone } = table;
    if (!isNew && weights.numbers.every(({ reading }) => !moved.has(reading.group))) return table;
    const others = weights.numbers.map((taken, n): Shown => {
      const { group } = taken.reading;
      const known = table.others[n];
      return known !== undefined && !moved.has(group)
        ? known
        : shownByOthers(taken, alone[n], now.get(group));
    });
    const inGroup = alone.map((own, n): CausePosterior => {
      const shown = others[n];
      // Others that have shown nothing leave it as it is alone.
      if (shown === undefined || shown.size === 0) return own;
      const known = table.inGroup[n];
      if (known !== undefined && isSameShown(shown, table.others[n])) return known;
      return causePosterior(weights, n, (key) => shown.get(key) ?? 0);
    });
    return { ...table, others, inGroup };
  });
}

/** What the others of its group have shown of the habits that a number may be of: all together, less its own. */
function shownByOthers(
  { reading, habits }: TakenReading,
  own: CausePosterior | undefined,
  all?: Shown,
): Shown {
  const others = new Map<string, number>();
  if (reading.group === '' || all === undefined) return others;
  for (const key of habits.keys()) {
    const tenths = (all.get(key) ?? 0) - (own?.shown.get(key) ?? 0);
    if (tenths !== 0) others.set(key, tenths);
  }
  return others;
}

/** Groups that show something else than before. */
function movedGroups(tables: readonly TableState[], before: readonly TableState[]): ReadonlySet<string> {
  const moved = new Set<string>();
  for (const [t, { weights, alone }] of tables.entries()) {
    const then = before[t]?.alone;
    if (then === alone) continue;
    for (const [n, { shown }] of alone.entries()) {
      const old = then?.[n]?.shown;
      if (old === undefined || !isSameShown(shown, old)) moved.add(weights.numbers[n]?.reading.group ?? '');
    }
  }
  return moved;
}

/** What each group's readings show of its habits, of those that have read more than once. */
function shownByGroup(tables: readonly TableState[]): ReadonlyMap<string, Shown> {
  const groups = new Map<string, Shown[]>();
  for (const { weights, alone } of tables)
    for (const [n, { shown }] of alone.entries()) {
      const group = weights.numbers[n]?.reading.group ?? '';
      const all = groups.get(group);
      if (all === undefined) groups.set(group, [shown]);
      else all.push(shown);
    }
  return new Map(
    [...groups].flatMap(([group, all]) => (all.length < 2 ? [] : [[group, shownTogether(all)] as const])),
  );
}

/** Table and place of a setup by its mark; a mark is written in any case. */
function placeOf(state: ClassState, mark: string) {
  const find = (isIt: (each: string) => boolean) => {
    for (const [table, { table: at }] of state.tables.entries()) {
      const setup = at.apparatus.setups.findIndex((each) => isIt(each.at.setup.mark));
      if (setup >= 0) return { table, setup };
    }
    return null;
  };
  return find((each) => each === mark) ?? find((each) => each.toLowerCase() === mark.toLowerCase());
}

/** All readings of the class, judged with everything that is known by now, in the order they came. */
export const judgements = (state: ClassState): readonly Judgement[] =>
  state.judged.map(({ judgement }) => judgement);

function judgedAt(tables: readonly TableState[], order: readonly Place[]): readonly Judged[] {
  const rates = classRates(countedAt(tables));
  const made = tables.map(({ table, weights, inGroup, stations }) => {
    let n = 0;
    return weights.readings.map((reading): Judged => {
      const isWeighed = reading === weights.numbers[n];
      const posterior = isWeighed ? inGroup[n] : undefined;
      const causes = posterior === undefined ? [] : atRates(posterior, rates);
      const station = isWeighed ? (stations[n] ?? null) : null;
      if (isWeighed) n += 1;
      return { judgement: judgementOf(table, reading, causes, station), causes };
    });
  });
  return order.flatMap(({ table, place }) => made[table]?.[place] ?? []);
}

const countedAt = (tables: readonly TableState[]): readonly Counted[] =>
  tables.flatMap(({ weights, alone }) =>
    weights.numbers.flatMap(({ reading, expected, ofHabits }, n) => {
      const posterior = alone[n];
      return posterior === undefined ? [] : [{ group: reading.group, posterior, expected, ofHabits }];
    }),
  );

/** What tables as a whole have to say, in the order of the tables. */
export const tableFindings = (state: ClassState): readonly TableFinding[] =>
  state.tables.flatMap(({ finding }) => (finding === null ? [] : [finding]));

/** Mistakes that groups make again and again. */
export const groupHabits = (state: ClassState): readonly GroupHabit[] =>
  habitsOf(
    state.judged.flatMap(({ judgement, causes }) => {
      const [cause] = causes;
      const isOwn =
        judgement.verdict === 'look again' &&
        cause !== undefined &&
        cause.kind !== 'unexplained' &&
        cause.ofChance > 0.5 * cause.probability;
      return isOwn ? [{ reading: judgement.reading, cause }] : [];
    }),
  );

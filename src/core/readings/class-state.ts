import { type CausePosterior, causePosterior } from './cause-posterior.ts';
import { type GroupHabit, habitsOf, type Shown } from './group-habit.ts';
import type { Judgement } from './judgement.ts';
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
 * makes a new one, in which only that reading's table is weighed again.
 */
export interface ClassState {
  readonly tables: readonly TableState[];
  /** Readings in the order they came, each by its table. */
  readonly order: readonly { readonly table: number; readonly place: number }[];
}

interface TableState {
  readonly table: StationTable;
  readonly weights: TableWeights;
  /** Posterior of each number of the table, before anything is known of its group. */
  readonly alone: readonly CausePosterior[];
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
});

function stateOf(table: StationTable, readings: readonly TakenReading[]): TableState {
  const weights = tableWeights(table, readings);
  const alone = weights.numbers.map((_, n) => causePosterior(weights, n, []));
  return { table, weights, alone, finding: tableFinding(table, weights, alone) };
}

/** The class with one more reading; `null` where there is no such setup. */
export function classWith(state: ClassState, reading: WrittenReading): ClassState | null {
  return classWithAll(state, [reading]);
}

/** The class with several more readings, in the order they came; `null` where one is of no known setup. */
export function classWithAll(state: ClassState, readings: readonly WrittenReading[]): ClassState | null {
  const added = state.tables.map((): TakenReading[] => []);
  const order = [...state.order];
  for (const reading of readings) {
    const at = placeOf(state, reading.setup);
    const table = at === null ? undefined : state.tables[at.table];
    if (at === null || table === undefined) return null;
    const here = added[at.table] ?? [];
    order.push({ table: at.table, place: table.weights.readings.length + here.length });
    here.push(taken(table.table, reading, at.setup));
  }
  return {
    order,
    tables: state.tables.map((each, n) => {
      const more = added[n] ?? [];
      return more.length === 0 ? each : stateOf(each.table, [...each.weights.readings, ...more]);
    }),
  };
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
export function judgements(state: ClassState): readonly Judgement[] {
  const groups = shownByGroup(state);
  const made = state.tables.map(({ table, weights, alone }) =>
    weights.readings.map((reading) => {
      const n = weights.numbers.indexOf(reading);
      if (n < 0) return judgementOf(table, weights, reading, []);
      const others = (groups.get(reading.reading.group) ?? []).filter(
        (each) => each.shown !== alone[n]?.shown,
      );
      const { causes } =
        reading.reading.group === '' || others.length === 0
          ? (alone[n] ?? { causes: [] })
          : causePosterior(
              weights,
              n,
              others.map(({ shown }) => shown),
            );
      return judgementOf(table, weights, reading, causes);
    }),
  );
  return state.order.flatMap(({ table, place }) => made[table]?.[place] ?? []);
}

function shownByGroup(state: ClassState) {
  const groups = new Map<string, { readonly shown: Shown; readonly reading: TakenReading }[]>();
  for (const { weights, alone } of state.tables)
    for (const [n, reading] of weights.numbers.entries()) {
      const shown = alone[n]?.shown;
      if (shown === undefined) continue;
      const list = groups.get(reading.reading.group) ?? [];
      list.push({ shown, reading });
      groups.set(reading.reading.group, list);
    }
  return groups;
}

/** What tables as a whole have to say, in the order of the tables. */
export const tableFindings = (state: ClassState): readonly TableFinding[] =>
  state.tables.flatMap(({ finding }) => (finding === null ? [] : [finding]));

/** Mistakes that groups make again and again. */
export const groupHabits = (state: ClassState): readonly GroupHabit[] => habitsOf(judgements(state));

import { lettersOf } from './files/group-words.ts';
import type { Prepared, PreparedSetup } from './prepare.ts';
import type { Judgement } from './readings/judgement.ts';
import { mistakesAt, type PlantableMistake, plantableMistakes } from './readings/plantable-mistake.ts';
import {
  type DrawnKit,
  drawnKit,
  foundBy,
  type Hand,
  placesFelt,
  writtenBy,
} from './readings/rehearsed-reading.ts';
import { type Review, review } from './review.ts';
import { type Random, randomFrom } from './uncertainty/random.ts';

/** What a rehearsal is asked for: the same seed gives the same class. */
export interface RehearsalOptions {
  readonly groups: number;
  readonly mistakes: number;
  readonly seed: number;
}

/** A class that never was, for the night before: what its groups wrote, and what happened there. */
export interface Rehearsal extends RehearsalOptions {
  readonly labels: readonly string[];
  readonly rows: readonly RehearsedRow[];
  readonly planted: readonly PlantedMistake[];
  /** The same as a readings file. */
  readonly csv: string;
  /** What the program makes of it, as it would of any class. */
  readonly review: Review;
  /** Sound readings that the program would have looked at again, in the order written. */
  readonly queriedThoughSound: readonly Judgement[];
}

/** What one group wrote at one setup. */
export interface RehearsedRow {
  readonly group: string;
  readonly at: PreparedSetup;
  readonly written: string;
  /** Place of its mistake in the list; `null` where it was taken well. */
  readonly planted: number | null;
}

/** A mistake that happened, with all readings that it led to. */
export interface PlantedMistake {
  readonly mistake: PlantableMistake;
  readonly table: string;
  /** Where it began. */
  readonly group: string;
  readonly readings: readonly PlantedReading[];
}

export interface PlantedReading {
  readonly group: string;
  readonly setup: string;
  readonly written: string;
  /** What the program says of it; `null` where it was left out of the file. */
  readonly judgement: Judgement | null;
}

/**
 * Simulated groups with planted mistakes: one true copy of the kit is drawn from what is not known of it,
 * every group reads every setup with its own hand, and as many mistakes as asked for are drawn from the
 * catalogue by their base rates, each kind once before any twice. A habit holds for all setups of its table that
 * its group reads from there on, something left at a station for all groups that come after; what is a slip stays alone.
 *
 * Groups come to a table in the order of their labels; setups for groups that wait are left out.
 */
export function rehearse(prepared: Prepared, options: RehearsalOptions): Rehearsal {
  const random = randomFrom(options.seed);
  const labels = labelsFor(prepared, options.groups);
  const setups = prepared.tables.flatMap((table) => table.setups.filter(({ isExtra }) => !isExtra));
  const plan = planted(setups, labels, options.mistakes, random);
  const kit = drawnKit(random);
  const decimal = prepared.visit?.decimal ?? 'point';
  const rows = labels.flatMap((group): readonly RehearsedRow[] => {
    const hand: Hand = { writesUnit: random.even() < WRITES_UNITS, decimal };
    const felt = feltBy(setups, kit, random);
    return setups.map((at) => {
      const n = plan.findIndex(({ where }) => where.has(placeOf(group, at)));
      const mistake = plan[n]?.where.get(placeOf(group, at)) ?? null;
      const written = felt.get(at) ?? writtenAt(at, kit, hand, mistake, random);
      return { group, at, written, planted: mistake === null ? null : n };
    });
  });
  const csv = csvOf(rows);
  const found = review(prepared, { name: 'rehearsal.csv', text: csv });
  const judgedAt = (row: RehearsedRow): Judgement | null =>
    found.judged.find(
      ({ judgement, at }) => judgement.reading.group === row.group && at.setup.mark === row.at.setup.mark,
    )?.judgement ?? null;
  return {
    ...options,
    labels,
    rows,
    planted: plan.map(({ mistake, table, group }, n) => ({
      mistake,
      table,
      group,
      readings: rows
        .filter((row) => row.planted === n)
        .map((row) => ({
          group: row.group,
          setup: row.at.setup.mark,
          written: row.written,
          judgement: judgedAt(row),
        })),
    })),
    csv,
    review: found,
    queriedThoughSound: rows.flatMap((row) => {
      const judgement = row.planted === null ? judgedAt(row) : null;
      return judgement?.verdict === 'look again' ? [judgement] : [];
    }),
  };
}

/** Share of groups that write the unit with the number: common practice, no source. */
const WRITES_UNITS = 0.3;

function labelsFor({ visit }: Prepared, groups: number): readonly string[] {
  const known = visit?.groupLabels ?? [];
  return Array.from({ length: groups }, (_, n) => known[n] ?? lettersOf(n));
}

const placeOf = (group: string, { setup }: PreparedSetup): string => `${group}\n${setup.mark}`;

interface Planned {
  readonly mistake: PlantableMistake;
  readonly table: string;
  readonly group: string;
  /** By group and setup: the mistake as it goes there. */
  readonly where: ReadonlyMap<string, PlantableMistake>;
}

/** Draws mistakes one after the other; a group or station that has one at a table gets no second there. */
function planted(
  setups: readonly PreparedSetup[],
  labels: readonly string[],
  count: number,
  random: Random,
): readonly Planned[] {
  const catalogue = setups.flatMap((at) => plantableMistakes(at).map((mistake) => ({ at, mistake })));
  const plan: Planned[] = [];
  const taken = new Set<string>();
  for (let tries = 0; plan.length < count && tries < 20 * count; tries += 1) {
    const used = new Map<string, number>();
    for (const { mistake } of plan) used.set(mistake.code, (used.get(mistake.code) ?? 0) + 1);
    const least = Math.min(...catalogue.map(({ mistake }) => used.get(mistake.code) ?? 0));
    const fresh = catalogue.filter(({ mistake }) => (used.get(mistake.code) ?? 0) === least);
    const drawn = weighted(fresh, random);
    const group = labels[Math.floor(random.even() * labels.length)];
    if (drawn === null || group === undefined) continue;
    const where = reach(drawn.at, drawn.mistake, group, setups, labels);
    if ([...where.keys()].some((place) => taken.has(place))) continue;
    for (const place of where.keys()) taken.add(place);
    plan.push({ mistake: drawn.mistake, table: drawn.at.setup.table, group, where });
  }
  return plan;
}

function weighted<T extends { readonly mistake: PlantableMistake }>(
  from: readonly T[],
  random: Random,
): T | null {
  let left = random.even() * from.reduce((sum, { mistake }) => sum + mistake.rate, 0);
  for (const each of from) {
    left -= each.mistake.rate;
    if (left < 0) return each;
  }
  return from.at(-1) ?? null;
}

/** Readings that a mistake leads to, with what it is at each of their setups. */
function reach(
  first: PreparedSetup,
  mistake: PlantableMistake,
  group: string,
  setups: readonly PreparedSetup[],
  labels: readonly string[],
): ReadonlyMap<string, PlantableMistake> {
  const own = new Map([[placeOf(group, first), mistake]]);
  const swapped = mistake.code === 'setup.swapped';
  if (mistake.persists === 'reading' && !swapped) return own;
  const together = setups.filter(({ setup }) => setup.table === first.setup.table);
  const from = swapped ? 0 : together.indexOf(first);
  for (const at of mistake.persists === 'station' ? together : together.slice(from)) {
    const here = mistakesAt(at).find((each) => isSame(each, mistake, first, at));
    if (here === undefined) continue;
    const groups = mistake.persists === 'station' ? labels.slice(labels.indexOf(group)) : [group];
    for (const each of groups) own.set(placeOf(each, at), here);
  }
  return own;
}

/** The same mistake at another setup; two rows that changed places are one mistake. */
function isSame(
  here: PlantableMistake,
  mistake: PlantableMistake,
  first: PreparedSetup,
  at: PreparedSetup,
): boolean {
  if (mistake.code !== 'setup.swapped')
    return here.code === mistake.code && here.facts?.hung === mistake.facts?.hung;
  return (
    here.code === mistake.code &&
    (at === first
      ? here.key === mistake.key
      : at.setup.mark === mistake.facts?.partner && here.facts?.partner === first.setup.mark)
  );
}

/** Orders that a group gives to what is only felt, table by table. */
function feltBy(
  setups: readonly PreparedSetup[],
  kit: DrawnKit,
  random: Random,
): ReadonlyMap<PreparedSetup, string> {
  const felt = setups.filter(({ setup }) => setup.watched === 'ease');
  const found = new Map<PreparedSetup, string>();
  for (const table of new Set(felt.map(({ setup }) => setup.table))) {
    const own = felt.filter(({ setup }) => setup.table === table);
    const places = placesFelt(
      own.map(({ setup }) => setup),
      kit,
      random,
    );
    for (const [n, at] of own.entries()) found.set(at, String(places[n] ?? ''));
  }
  return found;
}

/** What stands where a group can't read: a dash is "no reading" and not 0. */
const NOTHING_READ = '-';

function writtenAt(
  { setup }: PreparedSetup,
  kit: DrawnKit,
  hand: Hand,
  mistake: PlantableMistake | null,
  random: Random,
): string {
  const how = mistake?.how ?? null;
  const si = foundBy(how?.of === 'setup' ? how.changed : setup, kit, random);
  return si === null ? NOTHING_READ : writtenBy(setup, si, hand, how, random);
}

/** Comma-separated with every cell in quotes, so that a decimal comma stays what it is. */
const csvOf = (rows: readonly RehearsedRow[]): string =>
  [
    ['group', 'setup', 'reading', 'note'],
    ...rows.map(({ group, at, written }) => [group, at.setup.mark, written, '']),
  ]
    .map((cells) => `${cells.map((cell) => `"${cell.replace(/"/g, '""')}"`).join(',')}\n`)
    .join('');

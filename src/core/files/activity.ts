import type { Filled } from '../description/fields.ts';
import type { Role } from '../kit/role.ts';
import type { Newtons, Ratio, Seconds } from '../quantities/brands.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { Path } from './context.ts';
import type { OwnWords, Titled } from './titles.ts';

/** What is done at the tables, for any kit that has the parts: kinds and roles, never a kit's marks. */
export interface Activity extends Titled {
  readonly file: string;
  readonly decimal: DecimalMark;
  readonly age: AgeRange | null;
  /** Which data chart is printed: 1 more or less, 2 numbers, 3 work; `null` is all three. */
  readonly level: number | null;
  /** The most that these hands may pull. */
  readonly handLimit: Measured<Newtons> | null;
  /** Scatter of their readings: standard deviation as a share of the reading. */
  readonly handScatter: Measured<Ratio> | null;
  readonly period: ActivityPeriod;
  readonly tables: readonly ActivityTable[];
}

/** The time around the tables; `null` where the activity doesn't say. */
export interface ActivityPeriod {
  readonly introduction: Measured<Seconds> | null;
  readonly talkAtTheEnd: Measured<Seconds> | null;
  /** From one table to the next. */
  readonly walk: Measured<Seconds> | null;
  /** Tasks on paper for groups that wait. */
  readonly whileWaiting: readonly OwnWords[];
}

export interface AgeRange {
  readonly from: number;
  readonly to: number;
}

export interface ActivityTable extends Titled {
  readonly mark: string;
  readonly machine: string;
  readonly roles: readonly Role[];
  readonly setups: readonly ActivitySetup[];
  readonly stay: TableStay;
  readonly path: Path;
}

/** What a table says of its place in the period. */
export interface TableStay {
  /** How long a group is at it; `null` where the activity doesn't say. */
  readonly takes: Measured<Seconds> | null;
  readonly reset: Measured<Seconds> | null;
  /** Marks of tables that a group does before. */
  readonly after: readonly string[];
  readonly needsAdult: boolean;
  readonly mayBeLeftOut: boolean;
}

/** One way to set up the table's machine, and how it is read. */
export interface ActivitySetup extends StageWords {
  readonly mark: string;
  /** How it is pulled, read and watched, whatever the machine. */
  readonly generic: Filled;
  /** The setup that this one is compared with. */
  readonly partner: string | null;
  /** What the pair exists to show, in the activity's own words. */
  readonly shows: OwnWords | null;
  /** From the load to the hand, where the machine is made of stages. */
  readonly stages: readonly ActivityStage[];
}

export interface ActivityStage extends StageWords {
  readonly machine: string;
}

/** Roles by slot and the machine's own fields: of a setup, or of one stage of it. */
export interface StageWords {
  readonly roles: Readonly<Record<string, string>>;
  readonly fields: Filled;
  /** Keys that were written, so that a finding can point at them. */
  readonly written: readonly string[];
  readonly path: Path;
  /** Something in it could not be read: it can't be prepared. */
  readonly isFaulty: boolean;
}

/** The machine of a table, and those that a compound is made of. */
export const machinesAt = ({ machine, setups }: ActivityTable): readonly string[] => [
  machine,
  ...setups.flatMap(({ stages }) => stages.map((stage) => stage.machine)),
];

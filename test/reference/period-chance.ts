import { readFileSync } from 'node:fs';

/** A plan and what a second simulation found of it; `period-chance.py` writes them. */
export interface PeriodChanceCase {
  readonly name: string;
  readonly way: 'signal' | 'free';
  readonly signal: 'planned' | 'slowest' | null;
  readonly begins: number;
  readonly bell: number;
  readonly walk: number;
  readonly breaks: readonly (readonly [number, number])[];
  /** By table: who has to stand at it. */
  readonly adults: Readonly<Record<string, string>>;
  readonly rounds: readonly (readonly [number, number])[];
  readonly groups: readonly { readonly label: string; readonly arrives: number }[];
  readonly tables: readonly {
    readonly mark: string;
    readonly run: number;
    readonly runU: number;
    readonly reset: number;
    readonly resetU: number;
    readonly copies: number;
  }[];
  readonly split: { readonly table: number; readonly group: number; readonly rest: number };
  readonly stays: readonly {
    readonly group: string;
    readonly table: string;
    readonly copy: number;
    readonly from: number;
    readonly to: number;
    readonly round: number | null;
    readonly adult: string | null;
  }[];
  readonly expected: {
    readonly trials: number;
    readonly allDone: number;
    /** At 2.5 %, the middle and 97.5 %, and how dense they lie there. */
    readonly ends: readonly [number, number, number];
    readonly endsDensity: readonly [number, number, number];
    readonly unfinished: number;
    readonly unfinishedU: number;
    readonly waits: readonly number[];
    readonly waitsU: readonly number[];
    readonly idle: readonly number[];
    readonly idleU: readonly number[];
    readonly signalsDone: readonly number[];
  };
}

export const periodChances = (
  JSON.parse(readFileSync(new URL('./period-chance.json', import.meta.url), 'utf8')) as {
    readonly cases: readonly PeriodChanceCase[];
  }
).cases;

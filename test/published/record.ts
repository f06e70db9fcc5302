import { appendFileSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';

/** One check against an outside figure: what docs/validation.md is made from. */
export interface ValidationRecord {
  readonly topic: string;
  readonly id: string;
  readonly basis: string;
  readonly source: string;
  readonly quantity: string;
  readonly expected: number | string | boolean;
  readonly got: number | string | boolean;
  readonly unit: string;
  readonly tolerance: number | null;
}

/** A case, or one figure of it (`id.figure`), that no law here can express, with the reason. */
export interface NotRunRecord {
  readonly topic: string;
  readonly id: string;
  readonly gist: string;
  readonly reason: string;
}

/** The validation page gathers its records in a folder of its own, so that no old run gets in. */
export const recordsFolder =
  process.env.HANDSPIKE_RECORDS ?? join(import.meta.dirname, '../../build/records');

/** Keeps a finished check for the validation page; one file a topic, so that test files don't meet. */
export const record = (entry: ValidationRecord): void => append(`${entry.topic}.jsonl`, entry);

/** Keeps the reason why a case was not run. */
export const recordNotRun = (entry: NotRunRecord): void => append(`${entry.topic}.not-run.jsonl`, entry);

function append(file: string, entry: object): void {
  mkdirSync(recordsFolder, { recursive: true });
  appendFileSync(join(recordsFolder, file), `${JSON.stringify(entry)}\n`);
}

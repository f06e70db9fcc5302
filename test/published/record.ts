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

const folder = join(import.meta.dirname, '../../build/records');

/** Keeps a finished check for the validation page; one file a topic, so that test files don't meet. */
export function record(entry: ValidationRecord): void {
  mkdirSync(folder, { recursive: true });
  appendFileSync(join(folder, `${entry.topic}.jsonl`), `${JSON.stringify(entry)}\n`);
}

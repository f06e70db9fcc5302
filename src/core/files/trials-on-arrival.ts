import type { Predicted } from '../setups/difference.ts';
import { followArrival } from './arrival-entries.ts';

/** A trial reading on arrival, as somebody typed it at a device. */
export interface Trial {
  readonly setup: string;
  readonly written: string;
}

interface Table {
  readonly setups: readonly Predicted[];
  readonly notPrepared: readonly string[];
}

/** The tables as the trial readings on arrival have them; of a table the last one that was written counts. */
export function tablesAfterTrials<T extends Table>(
  tables: readonly T[],
  trials: readonly Trial[],
): readonly T[] {
  const taken = lastTrials(tables, trials);
  if (taken.length === 0) return tables;
  const arrival = taken.map(({ at, written }) => ({
    setup: at.setup.mark,
    written: trialWithUnit(at, written),
    path: [],
  }));
  return followArrival(tables, { file: '', arrival }).tables;
}

/** The last trial of each table that has one, with its setup. */
export function lastTrials<T extends Table>(tables: readonly T[], trials: readonly Trial[]) {
  return tables.flatMap((table) => {
    const last = trials.filter(({ setup }) => table.setups.some((each) => each.setup.mark === setup)).at(-1);
    const at = table.setups.find((each): each is T['setups'][number] => each.setup.mark === last?.setup);
    return last === undefined || at === undefined ? [] : [{ table, at, written: last.written }];
  });
}

/** A number alone is in the instrument's own marks. */
export function trialWithUnit({ prediction }: Predicted, written: string): string {
  const unit = prediction.graduations?.unit ?? '';
  return /^[-+]?[\d.,]+$/.test(written.trim()) ? `${written.trim()} ${unit}` : written;
}

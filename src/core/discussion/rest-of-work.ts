import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import type { ClassSummary } from '../readings/class-summary.ts';
import type { WorkEntry } from '../setups/work-account.ts';
import { type WorkAt, workOfSetups } from './saved-work.ts';
import { setupOfTalk, type TableOfTalk } from './table-of-talk.ts';

/** Where the rest went, at setups where the readings show that there is one. */
export interface RestFound {
  readonly setups: readonly RestAt[];
  /** Where the largest share was lost. */
  readonly shown: string;
}

export interface RestAt extends WorkAt {
  /** Share of what was given that is left over. */
  readonly share: number;
  /** What takes it by the measures of this kit, largest first; the shares add up to 1. */
  readonly causes: readonly RestCause[];
}

export interface RestCause {
  readonly by: WorkEntry['by'];
  /** Sentence key of the part or the rubbing. */
  readonly cause: string;
  readonly share: number;
}

/** How much is left over is the class's own figure; how it is shared out no reading tells, so the kit's measures do. */
export function restOfWork(tables: readonly TableOfTalk[], summary: ClassSummary): RestFound | NotDefined {
  const setups = workOfSetups(summary)
    .filter(({ saves }) => saves === 'no')
    .map((each) => ({
      ...each,
      share: 1 - each.work.efficiency.value,
      causes: causesAt(tables, each.setup),
    }));
  const [most] = [...setups].sort((a, b) => b.share - a.share);
  return most === undefined ? notDefined('discuss.no-rest') : { setups, shown: most.setup };
}

function causesAt(tables: readonly TableOfTalk[], mark: string): readonly RestCause[] {
  const account = setupOfTalk(tables, mark)?.prediction.account;
  if (account === undefined || isNotDefined(account)) return [];
  const taken = account.taken.filter(({ by }) => by !== 'load');
  const all = taken.reduce((sum, { joules }) => sum + joules, 0);
  return taken
    .map(({ by, cause, joules }) => ({ by, cause, share: joules / all }))
    .sort((a, b) => b.share - a.share);
}

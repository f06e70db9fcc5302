import { type NotDefined, notDefined } from '../description/not-defined.ts';
import type { Facts } from '../diagnostics/diagnostic.ts';
import type { LeftOut } from '../readings/class-readings.ts';
import type { ClassSummary } from '../readings/class-summary.ts';
import type { JudgedAt } from '../readings/judged-at.ts';
import type { TableFinding } from '../readings/table-finding.ts';

/** Numbers that surprised, and what probably happened; which group wrote them only where the teacher says so. */
export interface SurprisedFound {
  readonly numbers: readonly SurprisingNumber[];
  /** Numbers that ask for more work out than in, though nothing says that they were read wrongly. */
  readonly tooGood: readonly {
    readonly setup: string;
    readonly written: string;
    /** Work out over work in. */
    readonly efficiency: number;
    readonly u: number;
    readonly groups: readonly string[] | null;
  }[];
  /** What whole tables have in common. */
  readonly tables: readonly TableFinding[];
  /** All numbers that were read, and those of them that lie in the good range. */
  readonly read: number;
  readonly good: number;
}

export interface SurprisingNumber {
  readonly setup: string;
  readonly written: readonly string[];
  readonly because: LeftOut['because'];
  /** What probably happened. */
  readonly code: string;
  readonly facts?: Facts;
  /** How many readings; their groups, where they may be named. */
  readonly count: number;
  readonly groups: readonly string[] | null;
}

export function surprisingNumbers(
  judged: readonly JudgedAt[],
  tables: readonly TableFinding[],
  summary: ClassSummary,
  names: boolean,
): SurprisedFound | NotDefined {
  const numbers = summary.setups.flatMap(({ setup, leftOut }) => alike(setup, leftOut, names));
  const tooGood = summary.surprising
    .filter(({ counted }) => counted)
    .map(({ group, setup, written, efficiency, u }) => ({
      setup,
      written,
      efficiency,
      u,
      groups: names ? [group] : null,
    }));
  const withNumber = judged.filter(({ judgement: { value, good } }) => value !== null && good !== null);
  if (withNumber.length === 0) return notDefined('discuss.nothing-read');
  if (numbers.length + tooGood.length + tables.length === 0) return notDefined('discuss.no-surprise');
  return {
    numbers,
    tooGood,
    tables: names ? tables : tables.map(withoutGroups),
    read: withNumber.length,
    good: withNumber.filter(({ judgement: { verdict } }) => verdict === 'good').length,
  };
}

/** A station that changed did so with some group there: that is nobody's business on the wall. */
const withoutGroups = (finding: TableFinding): TableFinding => ({
  ...finding,
  behind: finding.behind.map((each) => ({ ...each, from: null })),
});

/** Readings of one setup with the same cause together. */
function alike(setup: string, leftOut: readonly LeftOut[], names: boolean): readonly SurprisingNumber[] {
  const byCause = new Map<string, LeftOut[]>();
  for (const each of leftOut) {
    const key = JSON.stringify([each.because, each.code, each.facts]);
    byCause.set(key, [...(byCause.get(key) ?? []), each]);
  }
  return [...byCause.values()].flatMap((each): readonly SurprisingNumber[] => {
    const [first] = each;
    if (first === undefined) return [];
    const { because, code, facts } = first;
    return [
      {
        setup,
        written: each.map(({ written }) => written),
        because,
        code,
        ...(facts === undefined ? {} : { facts }),
        count: each.length,
        groups: names ? each.map(({ group }) => group) : null,
      },
    ];
  });
}

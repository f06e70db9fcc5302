import { candidatesAt } from './calibration/candidate.ts';
import { withKnowledge } from './calibration/knowledge.ts';
import { measureNext, type NextMeasurement } from './calibration/measure-next.ts';
import { type Confused, confusedPairs } from './calibration/told-apart.ts';
import { bringTogether, type Prepared } from './prepare.ts';

/** A table with the one short measurement that would narrow its good ranges most; `null` where none would. */
export interface NextAtTable {
  readonly table: string;
  readonly title: string;
  readonly next: NextMeasurement | null;
}

/** Prepared tables, as they are known now -> what could be measured -> the best of it, table by table. */
export function measureNextAtTables(prepared: Prepared): readonly NextAtTable[] {
  const knowledge = prepared.bench?.known?.knowledge ?? null;
  const parts = prepared.kit?.parts ?? [];
  return prepared.tables.map(({ mark, title, setups }) => {
    const candidates = candidatesAt(setups, parts, (value) =>
      knowledge === null ? value : withKnowledge(value, knowledge),
    );
    return { table: mark, title, next: measureNext(setups, candidates) };
  });
}

/** Bench readings -> pairs of unknowns that they tie together -> the measurement that would tell each apart. */
export function confusedOnBench({ kit, activity, visit, bench }: Prepared): readonly Confused[] {
  if (kit === null || activity === null || bench === null) return [];
  // The laws as the files have them: what is known already stands in the covariance.
  const { tables } = bringTogether(kit, activity, visit);
  return confusedPairs(
    bench.fit,
    tables.flatMap(({ setups }) => candidatesAt(setups, kit.parts)),
  );
}

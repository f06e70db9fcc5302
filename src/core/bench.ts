import { candidatesAt } from './calibration/candidate.ts';
import { type Knowledge, withKnowledge } from './calibration/knowledge.ts';
import { measureNext, type NextMeasurement } from './calibration/measure-next.ts';
import { type CheckPoint, type ScaleCheck, scaleCheck } from './calibration/scale-check.ts';
import { type Confused, confusedPairs } from './calibration/told-apart.ts';
import { turnOverShiftBy } from './calibration/turn-over.ts';
import type { NotDefined } from './description/not-defined.ts';
import { gravityHere } from './files/gravity-here.ts';
import {
  measuredOfScale,
  type SpringScale,
  springScaleOf,
  turnOverShift,
} from './instruments/spring-scale.ts';
import type { Kit } from './kit/kit.ts';
import { forceOf, loadOf } from './parts/weight.ts';
import { bringTogether, type Prepared } from './prepare.ts';
import { type MetresPerSecondSquared, type Newtons, newtons } from './quantities/brands.ts';
import type { Measured } from './uncertainty/measured.ts';
import { atBest, propagate } from './uncertainty/propagate.ts';

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

/** A scale of the kit by itself, as its bench readings have it. */
export interface ScaleOnBench {
  readonly scale: string;
  /** Unit that its marks are in. */
  readonly unit: string;
  /** Its line against known masses; `null` with fewer than three of them. */
  readonly check: ScaleCheck | null;
  /** Its turn-over shift by the last turn-over test; `null` where none was made. */
  readonly shift: Measured<Newtons> | NotDefined | null;
  /** The same as the key takes it: by the file and all bench readings together. */
  readonly known: Measured<Newtons> | null;
}

/** Bench readings -> those of a scale by itself -> its calibration line and its turn-over shift. */
export function scalesOnBench({ kit, bench }: Prepared): readonly ScaleOnBench[] {
  if (kit === null || bench === null) return [];
  const gravity = gravityHere(null, kit.gravity).gravity;
  const used = bench.fit.readings.flatMap(({ observation, isUsed }) => {
    const what = bench.lines.find(({ line }) => String(line) === observation.name)?.what;
    return isUsed && what !== undefined ? [{ what, value: observation.value, date: observation.date }] : [];
  });
  return kit.parts
    .filter(({ kind, isFaulty }) => kind === 'spring scale' && !isFaulty)
    .flatMap((part): readonly ScaleOnBench[] => {
      const scale = springScaleOf(part);
      const { mass, accuracy, tubeFriction } = scale.inputs;
      const points = used.flatMap(({ what, value }) => pointOf(what, value, part.mark, kit, gravity));
      const last = used
        .filter(({ what }) => what === `${part.mark} turned over`)
        .sort((a, b) => (a.date < b.date ? -1 : 1))
        .at(-1);
      if (points.length === 0 && last === undefined) return [];
      const tested = { mark: part.mark, mass, accuracy, gravity, graduations: scale.graduations };
      const shift =
        last === undefined
          ? null
          : turnOverShiftBy({ ...tested, shows: newtons(last.value), sticksBy: tubeFriction.value });
      return [
        {
          scale: part.mark,
          unit: scale.graduations.unit,
          check: scaleCheck(points, { graduation: scale.graduations.step }),
          shift,
          known: last === undefined ? null : shiftKnown(scale, gravity, bench.fit.knowledge),
        },
      ];
    });
}

function shiftKnown(
  scale: SpringScale,
  gravity: Measured<MetresPerSecondSquared>,
  knowledge: Knowledge,
): Measured<Newtons> | null {
  const known = <Q extends number>(value: Measured<Q>): Measured<Q> => withKnowledge(value, knowledge);
  return propagate(
    (at) => turnOverShift(scale, (value) => at(known(value)), at(gravity)),
    [gravity, ...measuredOfScale(scale).map(known)],
  );
}

/** A known mass hung from the scale, where the reading is of that. */
function pointOf(
  what: string,
  shown: number,
  scale: string,
  kit: Kit,
  gravity: Measured<MetresPerSecondSquared>,
): readonly CheckPoint[] {
  const before = `${scale} with `;
  const load = what.startsWith(before)
    ? kit.parts.find(({ mark, kind }) => kind === 'weight' && mark === what.slice(before.length))
    : undefined;
  if (load === undefined) return [];
  return [{ weight: forceOf(loadOf(load.fields), atBest, atBest(gravity)), shown }];
}

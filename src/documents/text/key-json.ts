import type { Prepared } from '../../core/prepare.ts';
import type { GoodRange, Prediction } from '../../core/setups/prediction.ts';
import { standardUncertainty } from '../../core/uncertainty/measured.ts';
import { plainJson } from './plain-json.ts';
import { goodRangeOf, marksOf } from './prediction-text.ts';

/**
 * The answer key as JSON. Figures are SI (newtons, metres, turns) from the same prediction that every
 * page prints; `marks` has the same figures in the instrument's own graduations.
 */
export const keyJson = (prepared: Prepared): string =>
  plainJson({
    handspike: 'key 1',
    kit: { serial: prepared.kit?.serial ?? null, name: prepared.kit?.name ?? null },
    activity: prepared.activity?.title ?? null,
    date: prepared.visit?.date ?? null,
    gravity:
      prepared.gravity === null
        ? null
        : { value: prepared.gravity.gravity.value, unit: 'm/s²', from: prepared.gravity.from },
    tables: prepared.tables.map((table) => ({
      table: table.mark,
      title: table.title,
      machine: table.machine,
      setups: table.setups.map(({ prediction }) => predictionJson(prediction)),
      notPrepared: table.notPrepared,
    })),
  });

/** A prediction as plain data, without its working. */
export function predictionJson(prediction: Prediction) {
  const {
    working: _,
    table: __,
    read: ___,
    lower: ____,
    pull,
    diagnostics,
    graduations,
    ...rest
  } = prediction;
  const good = goodRangeOf(prediction);
  return {
    ...rest,
    pull: pull === null ? null : { value: pull.value, u: standardUncertainty(pull), unit: 'N' },
    graduation: graduations,
    marks: good === null ? null : inMarks(prediction, good),
    findings: diagnostics.map(({ code, severity, facts }) => ({ code, severity, facts })),
  };
}

function inMarks(prediction: Prediction, good: GoodRange) {
  const marks = marksOf(prediction);
  const { outcome } = prediction;
  const count = (si: number): number => Number((si / marks.unitSi).toPrecision(12));
  return {
    unit: marks.unit,
    from: count(good.from),
    to: count(good.to),
    ...(outcome.kind === 'reading' ? { expected: count(outcome.expected) } : {}),
    ...(outcome.kind === 'band' ? { lower: count(outcome.lower), upper: count(outcome.upper) } : {}),
    ...(outcome.kind === 'moves under the scale' ? { shows: count(outcome.shows) } : {}),
  };
}

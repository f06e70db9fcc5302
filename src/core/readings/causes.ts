import { isNotDefined } from '../description/not-defined.ts';
import { predict } from '../setups/predict.ts';
import { predictScale } from '../setups/predict-scale.ts';
import { predictTally } from '../setups/predict-tally.ts';
import type { Prediction } from '../setups/prediction.ts';
import { hangAngle, hangsFromTheMachine, type Setup } from '../setups/setup.ts';
import { slopeOf } from '../setups/shown.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { type Figure, figureOf } from './figure.ts';
import { pullUnits, type ReadingUnit, travelUnits, turnUnits } from './written-reading.ts';

/**
 * One explanation of a reading: where the figure then lies, in which unit it was then written, and
 * how often that happens. `rate` is an assumption: common practice, no source.
 */
export interface Cause {
  readonly code: string;
  readonly kind: 'good' | 'doing' | 'reading';
  readonly rate: number;
  /** Where the instrument would stand; `null` where it would rest on its stop. */
  readonly figure: Figure | null;
  /** Unit that the group wrote in, whatever it thought; `null` is the unit it says. */
  readonly unit: ReadingUnit | null;
}

/** Base rates of the mistakes that any setup with a scale can see. */
export const BASE_RATES = {
  'zero-from-hook-down': 0.06,
  'zero-set-in-place': 0.03,
  'lowering-for-raising': 0.03,
  'start-for-moving': 0.03,
  'raising-for-lowering': 0.03,
  'moving-for-start': 0.03,
  'in-grams': 0.03,
  'in-newtons': 0.03,
  'in-ounces': 0.01,
  'in-pounds': 0.005,
  'in-kilograms': 0.005,
  carried: 0.02,
  schoolbook: 0.01,
  'in-millimetres': 0.01,
  'in-centimetres': 0.02,
  'in-inches': 0.01,
  'in-metres': 0.002,
} as const;

/** All explanations of a reading at a setup, the good one first: where the prediction stands today. */
export function causesOf(
  setup: Setup,
  own: ReadingUnit,
  prediction: Prediction = predict(setup),
): readonly Cause[] {
  const reading = setup.watched === 'pull' ? predictScale : predictTally;
  const figure = figureOf(prediction.outcome);
  const packed = prediction.rekeyedBy === null ? figure : figureOf(reading(setup).outcome);
  const found: Cause[] = [];
  for (const { code, rate, changed } of changedSetups(setup)) {
    const { outcome } = reading(changed);
    if (isNotDefined(outcome) || outcome.kind === 'scale on the other side') continue;
    const there = figureOf(outcome);
    if (there === null && outcome.kind !== 'on its stop') continue;
    if (isSame(there, packed)) continue;
    found.push({ code, kind: 'doing', rate, figure: followed(there, packed, figure), unit: null });
  }
  for (const unit of unitsFor(setup))
    if (unit.name !== own.name && figure !== null)
      found.push({
        code: `reading.in-${unit.name}`,
        kind: 'reading',
        rate: rateOf(`in-${unit.name}`),
        figure,
        unit,
      });
  const schoolbook = schoolbookFigure(prediction, figure);
  if (schoolbook !== null)
    found.push({
      code: 'reading.schoolbook',
      kind: 'reading',
      rate: BASE_RATES.schoolbook,
      figure: schoolbook,
      unit: null,
    });
  const rest = found.reduce((sum, cause) => sum + cause.rate, 0);
  return [{ code: 'good', kind: 'good', rate: Math.max(0.5, 1 - rest), figure, unit: null }, ...found];
}

/**
 * The frictionless figure, where the scale would hardly show it: somebody reckoned instead of reading.
 * It is held to no finer than a reading, so that a slip at the scale that leads to the same figure is
 * named before it.
 */
function schoolbookFigure({ textbook }: Prediction, figure: Figure | null): Figure | null {
  if (figure === null || isNotDefined(textbook)) return null;
  const reckoned = { low: textbook.value, high: textbook.value, u: figure.u };
  return isSame(reckoned, figure) ? null : reckoned;
}

/** A slip is made on the same apparatus: its figure follows the arrival reading as the good one does. */
function followed(there: Figure | null, packed: Figure | null, now: Figure | null): Figure | null {
  if (there === null || packed === null || now === null || packed === now) return there;
  const variance = there.u ** 2 - packed.u ** 2 + now.u ** 2;
  return {
    low: there.low + now.low - packed.low,
    high: there.high + now.high - packed.high,
    u: Math.max(Math.sqrt(Math.max(variance, 0)), Math.min(there.u, now.u)),
  };
}

export const unitsFor = (setup: Setup): readonly ReadingUnit[] =>
  setup.watched === 'pull' ? pullUnits : setup.watched === 'turns' ? turnUnits : travelUnits;

/** The setup as it stands after each doing mistake. */
function changedSetups(setup: Setup) {
  const stations = setup.machine.mistakes.flatMap((mistake) => {
    const station = mistake.change(setup.station);
    return station === null
      ? []
      : [{ code: mistake.code, rate: mistake.baseRate, changed: { ...setup, station } }];
  });
  return setup.watched === 'pull'
    ? [...zeroMistakes(setup), ...carryMistakes(setup), ...wayMistakes(setup), ...stations]
    : stations;
}

/** The hand took the weight of a scale that ought to hang. */
function carryMistakes(setup: Setup) {
  return hangsFromTheMachine(setup.hang) && !setup.handCarries
    ? [
        {
          code: 'scale.carried',
          rate: BASE_RATES.carried,
          changed: { ...setup, handCarries: true },
        },
      ]
    : [];
}

/** The scale kept its zero from another position, or was zeroed again where the card says not to. */
function zeroMistakes(setup: Setup) {
  const turned = hangAngle(setup.hang, slopeOf(setup), atBest) !== 0;
  if (!turned || setup.scale === null) return [];
  return setup.zeroed === 'hook down'
    ? [
        {
          code: 'scale.zero-set-in-place',
          rate: BASE_RATES['zero-set-in-place'],
          changed: { ...setup, zeroed: 'in place' as const },
        },
      ]
    : [
        {
          code: 'scale.zero-from-hook-down',
          rate: BASE_RATES['zero-from-hook-down'],
          changed: { ...setup, zeroed: 'hook down' as const },
        },
      ];
}

/** Read in another way than asked: on the way back, on the way up, or at the jerk of the start. */
function wayMistakes(setup: Setup) {
  const other = (code: keyof typeof BASE_RATES, way: Setup['way']) => ({
    code: `way.${code}`,
    rate: BASE_RATES[code],
    changed: { ...setup, way },
  });
  switch (setup.way) {
    case 'raise':
      return [other('lowering-for-raising', 'lower'), other('start-for-moving', 'start')];
    case 'lower':
      return [other('raising-for-lowering', 'raise')];
    case 'start':
      return [other('moving-for-start', 'raise')];
    case 'held':
      return [];
  }
}

const rateOf = (name: string): number => BASE_RATES[name as keyof typeof BASE_RATES] ?? 0.005;

/** A mistake that changes nothing here can't be told from a good reading, and need not be. */
const isSame = (a: Figure | null, b: Figure | null): boolean =>
  a !== null && b !== null && Math.abs(a.low - b.low) + Math.abs(a.high - b.high) < (a.u + b.u) / 10;

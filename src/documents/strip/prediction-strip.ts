import { graduationsOutward } from '../../core/instruments/graduations.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import type { ScaleSheet } from '../pages/sheet.ts';
import { goodRangeOf, marksOf } from '../text/prediction-text.ts';
import type { Strip } from './reading-strip.ts';

/**
 * The strip of a prediction: a scale from its stop to its range; turns and lengths from nothing to a
 * little over the good range. `null` where there is nothing to read off.
 */
export function predictionStrip(prediction: Prediction, scale: ScaleSheet | null): Strip | null {
  const graduations = scale?.graduations ?? marksOf(prediction);
  const good = goodRangeOf(prediction);
  if (prediction.watched === 'ease') return null;
  if (scale === null && good === null) return null;
  const beyond = good === null ? 0 : good.to + Math.max(good.to - good.from, 4 * graduations.step);
  const shown =
    scale === null
      ? graduationsOutward(graduations, Math.min(0, good?.from ?? 0), beyond)
      : { from: scale.stop, to: scale.range };
  return { graduations, ...shown, ends: scale !== null, good, expected: expectedOf(prediction), dots: [] };
}

function expectedOf({ outcome }: Prediction): readonly number[] {
  switch (outcome.kind) {
    case 'reading':
      return [outcome.expected];
    case 'band':
      return [outcome.lower, outcome.upper];
    case 'moves under the scale':
      return [outcome.shows];
    default:
      return [];
  }
}

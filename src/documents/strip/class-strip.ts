import { graduationsOutward } from '../../core/instruments/graduations.ts';
import type { PreparedSetup } from '../../core/prepare.ts';
import type { Judgement } from '../../core/readings/judgement.ts';
import type { ScaleSheet } from '../pages/sheet.ts';
import { setupSheet } from '../prepare.ts';
import { predictionStrip } from './prediction-strip.ts';
import { readingStrip, type Strip, type StripOptions } from './reading-strip.ts';

/** A sheet is drawn anew whenever it is asked for; its scale stays what it is. */
const scales = new WeakMap<PreparedSetup['setup'], ScaleSheet | null>();
function scaleOf(at: PreparedSetup): ScaleSheet | null {
  const known = scales.get(at.setup);
  const scale = known === undefined ? setupSheet(at).scale : known;
  scales.set(at.setup, scale);
  return scale;
}

/** A reading on a strip: what was made of it, and the label that its dot bears. */
export interface DotOnStrip {
  readonly judgement: Judgement;
  readonly label: string;
}

/**
 * The strip of a setup with a dot for each reading that is a number; an order felt has none. `null` where
 * there is nothing to read off.
 */
export function classStrip(
  at: PreparedSetup,
  readings: readonly DotOnStrip[],
  options: StripOptions,
): string | null {
  const strip = predictionStrip(at.prediction, scaleOf(at));
  if (strip === null) return null;
  const dots = readings.flatMap(({ judgement, label }): Strip['dots'] => {
    const { value, verdict } = judgement;
    if (value === null) return [];
    return [{ label, si: value, ...(verdict === 'look again' ? { lookAgain: true as const } : {}) }];
  });
  return readingStrip(withDots(strip, dots), options);
}

/** A count or a length far off lengthens its strip, up to a size at which the good range can still be seen. */
function withDots(strip: Strip, dots: Strip['dots']): Strip {
  if (strip.ends) return { ...strip, dots };
  const most = Math.min(Math.max(strip.to, ...dots.map(({ si }) => si)), 3 * strip.to);
  return { ...strip, ...graduationsOutward(strip.graduations, strip.from, most), dots };
}

import { predict } from '../setups/predict.ts';
import type { Prediction } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { type ClassOptions, classOf, classWith, judgements } from './class-state.ts';
import type { Judgement } from './judgement.ts';
import type { WrittenReading } from './written-reading.ts';

/** Judges one reading against the setup it says it is from: a class of one group that has read once. */
export function judge(
  reading: WrittenReading,
  setup: Setup,
  prediction: Prediction = predict(setup),
  options: ClassOptions = {},
): Judgement {
  const table = { mark: setup.table, setups: [{ setup, prediction }] };
  const state = classWith(classOf([table], options), { ...reading, setup: setup.mark });
  const [judged] = state === null ? [] : judgements(state);
  if (judged === undefined) throw new RangeError(`setup ${setup.mark} is not in its own table`);
  return { ...judged, reading };
}

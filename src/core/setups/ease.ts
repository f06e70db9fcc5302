import { notDefined } from '../description/not-defined.ts';
import type { Prediction } from './prediction.ts';

/**
 * Order of ease among the setups of one table that are felt and not read: the least pull is the
 * easiest. Which of them a group will call easiest follows from the pull alone.
 */
export function rankEase(predictions: readonly Prediction[]): readonly Prediction[] {
  const felt = predictions
    .filter((each) => each.watched === 'ease' && each.pull !== null && each.pull.value >= 0)
    .sort((a, b) => (a.pull?.value ?? 0) - (b.pull?.value ?? 0));
  return predictions.map((prediction) => {
    if (prediction.watched !== 'ease') return prediction;
    const order = felt.indexOf(prediction) + 1;
    return {
      ...prediction,
      graduations: null,
      budget: [],
      narrows: null,
      outcome: order === 0 ? notDefined('setup.no-pull-to-feel') : { kind: 'ease', order, of: felt.length },
    };
  });
}

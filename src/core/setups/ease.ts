import { notDefined } from '../description/not-defined.ts';
import { easeOrder, FEEL } from '../instruments/ease-score.ts';
import type { Prediction } from './prediction.ts';

/**
 * Order of ease among the setups of one table that are felt and not read: the least pull is the
 * easiest, and pulls that a hand can't tell apart share a place.
 */
export function rankEase(predictions: readonly Prediction[]): readonly Prediction[] {
  const felt = predictions.filter((each) => each.watched === 'ease' && (each.pull?.value ?? -1) >= 0);
  const places = easeOrder(
    felt.map((each) => each.pull?.value ?? 0),
    FEEL,
  );
  return predictions.map((prediction) => {
    if (prediction.watched !== 'ease') return prediction;
    const order = places[felt.indexOf(prediction)];
    return {
      ...prediction,
      graduations: null,
      outcome:
        order === undefined ? notDefined('setup.no-pull-to-feel') : { kind: 'ease', order, of: felt.length },
    };
  });
}

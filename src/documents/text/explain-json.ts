import type { Prediction } from '../../core/setups/prediction.ts';
import { equationText } from './explain-text.ts';
import { predictionJson } from './key-json.ts';
import { plainJson } from './plain-json.ts';

/** The working of some setups as JSON: each line with its formula, its numbers and its result, SI. */
export const explainJson = (predictions: readonly Prediction[]): string =>
  plainJson({
    handspike: 'working 1',
    setups: predictions.map((prediction) => ({
      table: prediction.table,
      ...predictionJson(prediction),
      working: prediction.working().map((line) => ({ ...line, printed: equationText(line) })),
    })),
  });

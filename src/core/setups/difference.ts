import type { Diagnostic, QuantityFact } from '../diagnostics/diagnostic.ts';
import { forceFact } from '../diagnostics/facts.ts';
import type { GoodRange, Prediction } from './prediction.ts';
import type { Setup } from './setup.ts';

/** Setups and predictions of one table, side by side. */
export interface Predicted {
  readonly setup: Setup;
  readonly prediction: Prediction;
}

/**
 * Partner setups exist to show a difference: where their good ranges overlap, one reading each does
 * not show it. Each pair is said once.
 */
export function differenceToSee(table: readonly Predicted[]): readonly Diagnostic[] {
  return table.flatMap((one, n): readonly Diagnostic[] => {
    const other = table.find((each) => each.setup.mark === one.setup.partner);
    if (other === undefined) return [];
    const isSaidBefore = other.setup.partner === one.setup.mark && table.indexOf(other) < n;
    const [a, b] = [goodOf(one.prediction), goodOf(other.prediction)];
    if (isSaidBefore || a === null || b === null || one.prediction.watched !== 'pull') return [];
    if (a.to < b.from || b.to < a.from) return [];
    return [
      {
        code: 'no-difference-to-see',
        severity: 'warning',
        at: one.setup.place('partner'),
        facts: {
          first: one.setup.mark,
          firstFrom: mark(a.from, one),
          firstTo: mark(a.to, one),
          second: other.setup.mark,
          secondFrom: mark(b.from, other),
          secondTo: mark(b.to, other),
        },
      },
    ];
  });
}

/** In the marks of the scale that it is read on. */
const mark = (si: number, { setup }: Predicted): QuantityFact => ({
  ...forceFact(si),
  ...(setup.scale === null ? {} : { unit: setup.scale.graduations.unit }),
});

const goodOf = ({ outcome }: Prediction): GoodRange | null => ('good' in outcome ? outcome.good : null);

import { isNotDefined } from '../description/not-defined.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { type BestFigure, bestFigure } from './best-figure.ts';
import { makeSetup, type SetupDescription } from './make-setup.ts';
import { predict } from './predict.ts';
import type { Setup } from './setup.ts';
import { type Option, spotKey, withOption } from './spot.ts';
import { newFindings, standsWell } from './trouble.ts';

/** A setup that could stand here, good enough at the best values to be looked at more closely. */
export interface CandidateSetup {
  readonly setup: Setup;
  readonly best: BestFigure;
  /** Standard deviation of one reading at one apparatus, near enough to sort by. */
  readonly u: number;
}

/** Builds setups from what is changed in one, each once, and keeps those that stand well. */
export interface Builder {
  readonly built: () => number;
  readonly with: (options: readonly Option[]) => CandidateSetup | null;
  /** Whether the whole prediction finds nothing new against it. */
  readonly holds: (candidate: CandidateSetup) => boolean;
}

/**
 * A builder for one setup. `known` puts in what the bench readings tell; `atMost` is a bound on what it
 * builds, after which it finds nothing more.
 */
export function builderFor(
  description: SetupDescription,
  known: (setup: Setup) => Setup,
  budget: { left: number },
): Builder {
  const before = new Set(findingsOf(description, known).map(({ code }) => code));
  const kept = new Map<string, CandidateSetup | null>();
  let built = 0;
  return {
    built: () => built,
    with: (options) => {
      const key = options
        .map(({ spot, text }) => `${spotKey(spot)}=${text}`)
        .sort()
        .join('|');
      const found = kept.get(key);
      if (found !== undefined) return found;
      if (budget.left <= 0) return null;
      budget.left -= 1;
      built += 1;
      const candidate = candidateFrom(options.reduce(withOption, description), before, known);
      kept.set(key, candidate);
      return candidate;
    },
    holds: ({ setup }) => newFindings(predict(setup).diagnostics, before).length === 0,
  };
}

function findingsOf(description: SetupDescription, known: (setup: Setup) => Setup): readonly Diagnostic[] {
  const { setup, diagnostics } = makeSetup(description);
  return [...diagnostics, ...(setup === null ? [] : predict(known(setup)).diagnostics)];
}

function candidateFrom(
  description: SetupDescription,
  before: ReadonlySet<string>,
  known: (setup: Setup) => Setup,
): CandidateSetup | null {
  const made = makeSetup(description);
  if (made.setup === null || newFindings(made.diagnostics, before).length > 0) return null;
  const setup = known(made.setup);
  const best = bestFigure(setup);
  if (isNotDefined(best) || !standsWell(setup, best.upper)) return null;
  return { setup, best, u: deviationOf(setup, best) };
}

/** Graduation, hand, rubbing of the tube and width of a band, each as a standard deviation. */
function deviationOf({ watched, scale, marks, reader, tapped }: Setup, best: BestFigure): number {
  if (watched !== 'pull' || scale === null) return (marks?.step ?? 0) / Math.sqrt(12);
  const lag = tapped ? 0 : scale.inputs.tubeFriction.value;
  return Math.hypot(
    scale.graduations.step / Math.sqrt(12),
    reader.scatter * best.upper,
    lag / Math.sqrt(12),
    (best.upper - best.lower) / Math.sqrt(12),
  );
}

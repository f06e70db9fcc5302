import { isNotDefined, type NotDefined } from '../description/not-defined.ts';
import type { Diagnostic, Facts, QuantityFact, Severity } from '../diagnostics/diagnostic.ts';
import { forceFact } from '../diagnostics/facts.ts';
import type { Balance } from '../statics/balance.ts';
import { COVERAGE_95, type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import type { Outcome } from './prediction.ts';
import { leastPull } from './pull.ts';
import type { Setup } from './setup.ts';

/** Fewer graduations than this above the stop teach little: one graduation is then a fifth of the reading. */
const FEW_GRADUATIONS = 5;

/** A good range wider than this share of the scale calls nearly every reading good. */
const SAYS_NOTHING = 0.6;

/**
 * What makes a setup impossible or useless to read, with the number that shows it. A pull beyond the
 * scale is an error; what can still be set up but teaches little is a warning.
 */
export function setupLimits(
  setup: Setup,
  balance: Balance | NotDefined,
  pull: Measured | null,
  outcome: Outcome,
): readonly Diagnostic[] {
  const found: Diagnostic[] = [];
  const say = (code: string, severity: Severity, field: string | null, facts: Facts): void => {
    found.push({ code, severity, at: setup.place(field), facts: { setup: setup.mark, ...facts } });
  };
  // Turns and travel are geometry: what a pull would be like is not asked there.
  const isFelt = setup.watched === 'pull' || setup.watched === 'ease';
  if (isFelt && !isNotDefined(balance))
    found.push(...setup.machine.limits(setup.station, atBest, balance, setup.place));
  if (setup.watched === 'pull') scaleLimits(setup, outcome, say);
  if (isFelt && setup.way === 'lower' && pull !== null) comingBack(setup, pull, say);
  if (isFelt && !isNotDefined(balance)) handLimit(setup, balance, say);
  return found;
}

type Say = (code: string, severity: Severity, field: string | null, facts: Facts) => void;

/** Forces in the marks of the scale that shows them. */
const onMarks =
  (setup: Setup) =>
  (si: number, u?: number): QuantityFact => {
    const unit = setup.scale?.graduations.unit;
    return unit === undefined ? forceFact(si, u) : { ...forceFact(si, u), unit };
  };

function scaleLimits(setup: Setup, outcome: Outcome, say: Say): void {
  const scale = setup.scale?.mark ?? '';
  const shown = onMarks(setup);
  switch (outcome.kind) {
    case 'on its stop':
      say('pull-below-the-stop', 'warning', 'scale', {
        scale,
        shows: shown(outcome.wouldShow),
        stop: shown(outcome.stop),
      });
      return;
    case 'off the scale':
      say(outcome.overloads ? 'scale-overload' : 'scale-range', 'error', 'scale', {
        scale,
        shows: shown(outcome.wouldShow),
        range: shown(outcome.range),
      });
      return;
    case 'moves under the scale':
      say('moves-under-the-scale', 'warning', 'scale', {
        scale,
        needed: shown(outcome.needed),
        weight: shown(outcome.ownWeight),
        shows: shown(outcome.shows),
      });
      return;
    case 'scale on the other side':
      say('scale-on-the-other-side', 'warning', null, { force: shown(outcome.force) });
      return;
    case 'reading':
    case 'band':
      smallReading(setup, outcome, say);
      return;
    case 'not-defined':
      say('no-reading', 'warning', 'read', { ...outcome.facts, because: outcome.because });
      return;
    case 'ease':
      return;
  }
}

/** Whether it comes back at all hangs on what nobody measured; or the scale's weight holds it up. */
function comingBack(setup: Setup, pull: Measured, say: Say): void {
  const shown = onMarks(setup);
  const u = standardUncertainty(pull);
  const least = leastPull(setup, atBest);
  if (Math.abs(pull.value) < COVERAGE_95 * u)
    say('may-not-come-back', 'warning', 'read', {
      pull: shown(pull.value),
      either: shown(COVERAGE_95 * u),
    });
  else if (pull.value >= 0 && pull.value < least)
    say('held-by-the-scale', 'warning', 'scale', {
      scale: setup.scale?.mark ?? '',
      pull: shown(pull.value),
      weight: shown(least),
    });
}

function smallReading(setup: Setup, outcome: Extract<Outcome, { kind: 'reading' | 'band' }>, say: Say): void {
  const { scale } = setup;
  if (scale === null) return;
  const shown = onMarks(setup);
  const highest = outcome.kind === 'band' ? outcome.upper : outcome.expected;
  const graduations = (highest - scale.stop) / scale.graduations.step;
  if (graduations < FEW_GRADUATIONS)
    say('few-graduations', 'warning', 'scale', {
      scale: scale.mark,
      shows: shown(highest),
      graduation: shown(scale.graduations.step),
      graduations: Math.round(graduations * 10) / 10,
    });
  const { from, to } = outcome.good;
  if (to - from > SAYS_NOTHING * (scale.range - scale.stop))
    say('range-says-nothing', 'warning', 'scale', {
      scale: scale.mark,
      from: shown(from),
      to: shown(to),
      range: shown(scale.range),
    });
  const least = leastPull(setup, atBest);
  if (least > 0 && setup.way !== 'lower' && highest - COVERAGE_95 * outcome.u < least)
    say('may-move-under-the-scale', 'warning', 'scale', {
      scale: scale.mark,
      weight: shown(least),
      shows: shown(highest, outcome.u),
    });
}

function handLimit(setup: Setup, balance: Balance, say: Say): void {
  const limit = setup.reader.handLimit;
  if (limit === null || balance.effort <= limit) return;
  say('hand-limit', 'warning', 'load', { pull: forceFact(balance.effort), limit: forceFact(limit) });
}

import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { forceOf } from '../parts/weight.ts';
import type { Newtons } from '../quantities/brands.ts';
import type { Balance } from '../statics/balance.ts';
import { atBest, propagate } from '../uncertainty/propagate.ts';
import { assumedIn } from './budget.ts';
import { predictScale, type Reading } from './predict-scale.ts';
import { predictTally } from './predict-tally.ts';
import type { Prediction, Textbook } from './prediction.ts';
import { balanceFor, effortOf, inputsOf, leastPull } from './pull.ts';
import type { Setup } from './setup.ts';
import { setupLimits } from './setup-limits.ts';
import { setupWorking } from './setup-working.ts';
import { workAccount } from './work-account.ts';

/** Pull travel that the work account is for where the file states no lift: per decimetre of line. */
const ACCOUNT_TRAVEL = 0.1;

/**
 * All that follows from one setup: what the instrument will show on this apparatus, how far off is
 * still good, the schoolbook's figure beside it, and where the work goes.
 *
 * Linear law of JCGM 100; correlations of shared parts are kept in the unknowns.
 */
export function predict(setup: Setup): Prediction {
  const balance = balanceFor(setup, atBest, setup.way);
  const reading: Reading =
    setup.watched === 'turns' || setup.watched === 'travel' ? predictTally(setup) : predictScale(setup);
  const inputs = inputsOf(setup);
  const ideal = setup.machine.idealAdvantage(setup.station, atBest);
  const load = forceOf(setup.load, atBest, atBest(setup.gravity));
  return {
    table: setup.table,
    setup: setup.mark,
    machine: setup.machine.name,
    watched: setup.watched,
    way: setup.way,
    graduations: setup.marks ?? setup.scale?.graduations ?? null,
    outcome: reading.outcome,
    pull: propagate<Newtons>((at) => effortOf(balanceFor(setup, at, setup.way)), inputs),
    textbook: textbookOf(setup, load),
    differences: setup.machine.differences(setup.station, atBest),
    budget: reading.budget,
    narrows: reading.narrows,
    idealAdvantage: isNotDefined(ideal) ? ideal : ideal.advantage,
    actualAdvantage: actualAdvantage(balance, load),
    velocityRatio: isNotDefined(balance) ? balance : balance.velocityRatio,
    efficiency: efficiencyOf(setup, balance),
    account: accountOf(setup, balance),
    assumed: assumedIn(inputs),
    diagnostics: setupLimits(setup, balance, reading.outcome),
    working: () => setupWorking(setup, reading),
  };
}

/** The schoolbook's figure: load over ideal advantage, or the counted figure itself. */
function textbookOf(setup: Setup, load: Newtons): Textbook | NotDefined {
  if (setup.watched === 'turns' || setup.watched === 'travel') {
    const tally = setup.machine.tally?.(setup.station, atBest) ?? notDefined('setup.nothing-to-count');
    return isNotDefined(tally)
      ? tally
      : { value: tally.textbook, unit: tally.what === 'turns' ? 'turns' : 'm' };
  }
  const ideal = setup.machine.idealAdvantage(setup.station, atBest);
  if (isNotDefined(ideal)) return ideal;
  return { value: load / ideal.advantage, unit: 'N' };
}

function actualAdvantage(balance: Balance | NotDefined, load: Newtons): number | NotDefined {
  if (isNotDefined(balance)) return balance;
  if (isNotDefined(balance.velocityRatio)) return balance.velocityRatio;
  return balance.effort > 0 ? load / balance.effort : notDefined('setup.no-pull-needed');
}

/** Useful work over all that is given, while the load is raised. */
function efficiencyOf(setup: Setup, balance: Balance | NotDefined): number | NotDefined {
  const account = accountOf(setup, balance);
  if (isNotDefined(account)) return account;
  if (setup.way !== 'raise') return notDefined('setup.efficiency-only-raising');
  const useful = account.taken
    .filter((entry) => entry.by === 'load')
    .reduce((sum, each) => sum + each.joules, 0);
  const given = account.given.reduce((sum, each) => sum + each.joules, 0);
  if (useful === 0)
    return isNotDefined(balance) || !isNotDefined(balance.velocityRatio) ? 0 : balance.velocityRatio;
  return useful / given;
}

/** The work account; held still and at the start nothing moves. */
function accountOf(setup: Setup, balance: Balance | NotDefined) {
  if (setup.way === 'held' || setup.way === 'start') return notDefined('setup.nothing-moves');
  if (isNotDefined(balance)) return balance;
  const travel =
    setup.lift === null || isNotDefined(balance.velocityRatio)
      ? (setup.lift?.value ?? ACCOUNT_TRAVEL)
      : setup.lift.value * balance.velocityRatio;
  return workAccount(balance, setup.way, travel, leastPull(setup, atBest));
}

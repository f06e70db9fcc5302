import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { forceOf } from '../parts/weight.ts';
import type { Newtons } from '../quantities/brands.ts';
import type { Balance } from '../statics/balance.ts';
import { atBest, propagate } from '../uncertainty/propagate.ts';
import { assumedIn } from './budget.ts';
import { onlyOutcome, predictScale, type Reading } from './predict-scale.ts';
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
  const reading = readingOf(setup);
  const pull = propagate<Newtons>((at) => effortOf(balanceFor(setup, at, setup.way)), inputsOf(setup));
  const ideal = setup.machine.idealAdvantage(setup.station, atBest);
  const against = workedAgainst(setup, balance);
  return {
    table: setup.table,
    setup: setup.mark,
    machine: setup.machine.name,
    watched: setup.watched,
    way: setup.way,
    graduations: setup.marks ?? setup.scale?.graduations ?? null,
    outcome: reading.outcome,
    read: reading.read,
    lower: reading.lower,
    rekeyedBy: null,
    ...(setup.benchSince === undefined ? {} : { benchSince: setup.benchSince }),
    pull,
    textbook: textbookOf(setup, against),
    differences: setup.machine.differences(setup.station, atBest),
    budget: reading.budget,
    narrows: reading.narrows,
    idealAdvantage: isNotDefined(ideal) ? ideal : ideal.advantage,
    actualAdvantage: actualAdvantage(balance, against),
    velocityRatio: isNotDefined(balance) ? balance : balance.velocityRatio,
    efficiency: efficiencyOf(setup, balance, against),
    account: accountOf(setup, balance),
    assumed: assumedIn([pull, reading.read, reading.lower]),
    diagnostics: setupLimits(setup, balance, pull, reading.outcome),
    working: () => setupWorking(setup, reading),
  };
}

/** What the instrument makes of it; how easy something felt is ranked beside its neighbours later. */
function readingOf(setup: Setup): Reading {
  switch (setup.watched) {
    case 'pull':
      return predictScale(setup);
    case 'turns':
    case 'travel':
      return predictTally(setup);
    case 'ease':
      return onlyOutcome(notDefined('setup.no-pull-to-feel'));
  }
}

/** The schoolbook's figure: load over ideal advantage, or the counted figure itself. */
function textbookOf(setup: Setup, against: Newtons): Textbook | NotDefined {
  if (setup.watched === 'turns' || setup.watched === 'travel') {
    const tally = setup.machine.tally?.(setup.station, atBest) ?? notDefined('setup.nothing-to-count');
    return isNotDefined(tally)
      ? tally
      : { value: tally.textbook, unit: tally.what === 'turns' ? 'turns' : 'm' };
  }
  const ideal = setup.machine.idealAdvantage(setup.station, atBest);
  if (isNotDefined(ideal)) return ideal;
  return { value: against / ideal.advantage, unit: 'N' };
}

function actualAdvantage(balance: Balance | NotDefined, against: Newtons): number | NotDefined {
  if (isNotDefined(balance)) return balance;
  if (isNotDefined(balance.velocityRatio)) return balance.velocityRatio;
  return balance.effort > 0 ? against / balance.effort : notDefined('setup.no-pull-needed');
}

/** Useful work over all that is given, while the load is raised. */
function efficiencyOf(setup: Setup, balance: Balance | NotDefined, against: Newtons): number | NotDefined {
  const account = accountOf(setup, balance);
  if (isNotDefined(balance)) return balance;
  if (isNotDefined(account)) return account;
  if (setup.way !== 'raise') return notDefined('setup.efficiency-only-raising');
  if (isNotDefined(balance.velocityRatio)) return balance.velocityRatio;
  const given = account.given.reduce((sum, each) => sum + each.joules, 0);
  if (given === 0) return notDefined('setup.no-pull-needed');
  return (against * account.effortTravel) / balance.velocityRatio / given;
}

/** What the job is done against: the load, or more where the machine says so (the cords of a wedge). */
function workedAgainst(setup: Setup, balance: Balance | NotDefined): Newtons {
  const load = forceOf(setup.load, atBest, atBest(setup.gravity));
  return isNotDefined(balance) ? load : (balance.overcomes ?? load);
}

/** The work account; held still and at the start nothing moves. */
function accountOf(setup: Setup, balance: Balance | NotDefined) {
  if (setup.way === 'held' || setup.way === 'start') return notDefined('setup.nothing-moves');
  if (isNotDefined(balance)) return balance;
  const travel =
    setup.lift === null || isNotDefined(balance.velocityRatio)
      ? (setup.lift?.value ?? ACCOUNT_TRAVEL)
      : setup.lift.value * balance.velocityRatio;
  const least = leastPull(setup, atBest);
  // A scale on the other side is not the one that hangs here.
  if (balance.effort < 0) return workAccount(balance, setup.way, travel, 0);
  if (balance.effort < least)
    return notDefined(setup.way === 'raise' ? 'setup.runs-away' : 'setup.held-by-the-scale');
  return workAccount(balance, setup.way, travel, least);
}

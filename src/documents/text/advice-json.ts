import type { PairAdvice, SetupAdvice, TableAdvice } from '../../core/advise.ts';
import type { Alternative } from '../../core/setups/alternative.ts';
import type { AdviceHead } from './advice-text.ts';
import { plainJson } from './plain-json.ts';

/** The same as JSON; figures are SI, chances are shares of groups. */
export const adviceJson = (tables: readonly TableAdvice[], head: AdviceHead): string =>
  plainJson({
    handspike: 'advice 1',
    ...head,
    tables: tables.map(({ table, title, setups, pairs, searched }) => ({
      table,
      title,
      setups: setups.map(plainSetup),
      pairs: pairs.map(plainPair),
      searched,
    })),
  });

const plainSetup = ({ at, troubles, shows, cures, isCuredWithPair, wants }: SetupAdvice) => ({
  setup: at.setup.mark,
  troubles,
  shows,
  cures: cures.map(plainAlternative),
  isCuredWithPair,
  wants,
});

const plainPair = ({ alternatives, shows, ...pair }: PairAdvice) => ({
  ...pair,
  shows: shows?.text ?? null,
  alternatives: alternatives.map(plainAlternative),
});

const plainAlternative = ({ changes, setups, shows, gains, costs }: Alternative) => ({
  changes,
  setups: setups.map(({ setup, prediction }) => ({ setup: setup.mark, outcome: prediction.outcome })),
  shows,
  gains,
  costs,
});

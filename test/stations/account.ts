import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { machineNamed } from '../../src/core/machines/list.ts';
import type { Station } from '../../src/core/machines/machine.ts';
import { metresPerSecondSquared, newtons } from '../../src/core/quantities/brands.ts';
import type { Balance, Direction, Grip } from '../../src/core/statics/balance.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';

/** The real law of any machine at its best values; a station that has no balance is a failed test. */
export function balanceOf(
  station: Station,
  load: number,
  direction: Direction = 'raise',
  grip: Grip = 'moving',
): Balance {
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(`no machine ${station.machine}`);
  const gravity = metresPerSecondSquared(9.80665);
  const balance = machine.balance(station, atBest, { load: newtons(load), gravity, direction, grip });
  if (isNotDefined(balance)) throw new Error(`no balance: ${balance.because}`);
  return balance;
}

export const pullOn = (...asked: Parameters<typeof balanceOf>): number => balanceOf(...asked).effort;

/** Where the work goes, raising: read from the work account, a metre of the pull's travel. */
export function account(station: Station, load: number) {
  const { work, velocityRatio } = balanceOf(station, load);
  if (isNotDefined(velocityRatio)) throw new Error(`no velocity ratio: ${velocityRatio.because}`);
  const sum = (by: string) => work.filter((each) => each.by === by).reduce((all, { rate }) => all + rate, 0);
  return {
    velocityRatio,
    efficiency: -sum('load') / sum('effort'),
    /** Loss a metre of travel: the part of the pull that friction takes. */
    lost: 0 - sum('loss'),
    deadWeight: 0 - sum('dead weight'),
  };
}

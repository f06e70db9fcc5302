import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { forceOf } from '../parts/weight.ts';
import { balanceFor } from '../setups/pull.ts';
import type { Setup } from '../setups/setup.ts';
import { atBest } from '../uncertainty/propagate.ts';

/** One way to reckon a figure of a computed column from the group's own reading. */
export interface ReckoningWay {
  readonly code: string;
  /** `as the key`: the figure that is asked for. `sound`: another figure, rightly reckoned. */
  readonly is: 'as the key' | 'sound' | 'slip';
  /** A ratio, or joules. */
  readonly value: number;
}

/** What a group can put together at a setup: forces in newtons, ways in metres. */
interface Given {
  readonly reading: number;
  readonly load: number;
  /** Load in grams, where it is a mass. */
  readonly grams: number | null;
  /** What goes along with the load: a cart or a block; 0 where nothing does. */
  readonly dead: number;
  /** Pull travel over load travel: as the machine stands, and as the schoolbook has it. */
  readonly ratio: number | null;
  readonly ideal: number | null;
  /** Ratios that a slip of reckoning takes for the ideal one. */
  readonly taken: readonly { readonly code: string; readonly isSound: boolean; readonly ratio: number }[];
}

/** Ways to the advantage; the key's is load over pull, cart and block left out (`actualAdvantage`). */
export function advantageWays(setup: Setup, reading: number): readonly ReckoningWay[] | NotDefined {
  const given = givenAt(setup, reading);
  const { load, grams, dead, ideal, taken } = given;
  if (reading <= 0 || load <= 0) return notDefined('reckoning.nothing-to-divide');
  return [
    // Along the level nothing is raised: load over pull can be told, but is no advantage.
    way('reckoning.load-over-pull', ideal === null ? 'sound' : 'as the key', load / reading),
    ...(dead === 0 ? [] : [way('reckoning.carriage-counted-in', 'sound', (load + dead) / reading)]),
    ...(ideal === null ? [] : [way('reckoning.ideal', 'sound', ideal)]),
    way('reckoning.upside-down', 'slip', reading / load),
    ...(grams === null
      ? []
      : [
          way('reckoning.grams-over-newtons', 'slip', grams / reading),
          way('reckoning.kilograms-over-newtons', 'slip', grams / 1000 / reading),
        ]),
    ...taken.map(({ code, isSound, ratio }) => way(code, isSound ? 'sound' : 'slip', ratio)),
  ];
}

/** Ways to the work that the load takes, for the lift that the setup states. */
export function workOutWays(setup: Setup, reading: number): readonly ReckoningWay[] | NotDefined {
  const lift = setup.lift?.value;
  if (lift === undefined) return notDefined('reckoning.no-lift');
  const { load, grams, dead, ratio, ideal } = givenAt(setup, reading);
  return inCentimetres([
    // Where a cart goes up too, this leaves it out: its work then counts as lost.
    way(dead === 0 ? 'reckoning.load-lift' : 'reckoning.carriage-left-out', 'as the key', load * lift),
    ...(dead === 0 ? [] : [way('reckoning.carriage-counted-in', 'sound', (load + dead) * lift)]),
    ...(grams === null ? [] : [way('reckoning.kilograms-for-newtons', 'slip', (grams / 1000) * lift)]),
    ...[ratio ?? ideal]
      .filter((each) => each !== null)
      .map((each) => way('reckoning.pull-travel', 'slip', load * lift * each)),
    way('reckoning.pull-for-load', 'slip', reading * lift),
  ]);
}

/** Ways to the work that the hand gives: pull times the way of the hand. */
export function workInWays(setup: Setup, reading: number): readonly ReckoningWay[] | NotDefined {
  const lift = setup.lift?.value;
  if (lift === undefined) return notDefined('reckoning.no-lift');
  const { load, ratio, ideal, taken } = givenAt(setup, reading);
  const travel = ratio ?? ideal;
  if (travel === null) return notDefined('reckoning.no-travel');
  return inCentimetres([
    way('reckoning.pull-by-travel', 'as the key', reading * lift * travel),
    ...(ideal === null ? [] : [way('reckoning.ideal', 'sound', reading * lift * ideal)]),
    way('reckoning.load-travel', 'slip', reading * lift),
    way('reckoning.load-for-pull', 'slip', load * lift * travel),
    ...taken.map((each) => way(each.code, each.isSound ? 'sound' : 'slip', reading * lift * each.ratio)),
  ]);
}

function givenAt(setup: Setup, reading: number): Given {
  const { machine, station, load } = setup;
  const balance = balanceFor(setup, atBest, setup.way);
  const ideal = machine.idealAdvantage(station, atBest);
  const dead = station.inputs.deadMass;
  return {
    reading,
    load: forceOf(load, atBest, setup.gravity.value),
    grams: load.kind === 'mass' ? load.mass.value * 1000 : null,
    dead: dead === undefined ? 0 : dead.value * setup.gravity.value,
    ratio: isNotDefined(balance) || isNotDefined(balance.velocityRatio) ? null : balance.velocityRatio,
    ideal: isNotDefined(ideal) ? null : ideal.advantage,
    taken: (machine.reckonings ?? []).flatMap(({ code, isSound = false, ratio }) => {
      const found = ratio(station, atBest);
      return found === null ? [] : [{ code, isSound, ratio: found }];
    }),
  };
}

const way = (code: string, is: ReckoningWay['is'], value: number): ReckoningWay => ({ code, is, value });

/** Each of them with the travel left in centimetres as well: a hundred times as many joules. */
const inCentimetres = (ways: readonly ReckoningWay[]): readonly ReckoningWay[] => [
  ...ways,
  ...ways
    .filter(({ is }) => is === 'as the key')
    .map(({ value }) => way('reckoning.centimetres-for-metres', 'slip', value * 100)),
];

import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Machine, Persists } from '../machines/machine.ts';
import { noLoad } from '../parts/weight.ts';
import { hangAngle, hangsFromTheMachine, type Setup } from '../setups/setup.ts';
import { slopeOf } from '../setups/shown.ts';
import { between, type Measured } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { BASE_RATES, type BaseRate } from './base-rates.ts';

/** A setup as it stands after a mistake of doing: what the instrument then shows follows from it. */
export interface DoingMistake {
  readonly code: string;
  /** An assumption: common practice, no source. */
  readonly rate: number;
  readonly persists: Persists;
  readonly facts?: Facts;
  readonly changed: Setup;
}

/** Kept with the setup, which never changes, so that what follows from a mistake can be kept with its own. */
const known = new WeakMap<Setup, readonly DoingMistake[]>();

/** Every mistake of doing that can be made at a setup; some of them change nothing there. */
export function doingMistakes(setup: Setup): readonly DoingMistake[] {
  const found = known.get(setup) ?? mistakesAt(setup);
  known.set(setup, found);
  return found;
}

const mistakesAt = (setup: Setup): readonly DoingMistake[] =>
  setup.watched === 'pull'
    ? [
        ...zeroMistakes(setup),
        ...carryMistakes(setup),
        ...wayMistakes(setup),
        ...speedMistakes(setup),
        ...machineMistakes(setup),
        ...weightMistakes(setup),
        ...swapMistakes(setup),
      ]
    : [...machineMistakes(setup), ...swapMistakes(setup)];

function machineMistakes(setup: Setup): readonly DoingMistake[] {
  return setup.machine.mistakes.flatMap(({ code, baseRate: rate, persists, leavesOff, change }) => {
    const station = change(setup.station);
    if (station === null) return [];
    const load = leavesOff === true ? noLoad : setup.load;
    return [{ code, rate, persists, changed: { ...setup, station, load } }];
  });
}

/** A mistake that any machine can see: its setup changed in a few fields. */
const general = (
  { code, rate }: { readonly code: string; readonly rate: BaseRate },
  setup: Setup,
  changed: Partial<Setup>,
): DoingMistake => ({ code, rate: BASE_RATES[rate], persists: 'group', changed: { ...setup, ...changed } });

/** The scale kept its zero from another position, or was zeroed again where the card says not to. */
function zeroMistakes(setup: Setup): readonly DoingMistake[] {
  const turned = hangAngle(setup.hang, slopeOf(setup), atBest) !== 0;
  if (!turned || setup.scale === null) return [];
  return setup.zeroed === 'hook down'
    ? [general({ code: 'scale.zero-set-in-place', rate: 'zero-set-in-place' }, setup, { zeroed: 'in place' })]
    : [
        general({ code: 'scale.zero-from-hook-down', rate: 'zero-from-hook-down' }, setup, {
          zeroed: 'hook down',
        }),
      ];
}

/** The hand took the weight of a scale that ought to hang. */
const carryMistakes = (setup: Setup): readonly DoingMistake[] =>
  hangsFromTheMachine(setup.hang) && !setup.handCarries
    ? [general({ code: 'scale.carried', rate: 'carried' }, setup, { handCarries: true })]
    : [];

/** Read in another way than asked: on the way back, on the way up, or at the jerk of the start. */
function wayMistakes(setup: Setup): readonly DoingMistake[] {
  const other = (name: BaseRate, way: Setup['way']) =>
    general({ code: `way.${name}`, rate: name }, setup, { way });
  switch (setup.way) {
    case 'raise':
      return [other('lowering-for-raising', 'lower'), other('start-for-moving', 'start')];
    case 'lower':
      return [other('raising-for-lowering', 'raise')];
    case 'start':
      return [other('moving-for-start', 'raise')];
    case 'held':
      return [];
  }
}

/**
 * How fast a load speeds up under a hand in a hurry, m/s²: it goes from rest to three hand-breadths a second
 * within one. Common practice, no source; the doubt about it widens the figure.
 */
const HURRY: Measured = between('reading/speeding up', 0.1, 0.5, 'assumed', 'common practice, no source');

/** Read while the load still speeds up: the machine has to move its mass as well. */
function speedMistakes(setup: Setup): readonly DoingMistake[] {
  const { machine, station } = setup;
  const speedingUp = machine.speedingUp;
  if (speedingUp === undefined || setup.way !== 'raise') return [];
  const hurried: Machine = {
    ...machine,
    balance: (of, at, asked) =>
      machine.balance(of, at, { ...asked, load: speedingUp(of, at, asked, at(HURRY)) ?? asked.load }),
  };
  const inputs = { ...station.inputs, 'speeding up': HURRY };
  return [
    general({ code: 'way.speeding-up', rate: 'speeding-up' }, setup, {
      machine: hurried,
      station: { ...station, inputs },
    }),
  ];
}

/** Another weight of the kit hangs where this one belongs, and hangs there for the next group as well. */
function weightMistakes(setup: Setup): readonly DoingMistake[] {
  const { hung = null, weights = [] } = setup.around ?? {};
  return hung === null
    ? []
    : weights.map(({ mark, load }) => ({
        code: 'load.other-weight',
        rate: BASE_RATES['other-weight'] / weights.length,
        persists: 'station',
        facts: { hung: mark, belongs: hung },
        changed: { ...setup, load },
      }));
}

/** The reading of the partner setup, written in this one's row. */
function swapMistakes(setup: Setup): readonly DoingMistake[] {
  const partners = setup.around?.partners ?? [];
  return partners.map((partner) => ({
    code: 'setup.swapped',
    rate: BASE_RATES.swapped / partners.length,
    persists: 'reading',
    facts: { setup: setup.mark, partner: partner.mark },
    changed: partner,
  }));
}

const ZERO_MISTAKES: readonly string[] = ['scale.zero-set-in-place', 'scale.zero-from-hook-down'];

/** Whether setting the pointer to 0 again would mend it. */
export const isZeroMistake = (code: string): boolean => ZERO_MISTAKES.includes(code);

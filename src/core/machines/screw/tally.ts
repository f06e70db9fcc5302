import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Tally } from '../machine.ts';
import { lead, type Screw } from './station.ts';

const SOURCE = 'US Navy, Basic Machines (NAVEDTRA 14037), chapter 5; start gap: own definition';

/**
 * What is counted or measured at a screw: the travel after some turns, or the turns for a travel.
 *
 *     x = L n - g,   n = (x + g)/L
 *
 * with L the lead and g the start gap, positive if the measured face starts away from contact.
 * Holds from the first touch on; neglects the play of the thread, which the first turn takes up.
 */
export function tally(screw: Screw, at: At): Tally | NotDefined {
  if (screw.turns !== null) return travelAfter(screw, at, screw.turns);
  if (screw.inputs.travel !== undefined) return turnsFor(screw, at, at(screw.inputs.travel));
  return notDefined('screw.nothing-counted');
}

function travelAfter(screw: Screw, at: At, asked: number): Tally | NotDefined {
  const { extra, perTurn } = screw.counting;
  const n = (asked + extra) / perTurn;
  const L = lead(screw, at);
  const g = at(screw.inputs.startGap);
  const value = L * n - g;
  if (value < 0)
    return notDefined('screw.never-touches', {
      gap: { si: g, dimension: 'length' },
      advance: { si: L * n, dimension: 'length' },
    });
  return {
    what: 'travel',
    value,
    textbook: L * asked,
    working: [
      leadLine(screw, at),
      {
        what: 'screw.travel',
        symbol: 'x',
        formula: 'L*n - g',
        values: { L, n, g },
        value,
        unit: 'm',
        source: SOURCE,
      },
    ],
  };
}

function turnsFor(screw: Screw, at: At, x: number): Tally | NotDefined {
  const { extra, perTurn } = screw.counting;
  const L = lead(screw, at);
  const g = at(screw.inputs.startGap);
  const turned = (x + g) / L;
  if (turned < 0)
    return notDefined('screw.already-past', {
      gap: { si: g, dimension: 'length' },
      travel: { si: x, dimension: 'length' },
    });
  const value = turned * perTurn + extra;
  return {
    what: 'turns',
    value,
    textbook: x / L,
    working: [
      leadLine(screw, at),
      {
        what: 'screw.turns',
        symbol: 'n',
        formula: perTurn === 1 && extra === 0 ? '(x + g)/L' : '(x + g)/L*c + e',
        values: perTurn === 1 && extra === 0 ? { x, g, L } : { x, g, L, c: perTurn, e: extra },
        value,
        unit: '1',
        source: SOURCE,
      },
    ],
  };
}

const leadLine = (screw: Screw, at: At) => ({
  what: 'screw.lead',
  symbol: 'L',
  formula: 'k*P',
  values: { k: screw.starts, P: at(screw.inputs.pitch) },
  value: lead(screw, at),
  unit: 'm',
  source: 'lead = starts x pitch',
});

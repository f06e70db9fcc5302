import { isNotDefined } from '../../description/not-defined.ts';
import type { Diagnostic } from '../../diagnostics/diagnostic.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Asked } from '../../statics/balance.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Machine, Made, Preparation, Station } from '../machine.ts';
import { brokenChain } from './compound.ts';
import { type Compound, compoundOf } from './station.ts';

/** Asked only to see whether a stage passes on what it is given; no figure of it is shown. */
const PROBE: Asked = {
  load: newtons(1),
  gravity: metresPerSecondSquared(9.80665),
  direction: 'raise',
  grip: 'none',
};

/** A compound from the preparations of its stages; refuses a stage that passes no force on. */
export function makeCompound(preparation: Preparation, machines: readonly Machine[]): Made<Compound> {
  const stages = preparation.stages ?? [];
  const error = (code: string, at: Diagnostic['at'], facts: Diagnostic['facts']): Diagnostic => ({
    code: `compound.${code}`,
    severity: 'error',
    at,
    facts,
  });
  if (stages.length < 2)
    return {
      station: null,
      diagnostics: [error('too-few-stages', preparation.place(null), { stages: stages.length })],
    };
  const diagnostics: Diagnostic[] = [];
  const stations: Station[] = [];
  for (const [k, stage] of stages.entries()) {
    const machine = machines.find((each) => each.name === stage.machine);
    const at = stage.preparation.place(null);
    if (machine === undefined) {
      diagnostics.push(error('unknown-stage', at, { machine: stage.machine, stage: k + 1 }));
      continue;
    }
    const made = machine.make(stage.preparation);
    diagnostics.push(...made.diagnostics);
    if (made.station === null) continue;
    stations.push(made.station);
    if (k < stages.length - 1 && !pullsUp(machine, made.station))
      diagnostics.push({
        code: 'compound.link-turns',
        severity: 'note',
        at,
        facts: { machine: stage.machine, stage: k + 1, next: k + 2 },
      });
    if (k > 0 && !passesOn(machine, made.station, k))
      diagnostics.push(error('passes-nothing-on', at, { machine: stage.machine, stage: k + 1 }));
  }
  const isRefused = diagnostics.some(({ severity }) => severity === 'error');
  return isRefused || stations.length < stages.length
    ? { station: null, diagnostics }
    : { station: compoundOf(stations), diagnostics };
}

/**
 * Each stage takes its load as one that hangs. A link does the same only where the stage before it is
 * pulled straight up; any other way it has to be turned by a pulley, whose rubbing is not counted.
 */
function pullsUp(machine: Machine, station: Station): boolean {
  const effort = machine.drawing(station, atBest).shapes.find((shape) => shape.shape === 'effort');
  return effort?.shape === 'effort' && Math.sin(effort.direction) > 0.99;
}

/** Whether the pull on this stage goes with the force that it is given as its load. */
function passesOn(machine: Machine, station: Station, k: number): boolean {
  const balance = machine.balance(station, atBest, PROBE);
  return !isNotDefined(balance) && brokenChain(balance, PROBE, k) === null;
}

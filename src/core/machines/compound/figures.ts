import type { Drawing, Figure, Shape } from '../../description/drawing.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { MachineFor } from './compound.ts';
import type { Compound } from './station.ts';

/**
 * A picture for each stage, from the load to the hand: their sizes differ too much for one scale. The
 * load is on the first only, the scale with the hand on the last; in between the linking line leaves
 * one picture and comes into the next.
 */
export function figures(
  compound: Compound,
  at: At,
  machineFor: MachineFor,
  isFelt = false,
): readonly Figure[] {
  const last = compound.stages.length - 1;
  return compound.stages.map((station, k) => {
    const machine = machineFor(station);
    const drawing = machine.drawing(station, at, isFelt && k === last);
    return {
      title: { key: 'compound.figure', facts: { stage: k + 1, machine: machine.name } },
      drawing: { ...drawing, shapes: drawing.shapes.map((shape) => linked(shape, k, last)) },
    };
  });
}

/** Every stage as it is left. */
export const start = (compound: Compound, at: At, machineFor: MachineFor): readonly Drawing[] =>
  compound.stages.flatMap((station) => {
    const machine = machineFor(station);
    return machine.start?.(station, at) ?? [machine.drawing(station, at)];
  });

/** Where the hand is: the whole as far as a scale is concerned. */
export function drawing(compound: Compound, at: At, machineFor: MachineFor, isFelt = false): Drawing {
  const last = figures(compound, at, machineFor, isFelt).at(-1);
  return last?.drawing ?? { shapes: [] };
}

/** A load that is the pull on the stage before, and a pull that is the load of the next, are a line. */
function linked(shape: Shape, k: number, last: number): Shape {
  const from = { key: 'compound.label.from', facts: { stage: k } };
  if (k > 0 && shape.shape === 'load')
    return { shape: 'link', from: shape.hook, direction: -Math.PI / 2, ...from };
  // What is carried and not hung has no hook: the words alone.
  if (k > 0 && shape.shape === 'label' && shape.key.endsWith('.load')) return { ...shape, ...from };
  if (k < last && shape.shape === 'effort')
    return {
      shape: 'link',
      from: shape.from,
      direction: shape.direction,
      key: 'compound.label.to',
      facts: { stage: k + 2 },
    };
  return shape;
}

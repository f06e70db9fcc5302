import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import type { Facts } from '../../diagnostics/diagnostic.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { MachineFor } from './compound.ts';
import type { Compound } from './station.ts';

/** Room between two stages of the drawing, as a share of the wider one. */
const GAP = 0.25;

/**
 * How the stages are built and linked. Inside the row a link stands for scale and load, so the steps
 * about them are left out; where they name a place, the link is tied there.
 */
export function steps(compound: Compound, machineFor: MachineFor): readonly Step[] {
  const last = compound.stages.length - 1;
  return compound.stages.flatMap((station, k): readonly Step[] => {
    const machine = machineFor(station);
    const own = machine.steps(station).flatMap((step): readonly Step[] => {
      const [, , name = ''] = step.key.split('.');
      const inside = (k > 0 && name.startsWith('load')) || (k < last && isAboutTheHand(name));
      return inside ? tiedTo(step) : [step];
    });
    return [
      { key: 'compound.step.stage', facts: { stage: k + 1, machine: machine.name } },
      ...own,
      ...(k === 0 ? [] : [{ key: 'compound.step.link', facts: { from: k, to: k + 1 } }]),
    ];
  });
}

const isAboutTheHand = (name: string): boolean => /^(pull|hook|read|square|lift)/.test(name);

function tiedTo({ facts }: Step): readonly Step[] {
  if (facts.hole !== undefined) return [{ key: 'compound.step.tie-at-hole', facts: { hole: facts.hole } }];
  const at = facts.at ?? facts.arm;
  return at === undefined ? [] : [{ key: 'compound.step.tie-at', facts: { at } }];
}

export function cautions(compound: Compound, machineFor: MachineFor): readonly Caution[] {
  const all = compound.stages.flatMap((station) => machineFor(station).cautions(station));
  return all.filter((each, n) => all.findIndex(({ key }) => key === each.key) === n);
}

export const differences = (
  compound: Compound,
  at: At,
  machineFor: MachineFor,
): readonly { readonly key: string; readonly facts: Facts }[] =>
  compound.stages.flatMap((station) => machineFor(station).differences(station, at));

/** The stages side by side, from the load to the hand, all in one scale, linked by a line. */
export function drawing(compound: Compound, at: At, machineFor: MachineFor): Drawing {
  const last = compound.stages.length - 1;
  const shapes: Shape[] = [];
  let right = 0;
  let pulled: Point | null = null;
  for (const [k, station] of compound.stages.entries()) {
    const own = machineFor(station).drawing(station, at).shapes;
    const [left, end] = extent(own);
    const moved = k === 0 ? 0 : right + GAP * (end - left) - left;
    const placed = own.map((shape) => shiftedBy(shape, moved));
    const load = placed.find((shape) => shape.shape === 'load');
    const effort = placed.find((shape) => shape.shape === 'effort');
    if (pulled !== null && load?.shape === 'load') shapes.push({ shape: 'line', path: [pulled, load.hook] });
    shapes.push(
      ...placed.filter(({ shape }) => (shape !== 'load' || k === 0) && (shape !== 'effort' || k === last)),
    );
    pulled = effort?.shape === 'effort' ? effort.from : null;
    right = end + moved;
  }
  return { shapes };
}

/** The points of a shape, moved to the side. */
function shiftedBy(shape: Shape, x: number): Shape {
  const moved = (value: unknown): unknown => {
    if (!Array.isArray(value)) return value;
    if (value.length === 2 && value.every((each) => typeof each === 'number'))
      return [(value[0] as number) + x, value[1]];
    return value.map(moved);
  };
  return Object.fromEntries(
    Object.entries(shape).map(([key, value]) => [key, moved(value)]),
  ) as unknown as Shape;
}

function extent(shapes: readonly Shape[]): readonly [left: number, right: number] {
  const xs = shapes.flatMap(sideways);
  return xs.length === 0 ? [0, 0] : [Math.min(...xs), Math.max(...xs)];
}

function sideways(shape: Shape): readonly number[] {
  switch (shape.shape) {
    case 'body':
      return shape.outline.map(([x]) => x);
    case 'wheel':
    case 'hole':
      return [shape.centre[0] - shape.radius, shape.centre[0] + shape.radius];
    case 'line':
      return shape.path.map(([x]) => x);
    case 'ground':
    case 'measure':
      return [shape.from[0], shape.to[0]];
    case 'pivot':
    case 'angle':
    case 'label':
      return [shape.at[0]];
    case 'load':
      return [shape.hook[0]];
    case 'effort':
      return [shape.from[0]];
  }
}

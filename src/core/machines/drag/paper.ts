import type { Drawing } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import { drawCarriage } from '../../parts/carriage-drawing.ts';
import { carriageSteps, pullSteps, unloaded } from '../../parts/carriage-paper.ts';
import { directionOf, drawPull } from '../../parts/guided-pull-drawing.ts';
import { type Radians, radians } from '../../quantities/brands.ts';
import { keyOf } from '../../statics/carriage.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Drag } from './station.ts';

export {
  carriageDifferences as differences,
  carriageReading as reading,
} from '../../parts/carriage-paper.ts';

/** Sizes that only the picture needs: how far the load is from the near end and from the pulley. */
const NEAR = 0.15;
const REACH = 0.3;

/** How the station is set up, one action a step. */
export const steps = (drag: Drag, isFelt = false): readonly Step[] => [
  ...carriageSteps(drag, 'drag', isFelt),
  ...pullSteps(drag, 'drag.step.pull-level', isFelt),
];

/** What rode gives up its load to what rides next; the steps themselves begin where it starts. */
export const between = (from: Drag, to: Drag): readonly Step[] =>
  from.rides === to.rides ? [] : [unloaded(from)];

/** Load and scale come off; what rides goes back to where it started. */
export const reset = (drag: Drag, isFelt = false): readonly Step[] => [
  { key: 'drag.reset.load', facts: {} },
  { key: isFelt ? 'drag.reset.string' : 'drag.reset.scale', facts: {} },
  { key: `drag.reset.${keyOf(drag)}`, facts: {} },
];

export const cautions = (drag: Drag, isFelt = false): readonly Caution[] => [
  ...(drag.rides === 'rollers' || drag.guide !== null
    ? [{ key: 'caution.fingers', facts: {}, source: 'fingers' }]
    : []),
  ...(isFelt
    ? []
    : [
        {
          key: 'caution.small-pupils-and-strong-scales',
          facts: {},
          source: 'small pupils and strong scales',
        },
      ]),
];

/** Angle of the pull above the level, for a scale that is pulled along it. */
export const slope = (drag: Drag, at: At): Radians => radians(directionOf(drag, at, 0));

/** The load on the level with its string; the origin is on the floor behind it. */
export const drawing = (drag: Drag, at: At): Drawing => drawn(drag, at, true);

/** As it is left: nothing on what rides, at the place where it started. */
export const start = (drag: Drag, at: At): readonly Drawing[] => [drawn(drag, at, false)];

function drawn(drag: Drag, at: At, isLoaded: boolean): Drawing {
  const carriage = drawCarriage(drag, at, NEAR, 0);
  const pull = drawPull(drag, at, carriage.hook, 0, REACH);
  // Over a guide pulley the string leaves the table at its edge.
  const edges = pull.flatMap((shape) => (shape.shape === 'wheel' ? [shape.centre[0]] : []));
  return {
    shapes: [
      { shape: 'ground', from: [0, 0], to: [edges[0] ?? NEAR + 2 * REACH, 0] },
      ...carriage.shapes,
      ...(isLoaded ? carriage.load : []),
      ...pull,
    ],
  };
}

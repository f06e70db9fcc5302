import type { Part } from '../description/part.ts';
import type { KitPart } from '../kit/kit.ts';
import { loadOf } from '../parts/weight.ts';
import type { Setup } from './setup.ts';

/** The setup with what is around it: the table's other setups, and the weights of the kit. */
export function withAround(
  setup: Setup,
  hung: Part | null,
  table: readonly Setup[],
  parts: readonly KitPart[],
): Setup {
  const fitting = parts.filter(
    (part) =>
      part.kind === 'weight' &&
      part.mark !== hung?.mark &&
      !part.isFaulty &&
      (part.fits === null || part.fits.includes(setup.machine.name)),
  );
  return {
    ...setup,
    around: {
      hung: hung?.mark ?? null,
      weights: hung === null ? [] : fitting.map(({ mark, fields }) => ({ mark, load: loadOf(fields) })),
      partners: table.filter(
        (other) =>
          other.mark !== setup.mark &&
          other.watched === setup.watched &&
          (other.mark === setup.partner || other.partner === setup.mark),
      ),
    },
  };
}

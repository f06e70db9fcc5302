import type { Part } from '../description/part.ts';
import type { KitPart } from '../kit/kit.ts';
import { type Load, loadOf } from '../parts/weight.ts';
import type { Setup } from './setup.ts';

/** What lies and stands around a setup, and may be taken for what belongs there. */
export interface Around {
  /** Mark of the weight that belongs here; `null` where none does. */
  readonly hung: string | null;
  /** Other weights of the kit that fit the machine. */
  readonly weights: readonly { readonly mark: string; readonly load: Load }[];
  /** Setups of the same table that this one is compared with, either way. */
  readonly partners: readonly Setup[];
}

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

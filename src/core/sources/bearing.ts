import { type Range, type Row, rowNamed } from './source.ts';

/**
 * A pin or axle in its hole: friction referred to the radius of the pin. No table at hand tells
 * starting from moving, so there is no starting ratio.
 */
export interface BearingKind extends Row {
  readonly moving: Range;
}

export const bearingKinds: readonly BearingKind[] = [
  {
    name: 'ball bearing',
    moving: [0.001, 0.005],
    source: 'an engineering web table of rolling resistance (0.005)',
    provenance: 'memory',
    note: 'the upper end was read, the lower is from memory',
  },
  {
    name: 'lubricated plain bearing',
    moving: [0.08, 0.1],
    source: 'an engineering web table of rolling resistance',
    provenance: 'read',
  },
  {
    name: 'dry pin',
    moving: [0.15, 0.35],
    source: 'usual shop value of a dry wood or steel pin, from memory',
    provenance: 'memory',
  },
];

/**
 * A bearing by name, or nothing where no source is at hand.
 *
 * @example bearingKind('dry pin')?.moving // => [0.15, 0.35]
 */
export const bearingKind = (name: string): BearingKind | undefined => rowNamed(bearingKinds, name);

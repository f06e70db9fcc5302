import { type Newtons, newtons, type Ratio, ratio } from '../quantities/brands.ts';
import { NO_SOURCE, type Provenance, type Range, type Row, rowNamed } from './source.ts';

/**
 * A sheave by how it turns: what it passes on of the pull, and a drag that does not shrink with the
 * load. The families of tables differ by 20 to 50 percent on a tackle of six parts; the source says
 * which family a row is from.
 */
export interface SheaveKind extends Row {
  /** Pull passed on over pull given, low end first. */
  readonly efficiency: Range<Ratio>;
  /** The same as a share of the mean of the two tensions, low end first. */
  readonly share: Range<Ratio>;
  readonly drag: Range<Newtons>;
  readonly dragSource: string;
  readonly dragProvenance: Provenance;
}

/**
 * Drag as a share of the mean tension, from the efficiency: e = (1 - s/2)/(1 + s/2) turned round.
 *
 * @example dragShare(0.6) // => 0.5
 */
export const dragShare = (efficiency: number): Ratio => ratio((2 * (1 - efficiency)) / (1 + efficiency));

function kind(
  name: string,
  [low, high]: Range,
  source: string,
  drag: Range,
  dragSource: string,
  note?: string,
): SheaveKind {
  return {
    name,
    efficiency: [ratio(low), ratio(high)],
    share: [dragShare(high), dragShare(low)],
    drag: [newtons(drag[0]), newtons(drag[1])],
    source,
    provenance: 'read',
    dragSource,
    dragProvenance: 'common practice',
    ...(note === undefined ? {} : { note }),
  };
}

const MEASURED = 'small pulleys measured at a load of 1 kN (read, makes not carried over)';
const FAMILIES =
  'hoist tables of one rope maker (low K), Wire Rope Users Manual reprint (high K): K is pull given over pull passed on';
const LEFT_OUT = 'none assumed; no source gives one';

export const sheaveKinds: readonly SheaveKind[] = [
  // Lifting 1 kN took 1.10 kN over the good one and 1.25 kN over the poor one.
  kind('small pulley on a plain pin', [1 / 1.25, 1 / 1.1], MEASURED, [0, 0.02], NO_SOURCE),
  kind('bronze bush', [1 / 1.09, 1 / 1.045], FAMILIES, [0, 0], LEFT_OUT),
  kind('rolling bearing', [1 / 1.04, 1 / 1.02], FAMILIES, [0, 0], LEFT_OUT),
  kind('bare ring', [0.59, 0.59], MEASURED, [0, 0], LEFT_OUT, 'a bare steel ring: it does not turn'),
];

/**
 * A sheave by name, or nothing where no source is at hand.
 *
 * @example sheaveKind('bare ring')?.efficiency // => [0.59, 0.59]
 */
export const sheaveKind = (name: string): SheaveKind | undefined => rowNamed(sheaveKinds, name);

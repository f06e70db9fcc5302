import type { Predicted } from '../setups/difference.ts';
import { fisherShare } from '../uncertainty/probability.ts';
import type { RobustCentre } from '../uncertainty/robust.ts';

/** How far the readings of this class scatter, as a share of the reading, from all its setups together. */
export interface HandFound {
  readonly share: number;
  /** Degrees of freedom behind it. */
  readonly freedom: number;
  /** What the key assumes. */
  readonly assumed: number;
}

/** A setup with the centre of its own readings. */
export interface CentreAt {
  readonly at: Predicted;
  readonly robust: RobustCentre | null;
}

/**
 * The class's hand: spreads of single setups, less what rounding to a graduation alone brings, as shares of
 * their centres, pooled by their degrees of freedom (JCGM 100:2008, 4.2.4 and 4.3.2, note; H.3.6 for pooling).
 * Few readings a setup say little of its own scatter, all together say enough; that one class's hand scatters by the
 * same share everywhere is an assumption. `null` where no pull was read three times.
 */
export function handFound(centres: readonly CentreAt[]): HandFound | null {
  let [squares, freedom] = [0, 0];
  const pulled = centres.filter(isScattered);
  for (const { at, robust } of pulled) {
    if (robust === null || robust.centre <= 0) continue;
    const variance = Math.max(0, robust.spread ** 2 - roundingAt(at) ** 2);
    squares += (robust.freedom * variance) / robust.centre ** 2;
    freedom += robust.freedom;
  }
  const [first] = pulled;
  return freedom === 0 || first === undefined
    ? null
    : { share: Math.sqrt(squares / freedom), freedom, assumed: first.at.setup.reader.scatter };
}

/** A pull that moves: held still it may be anywhere in its band, and a count is not scattered by the hand. */
const isScattered = ({ at, robust }: CentreAt): boolean =>
  robust !== null && at.setup.watched === 'pull' && at.setup.way !== 'held';

/** Rounding to a graduation, as a standard deviation (JCGM 100, F.2.2.1). */
export const roundingAt = ({ prediction }: Predicted): number =>
  (prediction.graduations?.step ?? 0) / Math.sqrt(12);

/** A setup scatters more than the class does elsewhere, where chance alone does so once in a hundred. */
const MORE_THAN_CHANCE = 0.99;

/**
 * A setup's centre with the scatter that the class's hand has; its own where it scatters more than that by
 * more than chance (F test), or where it is no pull that moves.
 */
export function withHand(centre: CentreAt, hand: HandFound | null): RobustCentre | null {
  const { at, robust } = centre;
  if (robust === null || hand === null || !isScattered(centre)) return robust;
  const spread = Math.hypot(hand.share * robust.centre, roundingAt(at));
  const ratio = (robust.spread / spread) ** 2;
  if (fisherShare(ratio, robust.freedom, hand.freedom) > MORE_THAN_CHANCE) return robust;
  return {
    ...robust,
    u: (Math.sqrt(Math.PI / 2) * spread) / Math.sqrt(robust.count),
    freedom: hand.freedom,
  };
}

import { isNotDefined, type NotDefined } from '../../description/not-defined.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import { sheaveDrag } from '../../statics/sheave.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import type { Tackle } from './station.ts';
import { tensions, type Where } from './tensions.ts';
import { tackleWorking } from './working.ts';

/**
 * The tackle at the limit of motion, from the tension in each part of line.
 *
 *     T(k+1) = [T(k) (1 ± s/2) ± c] / (1 ∓ s/2)     from the dead end, over each sheave, to the hand
 *     W + B  = [T(1) + ... + T(n)] cos(x)            balance of the moving block
 *
 * with s and c the drag of the sheave passed, x the lean of the parts and B the weight of the moving
 * block; upper signs raise. Every tension is a line in T(1), so T(1) follows without iteration. The
 * hauled part belongs to the sum where the fall leaves the moving block. Guide pulleys follow last.
 *
 * Source: balance of the moving block, OpenStax College Physics 2e, 9.5; drag of a sheave:
 * `statics/sheave.ts`. Holds for taut parts that all lean alike. Neglects the line's own weight,
 * its rubbing on the cheeks, and a block that hangs askew.
 */
export function balanceTackle(tackle: Tackle, at: At, asked: Asked): Balance | NotDefined {
  const found = tensions(tackle, at, asked);
  if (isNotDefined(found)) return found;
  const { passed, parts, hauled, block, lean } = found;
  const n = tackle.parts;
  const sense = signOf(asked.direction);
  const ratio = n * Math.cos(lean);
  const along = [...parts, ...found.fall];
  const lossAt = (where: Where): number =>
    passed.reduce((sum, sheave, k) => {
      const near = along[k];
      const far = along[k + 1];
      if (sheave.where !== where || near === undefined || far === undefined) return sum;
      // k parts lie behind this sheave, each shortening alike: so much line runs over it.
      const runs = Math.min(k + 1, n) / n;
      return sum - sheaveDrag(near, far, sheave.share, sheave.constant) * runs;
    }, 0);
  const losses = (['fixed', 'moving', 'guide'] as const)
    .filter((where) => passed.some((sheave) => sheave.where === where))
    .map((where) => ({ by: 'loss', cause: `tackle.loss-${where}`, rate: lossAt(where) }) as const);
  return {
    kind: 'balance',
    effort: hauled,
    velocityRatio: ratio,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * hauled },
      { by: 'load', cause: 'load', rate: (-sense * asked.load) / ratio },
      { by: 'dead weight', cause: 'tackle.moving-block', rate: (-sense * block) / ratio },
      ...losses,
    ],
    working: () => tackleWorking(tackle, at, asked, found),
  };
}

/** Parts of line that pull on the moving block: the schoolbook's tackle, all parts upright. */
export function idealAdvantage(tackle: Tackle): Ideal {
  return {
    advantage: tackle.parts,
    working: [
      {
        what: 'tackle.ideal-advantage',
        symbol: 'A',
        formula: 'n',
        values: { n: tackle.parts },
        value: tackle.parts,
        unit: '1',
        source: 'OpenStax College Physics 2e, 9.5',
      },
    ],
  };
}

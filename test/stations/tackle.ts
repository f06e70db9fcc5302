import { sheavesNeeded, type Tackle } from '../../src/core/machines/tackle/station.ts';
import { kilograms, newtons, radians } from '../../src/core/quantities/brands.ts';
import { dragShare } from '../../src/core/sources/sheave.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

/** A tackle for a test: SI numbers, all known exactly, sheaves as many as the line needs. */
export function tackleStation(said: {
  readonly parts: number;
  readonly fallLeaves?: Tackle['fallLeaves'];
  readonly efficiency?: number;
  readonly constant?: number;
  readonly blockMass?: number;
  readonly lean?: number;
  readonly guides?: Tackle['guides'];
  readonly spareSheaves?: number;
}): Tackle {
  const fallLeaves = said.fallLeaves ?? 'fixed block';
  const needed = sheavesNeeded(said.parts, fallLeaves);
  const share = exactly(dragShare(said.efficiency ?? 1));
  const constant = exactly(newtons(said.constant ?? 0));
  const spare = said.spareSheaves ?? 0;
  return {
    machine: 'tackle',
    inputs: {
      blockMass: exactly(kilograms(said.blockMass ?? 0)),
      lean: exactly(radians(said.lean ?? 0)),
      fixedShare: share,
      fixedConstant: constant,
      movingShare: share,
      movingConstant: constant,
      guideShare: share,
      guideConstant: constant,
      secondGuideShare: share,
      secondGuideConstant: constant,
    },
    parts: said.parts,
    fallLeaves,
    sheaves: { fixed: needed.fixed + spare, moving: needed.moving + spare },
    guides: said.guides ?? 0,
    pull: fallLeaves === 'fixed block' ? 'down' : 'up',
  };
}

import type { Kilograms, Newtons, Radians, Ratio } from '../../quantities/brands.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { Station } from '../machine.ts';

export type Block = 'fixed block' | 'moving block';
export type PullDirection = 'down' | 'level' | 'up';

/**
 * A line rove through a fixed and a moving block. `parts` counts the parts of line that pull on the
 * moving block (or on the load itself, where a single fixed pulley has none).
 */
export interface Tackle extends Station {
  readonly machine: 'tackle';
  readonly inputs: {
    readonly blockMass: Measured<Kilograms>;
    /** Lean of every part of line from the line along which the load rises. */
    readonly lean: Measured<Radians>;
    readonly fixedShare: Measured<Ratio>;
    readonly fixedConstant: Measured<Newtons>;
    readonly movingShare: Measured<Ratio>;
    readonly movingConstant: Measured<Newtons>;
    readonly guideShare: Measured<Ratio>;
    readonly guideConstant: Measured<Newtons>;
    readonly secondGuideShare: Measured<Ratio>;
    readonly secondGuideConstant: Measured<Newtons>;
  };
  readonly parts: number;
  readonly fallLeaves: Block;
  /** What the blocks are marked with, where the kit has them. */
  readonly blocks?: { readonly fixed?: string; readonly moving?: string };
  /** Sheaves that the blocks have, whether the line uses them or not. */
  readonly sheaves: { readonly fixed: number; readonly moving: number };
  readonly guides: 0 | 1 | 2;
  readonly pull: PullDirection;
}

/**
 * Sheaves that so many parts of line need in each block. The line goes to and fro between the
 * blocks, so it passes n sheaves where the fall leaves the fixed block, and n - 1 where the hauled
 * part itself pulls on the moving block.
 *
 * @example sheavesNeeded(3, 'fixed block') // => { fixed: 2, moving: 1 }
 */
export function sheavesNeeded(parts: number, fallLeaves: Block): { fixed: number; moving: number } {
  const moving = Math.floor(parts / 2);
  return { fixed: fallLeaves === 'fixed block' ? parts - moving : parts - 1 - moving, moving };
}

/**
 * Most parts of line that two blocks can carry.
 *
 * @example mostParts({ fixed: 2, moving: 1 }, 'fixed block') // => 3
 */
export function mostParts(sheaves: Tackle['sheaves'], fallLeaves: Block): number {
  const fits = (parts: number): boolean => {
    const needed = sheavesNeeded(parts, fallLeaves);
    return needed.fixed <= sheaves.fixed && needed.moving <= sheaves.moving;
  };
  let parts = 0;
  while (fits(parts + 1)) parts += 1;
  return parts;
}

/**
 * The block of each sheave, from the dead end to the fall.
 *
 * @example blocksAlongTheLine(3, 'fixed block') // => ['fixed block', 'moving block', 'fixed block']
 */
export function blocksAlongTheLine(parts: number, fallLeaves: Block): readonly Block[] {
  const other: Block = fallLeaves === 'fixed block' ? 'moving block' : 'fixed block';
  const sheaves = fallLeaves === 'fixed block' ? parts : parts - 1;
  return Array.from({ length: sheaves }, (_, n) => ((sheaves - 1 - n) % 2 === 0 ? fallLeaves : other));
}

/**
 * Where the line is tied: with an even number of parts above, at the frame beside the fixed block; with
 * an odd number below, at the moving block.
 */
export const deadEnd = ({ parts }: Pick<Tackle, 'parts'>): Block =>
  parts % 2 === 0 ? 'fixed block' : 'moving block';

import type { Block } from './block.ts';
import { widthOf } from './drawing-figure.ts';

/** A caption still stands well under a picture of this share of the page. */
const LEAST_SHARE = 0.36;

/**
 * Words beside pictures get the room that the widest picture of the sheet leaves; `room` is what both
 * columns share, in millimetres. All pairs are cut alike, so that the words stand in one column.
 *
 * @example fittedColumns([{ block: 'page-break' }], 180) // => [{ block: 'page-break' }]
 */
export function fittedColumns(blocks: readonly Block[], room: number): readonly Block[] {
  const widest = Math.max(LEAST_SHARE * room, ...widthsIn(blocks));
  return blocks.map((block) => withShares(block, [widest, room - widest]));
}

/** Widths of the pictures that have words beside them. */
function widthsIn(blocks: readonly Block[]): readonly number[] {
  return blocks.flatMap((block) => {
    if (block.block === 'together') return widthsIn(block.blocks);
    return block.block === 'columns' ? block.columns.flat().flatMap(pictureWidth) : [];
  });
}

const pictureWidth = (block: Block): readonly number[] =>
  block.block === 'figure' ? [block.width ?? widthOf(block.svg)] : [];

function withShares(block: Block, shares: readonly number[]): Block {
  if (block.block === 'together')
    return { ...block, blocks: block.blocks.map((each) => withShares(each, shares)) };
  const hasPicture = block.block === 'columns' && block.columns.flat().flatMap(pictureWidth).length > 0;
  return hasPicture ? { ...block, shares } : block;
}

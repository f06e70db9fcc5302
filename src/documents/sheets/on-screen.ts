import { fragment } from '../pages/fragment.ts';
import type { Block, Cell, SheetOfPaper } from './block.ts';

/** A sheet of paper as a strict page takes it: its pictures without styles, each with ids of its own. */
export function onScreen(sheet: SheetOfPaper): SheetOfPaper {
  let pictures = 0;
  const picture = (svg: string): string => {
    pictures += 1;
    return fragment(svg, `${sheet.name} ${pictures}`);
  };
  const cellOf = (cell: Cell): Cell =>
    typeof cell !== 'string' && 'svg' in cell ? { ...cell, svg: picture(cell.svg) } : cell;
  const all = (blocks: readonly Block[]): readonly Block[] => blocks.map(blockOf);
  const blockOf = (block: Block): Block => {
    switch (block.block) {
      case 'figure':
        return { ...block, svg: picture(block.svg) };
      case 'table':
        return { ...block, rows: block.rows.map((row) => row.map(cellOf)) };
      case 'columns':
        return { ...block, columns: block.columns.map(all) };
      case 'together':
        return { ...block, blocks: all(block.blocks) };
      case 'tags':
        return { ...block, tags: block.tags.map(all) };
      case 'slip':
        return {
          ...block,
          strips: block.strips.map((strip) => ({ ...strip, blocks: all(strip.blocks) })),
          adult: all(block.adult),
        };
      default:
        return block;
    }
  };
  return { ...sheet, blocks: all(sheet.blocks) };
}

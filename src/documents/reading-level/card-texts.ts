import type { TableSheet } from '../pages/sheet.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import type { Block, SheetOfPaper } from '../sheets/block.ts';

/** A text that a pupil reads at a table, by what it is for. */
export interface CardText {
  readonly of: 'about' | 'caution' | 'step' | 'text';
  readonly text: string;
}

/**
 * What the printed card of a table says in sentences: what the machine is, the cautions, the steps, how the
 * table is put back, and the lines between them. What stands there twice counts once, so that saying it again
 * makes no card easier. Titles, names of parts and words in drawings are no sentences and are left out.
 */
export function cardTextsOf(language: Language, table: TableSheet, card: SheetOfPaper): readonly CardText[] {
  const about = `${table.machine}.about`;
  const all: readonly CardText[] = [
    ...(hasSentence(language, about) ? [{ of: 'about' as const, text: sentence(language, about) }] : []),
    ...card.blocks.flatMap(textsIn),
  ];
  return [...new Map(all.map((each) => [each.text, each])).values()];
}

function textsIn(block: Block): readonly CardText[] {
  const texts = (of: CardText['of'], items: readonly string[]) => items.map((text) => ({ of, text }));
  switch (block.block) {
    case 'care':
      return texts('caution', block.items);
    case 'steps':
    case 'ticks':
      return texts('step', block.items);
    case 'text':
      return texts('text', [block.text]);
    case 'columns':
      return block.columns.flat().flatMap(textsIn);
    case 'together':
      return block.blocks.flatMap(textsIn);
    default:
      return [];
  }
}

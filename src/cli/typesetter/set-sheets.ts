import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { pdfOfSheet } from './pdf-of-sheet.ts';

/**
 * The typesetter's own process: a sheet comes in, its PDF goes back. It stands apart because the
 * engine works in one go and keeps some memory of every page that it set.
 */
interface Asked {
  readonly number: number;
  readonly sheet: SheetOfPaper;
}

export type Answered =
  | { readonly number: number; readonly pdf: Uint8Array }
  | { readonly number: number; readonly fault: string };

process.on('message', (asked: Asked) => {
  process.send?.(answer(asked));
});

function answer({ number, sheet }: Asked): Answered {
  try {
    return { number, pdf: pdfOfSheet(sheet) };
  } catch (fault) {
    return { number, fault: fault instanceof Error ? fault.message : String(fault) };
  }
}

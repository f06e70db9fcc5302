import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

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

const fonts = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/atkinson-hyperlegible/package.json'),
);
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });

process.on('message', (asked: Asked) => {
  process.send?.(answer(asked));
});

function answer({ number, sheet }: Asked): Answered {
  try {
    const pdf = compiler.pdf(
      { mainFileContent: TYPST_SOURCE, inputs: { sheet: JSON.stringify(sheet) } },
      { pdfStandard: 'ua-1' },
    );
    return { number, pdf: new Uint8Array(pdf) };
  } catch (fault) {
    return { number, fault: fault instanceof Error ? fault.message : String(fault) };
  }
}

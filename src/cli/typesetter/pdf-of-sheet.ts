import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { typeThatFits } from '../../documents/sheets/type-that-fits.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

const fonts = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/atkinson-hyperlegible/package.json'),
);
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });

/** A sheet set by the engine in this very process: tagged PDF (PDF/UA-1) with its fonts in it. */
export function pdfOfSheet(sheet: SheetOfPaper): Uint8Array {
  const at = (share: number) => ({
    mainFileContent: TYPST_SOURCE,
    inputs: { sheet: JSON.stringify(sheet), share: String(share) },
  });
  const share = typeThatFits(sheet, (each) => compiler.compile(at(each)).result?.numOfPages ?? 0);
  return new Uint8Array(compiler.pdf(at(share), { pdfStandard: 'ua-1' }));
}

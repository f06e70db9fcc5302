import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

const fonts = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/atkinson-hyperlegible/package.json'),
);
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });

/** A sheet set by the engine in this very process: tagged PDF (PDF/UA-1) with its fonts in it. */
export const pdfOfSheet = (sheet: SheetOfPaper): Uint8Array =>
  new Uint8Array(
    compiler.pdf(
      { mainFileContent: TYPST_SOURCE, inputs: { sheet: JSON.stringify(sheet) } },
      { pdfStandard: 'ua-1' },
    ),
  );

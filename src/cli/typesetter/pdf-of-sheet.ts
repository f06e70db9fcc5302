import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

const fonts = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/atkinson-hyperlegible/package.json'),
);
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });

/** Shares of the usual size at which words are set, the largest first; the last is still 10 points of 13. */
const SHARES = [1, 0.95, 0.9, 0.85, 0.8, 0.77] as const;

/** A sheet set by the engine in this very process: tagged PDF (PDF/UA-1) with its fonts in it. */
export function pdfOfSheet(sheet: SheetOfPaper): Uint8Array {
  const at = (share: number) => ({
    mainFileContent: TYPST_SOURCE,
    inputs: { sheet: JSON.stringify(sheet), share: String(share) },
  });
  return new Uint8Array(compiler.pdf(at(shareThatFits(sheet, at)), { pdfStandard: 'ua-1' }));
}

/** The largest type at which a sheet has no more sides than it may; nothing is cut where none is small enough. */
function shareThatFits(
  { mostSides }: SheetOfPaper,
  at: (share: number) => Parameters<typeof compiler.compile>[0],
): number {
  if (mostSides === undefined) return 1;
  const fits = (share: number): boolean => (compiler.compile(at(share)).result?.numOfPages ?? 0) <= mostSides;
  return SHARES.find(fits) ?? 1;
}

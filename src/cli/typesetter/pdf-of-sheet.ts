import { createRequire } from 'node:module';
import { dirname } from 'node:path';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import { TYPST_SOURCE } from '../../documents/sheets/typst-source.ts';

const fonts = dirname(
  createRequire(import.meta.url).resolve('@expo-google-fonts/atkinson-hyperlegible/package.json'),
);
const compiler = NodeCompiler.create({ fontArgs: [{ fontPaths: [fonts] }] });

/** Shares of its size at which the words of a sheet are set, the largest first. */
const SHARES = [1, 0.95, 0.9, 0.86, 0.8, 0.77] as const;
/** The least that can still be read, 9 points of 10.5 and 10 of 13: common practice, no source. */
const LEAST_SHARE = { usual: 0.86, large: 0.77, sign: 1 } as const;

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
  { mostSides, size }: SheetOfPaper,
  at: (share: number) => Parameters<typeof compiler.compile>[0],
): number {
  if (mostSides === undefined) return 1;
  const fits = (share: number): boolean => (compiler.compile(at(share)).result?.numOfPages ?? 0) <= mostSides;
  return SHARES.filter((share) => share >= LEAST_SHARE[size]).find(fits) ?? 1;
}

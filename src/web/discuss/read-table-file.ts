import type { SourceText } from '../../core/files/source-text.ts';
import { wideOrder } from '../../core/files/wide-order.ts';

/** A readings file from a disk, whichever way a spreadsheet saved it. */
export async function readTableFile(file: File): Promise<SourceText> {
  return { name: file.name, text: decoded(new Uint8Array(await file.arrayBuffer())) };
}

function decoded(bytes: Uint8Array): string {
  const wide = wideOrder(bytes);
  if (wide !== null) return new TextDecoder(wide).decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

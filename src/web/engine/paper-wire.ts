/** How far the setting of sheets is, and what came of it. */
export type AnsweredPaper =
  | { readonly answer: 'so far'; readonly done: number; readonly all: number }
  | { readonly answer: 'done'; readonly files: readonly PaperFile[] }
  | { readonly answer: 'failed' };

/** A file to be saved: one PDF a sheet, and all of them in one archive where there are several. */
export interface PaperFile {
  readonly name: string;
  readonly type: 'application/pdf' | 'application/zip';
  readonly bytes: Uint8Array<ArrayBuffer>;
}

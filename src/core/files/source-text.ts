import type { Node } from './node.ts';

/** One of the user's files before it is read: its name as the user knows it, and its text. */
export interface SourceText {
  readonly name: string;
  readonly text: string;
}

/** The same file with its tree, where it has one: what a place in the data is looked up in. */
export interface SourceFile extends SourceText {
  readonly root: Node | null;
}

import type { Fields, Filled } from './fields.ts';

/** A part of the kit as a machine receives it: its mark and its checked fields. */
export interface Part {
  readonly mark: string;
  readonly kind: string;
  readonly fields: Filled;
}

/** A kind of part that can stand in a kit file. */
export interface PartKind {
  readonly kind: string;
  /** What it is, as a sentence key. */
  readonly meaning: string;
  readonly fields: Fields;
}

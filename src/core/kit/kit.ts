import type { Part } from '../description/part.ts';
import type { Kilograms } from '../quantities/brands.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { LocalGravity } from './local-gravity.ts';

/** One physical kit: what lies in the boxes, by mark, with what was found out about it. */
export interface Kit {
  readonly file: string;
  readonly serial: string;
  readonly name: string;
  readonly decimal: DecimalMark;
  /** Where the kit is at home, or the gravity that was written outright. */
  readonly gravity: LocalGravity | null;
  readonly parts: readonly KitPart[];
  readonly measurements: readonly Measurement[];
  /** File of the bench book, beside the kit file; left out where none is kept. */
  readonly benchBook?: string;
}

/** A part with its mark, and what the kit says about its use. */
export interface KitPart extends Part {
  /** Machines that it fits, by name; `null` where the kit doesn't say, so that it fits any. */
  readonly fits: readonly string[] | null;
  /** A spare is never put on a table unless the visit says so. */
  readonly isSpare: boolean;
  readonly note: string | null;
  /** Which box it lies in; `null` where the kit doesn't say. */
  readonly box: string | null;
  /** The whole part on a balance, where its kind has no mass of its own. */
  readonly weighs?: Measured<Kilograms>;
  /** Something about it could not be read: nothing can be reckoned with it. */
  readonly isFaulty: boolean;
}

/** One line of the bench book: what was measured on which part, when and by which role. */
export interface Measurement {
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly part: string;
  /** Name of the part's field. */
  readonly what: string;
  /** As written. */
  readonly found: string;
  readonly by: string | null;
  readonly note: string | null;
}

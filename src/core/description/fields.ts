import type { Dimension } from '../quantities/dimension.ts';
import type { Measured } from '../uncertainty/measured.ts';

/**
 * What may be written under one heading of a file: the one description from which the check, the
 * published JSON Schema and the printed help follow. Keys are read aloud, so they are plain words
 * with spaces.
 */
export type Fields = Readonly<Record<string, Field>>;

export type Field =
  /** A number with a unit: `300 g`, `14.2 cm ± 0.1 cm`. A load takes mass or force. */
  (
    | {
        readonly type: 'quantity';
        readonly dimensions: readonly Dimension[];
        readonly least?: number;
        readonly above?: number;
        readonly most?: number;
      }
    /** Several such numbers. */
    | {
        readonly type: 'quantities';
        readonly dimensions: readonly Dimension[];
        readonly least?: number;
      }
    /** A count: whole number, no unit. */
    | { readonly type: 'count'; readonly least: number; readonly most?: number }
    /** A place on the apparatus: `hole 3`, or a distance from its left (lower) end: `35 cm`. */
    | { readonly type: 'position' }
    /** One word of a list. */
    | { readonly type: 'choice'; readonly of: readonly string[] }
    /** A friction (or rolling, bearing, sheave) value: a number, or the name of a sourced kind. */
    | {
        readonly type: 'sourced';
        readonly table: SourcedTable;
        readonly dimensions: readonly Dimension[];
        readonly assumed?: string;
      }
    | { readonly type: 'text' }
    /** One mark or several, as a list or with commas between: `5, 6`. */
    | { readonly type: 'marks' }
    | { readonly type: 'yes-no' }
  ) & {
    readonly meaning: string;
    readonly required?: true;
    /** Of a length that is the same between each and the next: the field that counts them. */
    readonly between?: string;
    /** An example as it would be written; shown in help and in the schema, checked by a test. */
    readonly example: string;
  };

export type SourcedTable = 'friction' | 'bearing' | 'rolling' | 'sheave';

/** A field after the check. A sourced field has both frictions. */
export type FilledValue =
  | {
      readonly type: 'quantity';
      readonly measured: Measured;
      readonly dimension: Dimension;
      readonly written: string;
      /** The unit as written, where there was one: graduations are printed in it. */
      readonly unit?: { readonly symbol: string; readonly si: number };
    }
  | {
      readonly type: 'quantities';
      readonly measured: readonly Measured[];
      readonly dimension: Dimension;
      readonly written: string;
    }
  | { readonly type: 'count'; readonly count: number }
  | { readonly type: 'hole'; readonly hole: number }
  | { readonly type: 'choice'; readonly choice: string }
  | {
      readonly type: 'sourced';
      readonly sourced: Sourced;
      readonly written: string;
    }
  | { readonly type: 'text'; readonly text: string }
  | { readonly type: 'marks'; readonly marks: readonly string[] }
  | { readonly type: 'yes-no'; readonly yes: boolean };

/** A value for the moving machine and, where the kind has one, for the start. */
export interface Sourced {
  readonly moving: Measured;
  readonly starting: Measured;
  /** Name of the kind in the sourced table, where one was named or assumed. */
  readonly kind?: string;
}

export type Filled = Readonly<Record<string, FilledValue>>;

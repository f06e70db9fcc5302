/**
 * Why a text is no quantity, as data: the sentence stands in the messages of a language.
 * `span` is the place in the text, `nearest` the unit that was probably meant.
 */
export interface ReadFault {
  readonly kind: 'read-fault';
  readonly fault: Fault;
  /** Plain facts for the sentence; each is named beside its fault in `Fault`. */
  readonly facts: Readonly<Record<string, string | readonly string[]>>;
  readonly span: readonly [from: number, to: number];
  readonly nearest?: string;
}

export type Fault =
  /** Nothing is written. */
  | 'empty'
  /** No number where one must stand. Facts: `written`. */
  | 'not-a-number'
  /** A number without its unit. Facts: `written`, `wanted` (dimensions), `units`. */
  | 'no-unit'
  /** Facts: `written`, `wanted`, `units`; `nearest` where one is close. */
  | 'unknown-unit'
  /** A unit of something else. Facts: `written`, `is`, `wanted`, `units`. */
  | 'wrong-dimension'
  /** Grams where a force is needed. Facts: `written`, `asForce` (`250 gf`), `asNewtons` (`2.45 N`). */
  | 'mass-for-force'
  /** Newtons where a mass is needed. Facts: `written`, `asMass` (at standard gravity). */
  | 'force-for-mass'
  /** `1,5` in a file with decimal points. Facts: `written`, `instead`, `thousands` where it may be that. */
  | 'decimal-comma'
  /** `1.5` in a file with decimal commas. Facts as before. */
  | 'decimal-point'
  /** `b..a` with the greater end first. Facts: `written`, `instead`. */
  | 'empty-range'
  /** `20-30 g`. Facts: `written`, `instead`. */
  | 'hyphen-range'
  /** Facts: `written`. */
  | 'negative-uncertainty'
  /** `0.3 ± 10 %`: of the value, or points? Facts: `written`. */
  | 'ambiguous-percent'
  /** Something stands behind the quantity. Facts: `written`. */
  | 'left-over'
  /** More than a number can hold. Facts: `written`. */
  | 'too-large';

export const isReadFault = (value: { readonly kind: string }): value is ReadFault =>
  value.kind === 'read-fault';

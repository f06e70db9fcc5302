import type { NotDefined } from '../description/not-defined.ts';
import type { WorkingLine } from '../description/working.ts';
import type { Diagnostic, Facts } from '../diagnostics/diagnostic.ts';
import type { Graduations } from '../instruments/graduations.ts';
import type { Newtons } from '../quantities/brands.ts';
import type { WayOfReading } from '../statics/balance.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { WorkAccount } from './work-account.ts';

/** How a reading is taken: see the definitions of the four ways. */
export type { WayOfReading };

/** What is watched at the setup: the pull on a scale, a count of turns, a travel, or how easy it felt. */
export type Watched = 'pull' | 'turns' | 'travel' | 'ease';

/** All that follows from one setup, as plain data: every outlet prints from this. */
export interface Prediction {
  readonly table: string;
  readonly setup: string;
  readonly machine: string;
  readonly watched: Watched;
  readonly way: WayOfReading;
  /** The instrument's graduations (a scale's own, whole or quarter turns, millimetres). */
  readonly graduations: Graduations | null;
  readonly outcome: Outcome;
  /** The figure of the outcome (for a band its upper end) as one group reads it, with its unknowns. */
  readonly read: Measured | null;
  /** The lower end of a band, the same way. */
  readonly lower: Measured | null;
  /** The arrival reading that this prediction was re-keyed by; SI. */
  readonly rekeyedBy: { readonly setup: string; readonly reading: number } | null;
  /** Day of the last bench reading that it follows; left out where it follows none. */
  readonly benchSince?: string;
  /** Force between hook and machine with friction, before any scale: SI, with its unknowns. */
  readonly pull: Measured<Newtons> | null;
  readonly textbook: Textbook | NotDefined;
  /** Why the textbook value differs: sentence keys with facts. */
  readonly differences: readonly { readonly key: string; readonly facts: Facts }[];
  readonly budget: readonly BudgetRow[];
  readonly narrows: Narrowing | null;
  readonly idealAdvantage: number | NotDefined;
  readonly actualAdvantage: number | NotDefined;
  readonly velocityRatio: number | NotDefined;
  readonly efficiency: number | NotDefined;
  readonly account: WorkAccount | NotDefined;
  /** Assumptions that stand behind the figures, by unknown: shown as *assumed*. */
  readonly assumed: readonly { readonly unknown: string; readonly source: string }[];
  readonly diagnostics: readonly Diagnostic[];
  readonly working: () => readonly WorkingLine[];
}

/** The ideal figure of the schoolbook: load over ideal advantage. */
export interface Textbook {
  readonly value: number;
  readonly unit: 'N' | 'turns' | 'm';
}

/** What the group will find on the instrument. Values are SI (newtons, turns, metres). */
export type Outcome =
  | {
      readonly kind: 'reading';
      readonly expected: number;
      /** Standard uncertainty of one group's reading, hand scatter and graduations included. */
      readonly u: number;
      readonly good: GoodRange;
      /** Set where the scale's own weight is the least it can pull with. */
      readonly cutAtOwnWeight?: true;
    }
  | {
      readonly kind: 'band';
      readonly lower: number;
      readonly upper: number;
      readonly u: number;
      readonly good: GoodRange;
      readonly cutAtOwnWeight?: true;
    }
  | { readonly kind: 'on its stop'; readonly wouldShow: number; readonly stop: number }
  | {
      readonly kind: 'off the scale';
      readonly wouldShow: number;
      readonly range: number;
      readonly overloads: boolean;
    }
  | {
      readonly kind: 'moves under the scale';
      readonly needed: number;
      readonly ownWeight: number;
      /** What the scale then shows, and from - to. */
      readonly shows: number;
      readonly u: number;
      readonly good: GoodRange;
    }
  | { readonly kind: 'scale on the other side'; readonly force: number }
  | { readonly kind: 'ease'; readonly order: number; readonly of: number }
  | NotDefined;

/** "From - to": whole graduations outward, holding 19 of 20 careful readings. SI. */
export interface GoodRange {
  readonly from: number;
  readonly to: number;
}

/** One unknown's share in the uncertainty of the reading (JCGM 100, table 1). */
export interface BudgetRow {
  readonly unknown: string;
  readonly origin: 'stated' | 'bare' | 'assumed' | 'exact';
  readonly source?: string;
  /** d reading / d unknown. */
  readonly sensitivity: number;
  /** Standard uncertainty of the unknown, SI. */
  readonly u: number;
  /** |sensitivity| x standard uncertainty, SI. */
  readonly contribution: number;
  /** Share of the variance, 0 to 1. */
  readonly share: number;
}

/** The one measurement that would narrow the range most, with the range before and after. */
export interface Narrowing {
  readonly unknown: string;
  readonly before: GoodRange;
  readonly after: GoodRange;
}

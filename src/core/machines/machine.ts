import type { Drawing, Figure } from '../description/drawing.ts';
import type { Equipment } from '../description/equipment.ts';
import type { Fields, Filled } from '../description/fields.ts';
import type { NotDefined } from '../description/not-defined.ts';
import type { Part, PartKind } from '../description/part.ts';
import type { Caution, Step } from '../description/step.ts';
import type { WorkingLine } from '../description/working.ts';
import type { Diagnostic, Facts, Place } from '../diagnostics/diagnostic.ts';
import type { Newtons, Radians } from '../quantities/brands.ts';
import type { Asked, Balance, WayOfReading } from '../statics/balance.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';

/**
 * A machine set up on a table: what is discrete about it (`kind`, holes, choices) stands beside
 * `inputs`, every number of it with what is not known about that number.
 */
export interface Station {
  readonly machine: string;
  readonly inputs: Readonly<Record<string, Measured>>;
}

/** What a setup of this machine is made from: parts by slot, and the setup's own fields. */
export interface Preparation {
  readonly parts: Readonly<Record<string, Part>>;
  readonly fields: Filled;
  /** Place of a setup field, for diagnostics; `null` is the setup itself. */
  readonly place: (field: string | null) => Place;
  /** Place of a field of the part in a slot. */
  readonly partPlace: (slot: string, field: string | null) => Place;
  /** Where the machine is made of stages: each with its own preparation, from the load to the hand. */
  readonly stages?: readonly { readonly machine: string; readonly preparation: Preparation }[];
}

/** A slot of a setup: which kinds of part can fill it. */
export interface Slot {
  readonly kinds: readonly string[];
  readonly optional?: true;
}

export type Made<S extends Station> =
  | { readonly station: S; readonly diagnostics: readonly Diagnostic[] }
  | { readonly station: null; readonly diagnostics: readonly Diagnostic[] };

/**
 * The contract that every machine folder keeps. Key, advice, checks, cards, mistakes and challenge
 * ask this and nothing else about a machine.
 */
export interface Machine<S extends Station = Station> {
  readonly name: string;
  /** Part kinds that only this machine uses; those that several use stand in `parts`. */
  readonly partKinds: readonly PartKind[];
  readonly slots: Readonly<Record<string, Slot>>;
  readonly fields: Fields;
  /** The checked maker: refuses what can't be built, with the number that shows it. */
  readonly make: (preparation: Preparation) => Made<S>;
  /** The laws: balance at the limit of motion, with friction. */
  readonly balance: (station: S, at: At, asked: Asked) => Balance | NotDefined;
  /** What is counted or measured instead of pulled, where the machine has such a thing. */
  readonly tally?: (station: S, at: At) => Tally | NotDefined;
  /** The schoolbook's advantage: no friction, no dead weight, line without thickness. */
  readonly idealAdvantage: (station: S, at: At) => Ideal | NotDefined;
  /** Where the laws stop holding, as diagnostics with the number that shows it. */
  readonly limits: (
    station: S,
    at: At,
    balance: Balance,
    place: Preparation['place'],
  ) => readonly Diagnostic[];
  /** Angle of the line of pull above the level, where a scale can pull along a slope. */
  readonly slope?: (station: S, at: At) => Radians;
  readonly mistakes: readonly UsualMistake<S>[];
  /**
   * The load at rest that would pull as hard as this load does while it speeds up (m/s², of the load);
   * absent where the machine is too slow for that to be felt.
   */
  readonly speedingUp?: (station: S, at: At, asked: Asked, acceleration: number) => Newtons | null;
  /** Other figures that an ideal advantage is taken for, by a slip of reckoning. */
  readonly reckonings?: readonly Reckoning<S>[];
  /** How it is set up and pulled; `isFelt` where no scale is there and the hand judges. */
  readonly steps: (station: S, isFelt?: boolean) => readonly Step[];
  /** How it is read, where that needs more than the general words: what moves, and where it has to be. */
  readonly reading?: (station: S, way: WayOfReading) => readonly Step[] | null;
  /** What is undone first where one setup is built into another. */
  readonly between?: (from: S, to: S) => readonly Step[];
  /** Three things that put the table back to its start for whoever comes next; the load comes first. */
  readonly reset: (station: S, isFelt?: boolean) => readonly Step[];
  readonly cautions: (station: S, isFelt?: boolean) => readonly Caution[];
  /** What steps, cautions and drawing name and no slot holds; what is needed twice stands there twice. */
  readonly equipment: (station: S, isFelt?: boolean) => readonly Equipment[];
  readonly drawing: (station: S, at: At, isFelt?: boolean) => Drawing;
  /** Where one picture can't show it: several, each drawn to its own scale. */
  readonly figures?: (station: S, at: At, isFelt?: boolean) => readonly Figure[];
  /** What `reset` leaves, picture by picture, where that looks otherwise than the machine at work. */
  readonly start?: (station: S, at: At) => readonly Drawing[];
  /** What the real machine has and the schoolbook leaves out, as sentence keys with facts, largest first is not needed. */
  readonly differences: (station: S, at: At) => readonly { readonly key: string; readonly facts: Facts }[];
}

export type { Part, PartKind } from '../description/part.ts';

/** A count of turns, or a length in metres. */
export interface Tally {
  readonly what: 'turns' | 'travel';
  readonly value: number;
  /** The schoolbook's figure: flush at the start, nothing lost. */
  readonly textbook: number;
  readonly working: readonly WorkingLine[];
}

export interface Ideal {
  /** Load over effort. */
  readonly advantage: number;
  readonly working: readonly WorkingLine[];
}

/** A named way the station is set up wrongly, as a changed station; `null` where it can't happen here. */
export interface UsualMistake<S extends Station = Station> {
  /** Sentence key: `lever.load-hole-out`. */
  readonly code: string;
  /** Share of readings, an assumption. */
  readonly baseRate: number;
  readonly persists: Persists;
  readonly change: (station: S) => S | null;
  /** The load was left off as well: the machine moves itself alone. */
  readonly leavesOff?: true;
}

/**
 * What of a mistake is met again: a habit of the group that made it, something at the table that the next
 * group finds as well, or nothing.
 */
export type Persists = 'group' | 'station' | 'reading';

/** A way to reckon the ideal advantage that a group may have taken; only its own columns show it. */
export interface Reckoning<S extends Station = Station> {
  /** Sentence key: `tackle.fall-counted`. */
  readonly code: string;
  /** Not wrong, only another figure than the one that was asked for. */
  readonly isSound?: true;
  /** Pull travel over load travel as it was then reckoned; `null` where it can't happen here. */
  readonly ratio: (station: S, at: At) => number | null;
}

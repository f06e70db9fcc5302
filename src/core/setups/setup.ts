import type { WorkingLine } from '../description/working.ts';
import type { Place } from '../diagnostics/diagnostic.ts';
import type { Graduations } from '../instruments/graduations.ts';
import type { SpringScale } from '../instruments/spring-scale.ts';
import type { Machine, Station } from '../machines/machine.ts';
import type { Load } from '../parts/weight.ts';
import type { Metres, MetresPerSecondSquared, Newtons, Radians } from '../quantities/brands.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';
import type { Watched, WayOfReading } from './prediction.ts';

/** Machine, instrument and load set up to be read: all that a prediction needs. */
export interface Setup {
  readonly table: string;
  readonly mark: string;
  readonly machine: Machine;
  readonly station: Station;
  readonly load: Load;
  readonly gravity: Measured<MetresPerSecondSquared>;
  /** Where that gravity comes from, as working; empty where it was written or is the standard one. */
  readonly gravityWorking: readonly WorkingLine[];
  readonly watched: Watched;
  readonly way: WayOfReading;
  readonly scale: SpringScale | null;
  readonly hang: Hang;
  readonly zeroed: Hang | 'in place';
  readonly tapped: boolean;
  /** The hand takes the weight of a scale that hangs upside down, so that it can pull with less. */
  readonly handCarries: boolean;
  /** Marks of what counts or measures, where turns or a travel are watched. */
  readonly marks: Graduations | null;
  /** Load travel that the work account is for; `null` where the file does not say. */
  readonly lift: Measured<Metres> | null;
  readonly reader: Reader;
  readonly partner: string | null;
  /** For groups that wait: built when somebody has time for it, and with a key of its own. */
  readonly isExtra: boolean;
  /** Day of the last bench reading that its values follow; left out where they are the files' own. */
  readonly benchSince?: string;
  /** What may be taken for what belongs here; absent where nobody said. */
  readonly around?: Around;
  readonly place: (field: string | null) => Place;
}

/** What lies and stands around a setup, and may be taken for what belongs there. */
export interface Around {
  /** Mark of the weight that belongs here; `null` where none does. */
  readonly hung: string | null;
  /** Other weights of the kit that fit the machine. */
  readonly weights: readonly { readonly mark: string; readonly load: Load }[];
  /** Setups of the same table that this one is compared with, either way. */
  readonly partners: readonly Setup[];
}

/** Who reads: hand scatter as a standard deviation in shares of the reading, and the most they may pull. */
export interface Reader {
  readonly scatter: number;
  readonly handLimit: Newtons | null;
}

/** How a scale hangs: by name, or by the angle of its hook from straight down. */
export type Hang =
  | 'hook down'
  | 'level'
  | 'along the slope'
  | 'upside down'
  | { readonly angle: Measured<Radians> };

/** Angle of the hook from hanging straight down. */
export function hangAngle(hang: Hang, slope: Radians, at: At): Radians {
  if (typeof hang === 'object') return at(hang.angle);
  switch (hang) {
    case 'hook down':
      return 0 as Radians;
    case 'level':
      return (Math.PI / 2) as Radians;
    case 'along the slope':
      return (Math.PI / 2 - slope) as Radians;
    case 'upside down':
      return Math.PI as Radians;
  }
}

/** Beyond this the scale hangs from the machine by its hook and its whole weight pulls. */
const OVERTURNED = (Math.PI * 3) / 4;

export const hangsFromTheMachine = (hang: Hang): boolean =>
  hang === 'upside down' || (typeof hang === 'object' && hang.angle.value > OVERTURNED);

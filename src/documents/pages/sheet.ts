import type { Figure } from '../../core/description/drawing.ts';
import type { Caution, Step } from '../../core/description/step.ts';
import type { OwnWords, Titled } from '../../core/files/titles.ts';
import type { Graduations } from '../../core/instruments/graduations.ts';
import type { Prediction } from '../../core/setups/prediction.ts';

/** What a page, a key or a terminal needs to know of a whole preparation: plain data from core. */
export interface Sheet {
  readonly kit: string;
  readonly activity: string;
  /** The same as the file has it, in each language that it has. */
  readonly activityTitled: Titled;
  /** Date and place of the visit, where there is one: a key belongs to kit, activity, visit and date. */
  readonly visit: string | null;
  readonly tables: readonly TableSheet[];
}

/** One table with its setups. */
export interface TableSheet {
  readonly mark: string;
  readonly title: string;
  /** The same as the file has it, in each language that it has. */
  readonly titled: Titled;
  readonly machine: string;
  readonly setups: readonly SetupSheet[];
}

/** One setup as it is built, pulled and read; `prediction` is printed on keys, never on a pupil's page. */
export interface SetupSheet {
  readonly mark: string;
  /** One picture, or one for each stage; a heading only where there are several. */
  readonly figures: readonly FigureSheet[];
  readonly steps: readonly Step[];
  /** How it is read, once it is built and pulled. */
  readonly reads: readonly Step[];
  readonly cautions: readonly Caution[];
  readonly prediction: Prediction;
  readonly load: LoadSheet | null;
  readonly scale: ScaleSheet | null;
  /** Mark of the setup that this one is compared with, and what the two show side by side. */
  readonly partner: string | null;
  readonly shows: string | null;
  readonly showsWords: OwnWords | null;
}

export interface FigureSheet {
  readonly title: Figure['title'] | null;
  readonly drawing: Figure['drawing'];
}

export interface LoadSheet {
  readonly label: string;
  /** Kilograms, where it was written as a mass; newtons, where it was written as a weight. */
  readonly mass: number | null;
  readonly weight: number | null;
}

/** A spring scale as a group holds it. Forces in newtons. */
export interface ScaleSheet {
  readonly label: string;
  readonly hangs: HangSheet;
  /** How it hung when its pointer was set to 0. */
  readonly zeroed: HangSheet | 'in place';
  readonly graduations: Graduations;
  readonly range: number;
  readonly stop: number;
  /** How much less than the pull it shows, hanging and zeroed as stated. */
  readonly showsLess: number;
}

/** How a scale hangs: by name, or by the angle of its hook from straight down, radians. */
export type HangSheet =
  | 'hook down'
  | 'level'
  | 'along the slope'
  | 'upside down'
  | { readonly angle: number };

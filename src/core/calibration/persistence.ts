import type { Matrix } from '../uncertainty/matrix.ts';
import type { Measured, Part } from '../uncertainty/measured.ts';

/** Whose reading it is: the setup that was built for it, and when. */
export interface Occasion {
  /** Mark of the setup; `null` where none was built. */
  readonly setting: string | null;
  readonly date: string;
}

/** A figure taken apart: what belongs to the apparatus for good, and what only scatters this reading. */
export interface Persistent {
  readonly value: number;
  readonly parts: readonly Part[];
  /** Each scatter under the name that it shares with other readings. */
  readonly scatter: readonly { readonly name: string; readonly part: Part }[];
}

/**
 * Hand, graduation and sticking pointer are one reading's own. Where a setup's own fields stand (`L1/load
 * at`) is set anew whenever it is built: shared by the readings of one day. Gravity is the place's and is
 * not learned from a spring scale, yet all readings share it.
 */
export function persistentOf(figure: Measured, occasion: Occasion, n: number): Persistent {
  const parts: Part[] = [];
  const scatter: { name: string; part: Part }[] = [];
  for (const part of figure.parts) {
    const { id } = part.unknown;
    if (id.startsWith('reading/')) scatter.push({ name: `${id} ${n}`, part });
    else if (isOfTheSetting(id, occasion.setting)) scatter.push({ name: `${id} ${occasion.date}`, part });
    else if (isOfThePlace(id)) scatter.push({ name: id, part });
    else parts.push(part);
  }
  return { value: figure.value, parts, scatter };
}

const isOfTheSetting = (id: string, setting: string | null): boolean =>
  setting !== null && id.startsWith(`${setting}/`);

/** Gravity as files and places give it. */
const isOfThePlace = (id: string): boolean => /^(place|visit|kit)\/|^gravity$/.test(id);

/** Covariance of what scatters the readings. */
export const noiseOf = (figures: readonly Persistent[]): Matrix =>
  figures.map((a) =>
    figures.map((b) =>
      a.scatter.reduce((sum, { name, part }) => {
        const same = b.scatter.find((each) => each.name === name);
        return same === undefined ? sum : sum + part.slope * same.part.slope * part.unknown.u ** 2;
      }, 0),
    ),
  );

import type { Equipment } from '../../core/description/equipment.ts';
import type { KitPart } from '../../core/kit/kit.ts';
import { isFelt } from '../prepare.ts';
import type { Language } from '../sentences/language.ts';
import { partsOfSetup, playingOf } from './kit-parts.ts';
import type { PaperJob } from './paper-job.ts';
import { sayIn } from './say.ts';

/** A thing that stands on a table and so many of it. */
export interface Needed {
  readonly what: Equipment;
  readonly count: number;
}

/** What a table needs beside the parts that play its roles. */
export interface TableEquipment {
  readonly table: string;
  /** Parts from the boxes that no role asks for and that serve as such a thing. */
  readonly parts: readonly KitPart[];
  /** The kit file lists nothing of the kind. */
  readonly others: readonly Needed[];
}

/** Kinds of part that a kit may list for such a thing. */
const KINDS: Readonly<Partial<Record<Equipment, string>>> = { ruler: 'ruler', line: 'line', string: 'line' };

/**
 * What every table needs that no role of its setups asks for: from the boxes where the kit lists such a
 * part, each for one table, else by name alone.
 */
export function equipmentOf(job: PaperJob): readonly TableEquipment[] {
  const { kit, tables } = job.prepared;
  const playing = playingOf(job);
  const unused = new Set(
    (kit?.parts ?? []).filter(({ mark, isSpare, isFaulty }) => !isSpare && !isFaulty && !playing.has(mark)),
  );
  return tables.map(({ mark: table, machine, setups }) => {
    const needed = mostOf(
      setups.map(({ setup }) =>
        withoutParts(
          setup.machine.equipment(setup.station, isFelt(setup)),
          partsOfSetup(job, table, setup.mark),
        ),
      ),
    );
    const parts: KitPart[] = [];
    const others = needed.flatMap(({ what, count }): readonly Needed[] => {
      const serving = [...unused]
        .filter(({ kind, fits }) => kind === KINDS[what] && (fits === null || fits.includes(machine)))
        .slice(0, count);
      for (const part of serving) unused.delete(part);
      parts.push(...serving);
      return serving.length === count ? [] : [{ what, count: count - serving.length }];
    });
    return { table, parts, others };
  });
}

/** Lines that play a role of the setup are there already. */
function withoutParts(equipment: readonly Equipment[], parts: readonly KitPart[]): readonly Equipment[] {
  const kinds = parts.map(({ kind }) => kind);
  return equipment.filter((each) => {
    const at = kinds.indexOf(KINDS[each] ?? '');
    if (at >= 0) kinds.splice(at, 1);
    return at < 0;
  });
}

/** Setups of a table are built one after another: the one that needs most of a thing says how many. */
function mostOf(setups: readonly (readonly Equipment[])[]): readonly Needed[] {
  return [...new Set(setups.flat())].map((what) => ({
    what,
    count: Math.max(...setups.map((setup) => setup.filter((each) => each === what).length)),
  }));
}

/** A thing that the kit file does not list, how many of it and for which tables. */
export interface Beside extends Needed {
  readonly tables: readonly string[];
}

/** What the tables need besides the parts of the kit, each thing once with the tables that it is for. */
export function besideTheParts(job: PaperJob): readonly Beside[] {
  const needed = equipmentOf(job).flatMap(({ table, others }) => others.map((each) => ({ ...each, table })));
  return [...new Set(needed.map(({ what }) => what))].map((what) => {
    const own = needed.filter((each) => each.what === what);
    return {
      what,
      count: own.reduce((sum, { count }) => sum + count, 0),
      tables: own.map(({ table }) => table),
    };
  });
}

/**
 * A thing by its name, with its number where one is not enough.
 *
 * @example neededText('en', { what: 'line', count: 2 }) // => 'line (2)'
 */
export function neededText(language: Language, { what, count }: Needed): string {
  const say = sayIn(language);
  const name = say(`sheet.equipment.${what}`);
  return count === 1 ? name : say('sheet.equipment.several', { what: name, count });
}

import { advisePartners } from '../../core/advise.ts';
import { inDecimals } from '../../core/files/role-words.ts';
import { prepare } from '../../core/prepare.ts';
import type { Option } from '../../core/setups/spot.ts';
import type { Edit, Texts } from './prepare-wire.ts';
import { filesRead } from './question-bench.ts';
import type { AskedPair, PairStarted } from './question-wire.ts';
import type { FilesRead } from './table-questions.ts';
import { anotherSetup, putIn } from './table-questions.ts';
import { withEdits } from './with-edits.ts';

/**
 * A partner for the last setup of a table, so that a class sees the difference: the setup once more, with one thing of its
 * machine set otherwise, and where that needs one a part more. `null` where no such thing is found.
 */
export function pairStart({ texts, table }: Pick<AskedPair, 'texts' | 'table'>): PairStarted | null {
  const last = setupsAt(texts, table)?.at(-1)?.mark;
  const [best] = last === undefined ? [] : advisePartners(prepare({ ...texts }), last);
  if (last === undefined || best === undefined) return null;
  const first = best.both.reduce<Texts | null>((made, option) => withOption(made, last, option), texts);
  const copied = first === null ? null : withAnother(first, table);
  const second = copied === null ? undefined : setupsAt(copied, table)?.at(-1)?.mark;
  if (second === undefined) return null;
  const written = best.options.reduce((made, option) => withOption(made, second, option), copied);
  if (written === null) return null;
  const [more, less] = best.asksMore ? [second, last] : [last, second];
  return { texts: written, more, less, of100: Math.round(100 * best.chance.once.order) };
}

const setupsAt = (texts: Texts, table: string) =>
  filesRead(texts, 'en')?.activity.tables.find(({ mark }) => mark === table)?.setups;

function withAnother(texts: Texts, table: string): Texts | null {
  const read = filesRead(texts, 'en');
  const at = read?.activity.tables.find(({ mark }) => mark === table);
  return read === null || at === undefined ? null : withEdits(texts, [anotherSetup(read, at)]);
}

/** One thing set otherwise at a setup; `null` where that can't be written. */
function withOption(texts: Texts | null, mark: string, option: Option): Texts | null {
  const read = texts === null ? null : filesRead(texts, 'en');
  const edit = read === null ? null : editFor(read, mark, option);
  return texts === null || edit === null ? null : withEdits(texts, [edit]);
}

function editFor(read: FilesRead, mark: string, { spot, value, text }: Option): Edit | null {
  const table = read.activity.tables.find(({ setups }) => setups.some((each) => each.mark === mark));
  const setup = table?.setups.find((each) => each.mark === mark);
  if (table === undefined || setup === undefined) return null;
  if (value.part === undefined) {
    const said = inDecimals(text, 'point', read.activity.decimal);
    return { file: 'activity', path: [...setup.path, spot.name], value: said };
  }
  const part = read.kit.parts.find((each) => each.mark === value.part.mark);
  return part === undefined ? null : putIn(read, table, setup, spot.name, part);
}

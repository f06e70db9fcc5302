import { castRoles } from '../../core/files/casting.ts';
import type { Path } from '../../core/files/context.ts';
import { nodeAt } from '../../core/files/edit-text.ts';
import { inDecimals } from '../../core/files/role-words.ts';
import { startTable } from '../../core/start-table.ts';
import type { Edit, FileKind } from './prepare-wire.ts';
import { filesRead } from './question-bench.ts';
import type { AskedStart, TableStarted } from './question-wire.ts';
import { freeLetter, freeMark, roleEdits } from './table-questions.ts';

/**
 * One more table behind the last, with a first setup from what the kit has. Where none is found, the table
 * still stands there, with a setup in which everything is to be answered.
 */
export function tableStart({
  texts,
  machine,
  mark,
  title,
}: Pick<AskedStart, 'texts' | 'machine' | 'mark' | 'title'>): TableStarted | null {
  const read = filesRead(texts, 'en');
  if (read === null) return null;
  const list = nodeAt(read.roots.activity, ['tables']);
  const path: Path = ['tables', list?.kind === 'list' ? list.items.length : 0];
  const casting = castRoles(read.kit, read.activity, read.visit).casting;
  const inUse = [...casting.values()].flatMap((cast) => [...cast.values()].map((part) => part.mark));
  const start = startTable(read.kit, machine, inUse);
  const written = (at: Path, value: string, file: FileKind = 'activity'): Edit => ({ file, path: at, value });
  const setup = [...path, 'setups', 0];
  const cast = Object.entries(start?.parts ?? {}).flatMap(([slot, part]) => {
    const found = read.kit.parts.find((each) => each.mark === part);
    return found === undefined ? [] : roleEdits(read, { mark, path }, slot, found);
  });
  const answers = Object.entries(start?.fields ?? {}).map(([field, value]) =>
    written([...setup, field], inDecimals(value, 'point', read.activity.decimal)),
  );
  return {
    edit: {
      ...written([...path, 'table'], mark),
      and: [
        written([...path, 'title'], title),
        written([...path, 'machine'], machine),
        ...cast,
        written([...setup, 'setup'], freeMark(read, freeLetter(read, title))),
        ...answers,
      ],
    },
    found: start === null ? 'none' : start.isClear ? 'clear' : 'built',
  };
}

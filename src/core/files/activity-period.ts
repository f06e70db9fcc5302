import type { Filled } from '../description/fields.ts';
import { isYesIn, marksIn, measuredIn } from '../description/filled.ts';
import type { ActivityPeriod, ActivityTable, TableStay } from './activity.ts';
import { checkFields } from './check-fields.ts';
import { asText, atValue, type Context, listAt, nearestFact, type Path } from './context.ts';
import type { MapNode, Node } from './node.ts';
import { type OwnWords, taskFields, taskIn } from './titles.ts';

/** Reads the time around the tables, and what groups do on paper while they wait. */
export const readActivityPeriod = (root: MapNode, filled: Filled, context: Context): ActivityPeriod => ({
  introduction: measuredIn(filled, 'introduction') ?? null,
  talkAtTheEnd: measuredIn(filled, 'talk at the end') ?? null,
  walk: measuredIn(filled, 'walk') ?? null,
  whileWaiting: listAt(root, 'while waiting', [], context).flatMap((item, n) =>
    readTask(item, ['while waiting', n], context),
  ),
});

/** A task in one language, or a block with the task in several. */
function readTask(item: Node, path: Path, context: Context): readonly OwnWords[] {
  if (item.kind !== 'map') {
    const text = asText(item, path, context);
    return text === null ? [] : [{ text, texts: {} }];
  }
  const owner = { path, idOf: (field: string) => `activity/${field}` };
  const task = taskIn(checkFields(item, taskFields, owner, context).filled);
  return task === null ? [] : [task];
}

/** What a table says of its place in the period. */
export const stayIn = (filled: Filled): TableStay => ({
  takes: measuredIn(filled, 'takes') ?? null,
  reset: measuredIn(filled, 'reset') ?? null,
  after: marksIn(filled, 'after') ?? [],
  needsAdult: isYesIn(filled, 'needs an adult'),
  mayBeLeftOut: isYesIn(filled, 'may be left out'),
});

/** A table comes after others of the same activity. */
export function checkOrder(tables: readonly ActivityTable[], context: Context): void {
  for (const { mark, stay, path } of tables) {
    const known = tables.map((table) => table.mark).filter((other) => other !== mark);
    const at = [...path, 'after'];
    for (const written of stay.after)
      if (written === mark) atValue(context, at, 'after-itself', { table: mark });
      else if (!known.includes(written))
        atValue(context, at, 'unknown-table', { written, known, ...nearestFact(written, known) });
  }
}

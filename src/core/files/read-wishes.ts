import type { Filled } from '../description/fields.ts';
import { marksIn, textIn } from '../description/filled.ts';
import { checkFields } from './check-fields.ts';
import { asMap, atKey, type Context, listAt, type Path } from './context.ts';
import { type DayTime, readDayTime, refuseBackwards } from './day-time.ts';
import type { WishWords } from './day-words.ts';
import { entryOf, keysOf, type MapNode } from './node.ts';
import { wishFields } from './period-fields.ts';

/** Keys that say for whom a wish is, and nothing of what is wished. */
const FOR_WHOM = ['group', 'class'];

/** Reads the wishes of a visit: blocks that say for which groups, and what. */
export const readWishes = (root: MapNode, context: Context): readonly WishWords[] =>
  listAt(root, 'wishes', [], context).flatMap((item, n) => {
    const path = ['wishes', n];
    const map = asMap(item, path, context);
    return map === null ? [] : readWish(map, path, context);
  });

function readWish(map: MapNode, path: Path, context: Context): readonly WishWords[] {
  const owner = { path, idOf: (field: string) => `visit/${path.join('/')}/${field}` };
  const { filled, isSound } = checkFields(map, wishFields, owner, context);
  if (!isSound) return [];
  if (keysOf(map).every((key) => FOR_WHOM.includes(key))) {
    atKey(context, path, 'wish-says-nothing', { known: wishKeys });
    return [];
  }
  const wants = (key: string, other: string): boolean => {
    if (entryOf(map, key) === undefined || entryOf(map, other) !== undefined) return true;
    atKey(context, [...path, key], 'wish-half-said', { key, other });
    return false;
  };
  const isWhole = [
    wants('at', 'time'),
    wants('time', 'at'),
    wants('table', 'after'),
    wants('after', 'table'),
    wants('back at', 'away from'),
    wants('at', 'group'),
    wants('comes at', 'group'),
    wants('away from', 'group'),
  ].every(Boolean);
  return isWhole ? [wishIn(filled, path, context)] : [];
}

function wishIn(filled: Filled, path: Path, context: Context): WishWords {
  const timeOf = (key: string): DayTime | null => {
    const text = textIn(filled, key);
    return text === undefined ? null : readDayTime(text, [...path, key], context);
  };
  const table = textIn(filled, 'at');
  const time = timeOf('time');
  const then = textIn(filled, 'table');
  const from = timeOf('away from');
  const until = timeOf('back at');
  refuseBackwards(from, until, context);
  return {
    path,
    ofClass: textIn(filled, 'class') ?? null,
    groups: marksIn(filled, 'group') ?? null,
    first: textIn(filled, 'first') ?? null,
    last: textIn(filled, 'last') ?? null,
    mustDo: marksIn(filled, 'must do') ?? [],
    skips: marksIn(filled, 'skips') ?? [],
    at: table === undefined || time === null ? null : { table, time },
    order: then === undefined ? null : { table: then, after: marksIn(filled, 'after') ?? [] },
    comesAt: timeOf('comes at'),
    away: from === null ? null : { from, until },
  };
}

const wishKeys = Object.keys(wishFields).filter((key) => !FOR_WHOM.includes(key));

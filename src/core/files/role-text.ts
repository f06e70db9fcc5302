import type { Role, RoleSize } from '../kit/role.ts';
import { SIZE_FIELD } from '../kit/role.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { atValue, type Context, nearestFact, type Path } from './context.ts';
import type { Vocabulary } from './vocabulary.ts';
import { quantityIn } from './written-measured.ts';

/**
 * Reads what a table asks of a part: `bar`, `weight of 200 g`, `spring scale to 2.5 N`. `null` with
 * the fault reported.
 */
export function readRole(
  name: string,
  text: string,
  path: Path,
  vocabulary: Vocabulary,
  context: Context,
): Role | null {
  const kinds = vocabulary.partKinds.map((kind) => kind.kind);
  const kind = kinds.find((each) => each === text);
  if (kind !== undefined) return { name, kind, size: null, text };
  const found = /^(.*?) (of|to) (.*)$/.exec(text);
  const word = found?.[1] ?? text;
  const asks = found?.[2] === 'to' ? 'to' : 'of';
  const partKind = vocabulary.partKinds.find((each) => each.kind === word);
  if (partKind === undefined) {
    const facts = { written: word, known: kinds, ...nearestFact(word, kinds) };
    atValue(context, path, 'unknown-part-kind', facts, [0, word.length]);
    return null;
  }
  const field = partKind.fields[SIZE_FIELD[asks]];
  if (field?.type !== 'quantity') {
    const from = word.length + 1;
    atValue(context, path, 'role-size', { written: asks, kind: word }, [from, text.length]);
    return null;
  }
  const size = readSize(found?.[3] ?? '', asks, field.dimensions, path, context, word.length + 4);
  return size === null ? null : { name, kind: word, size, text };
}

function readSize(
  text: string,
  asks: RoleSize['asks'],
  dimensions: readonly Dimension[],
  path: Path,
  context: Context,
  offset: number,
): RoleSize | null {
  const written = quantityIn(text, dimensions, path, context, offset);
  if (written === null) return null;
  if (written.value > 0) return { asks, si: written.value, dimension: written.dimension };
  atValue(context, path, 'not-above', { written: text, above: { si: 0, dimension: written.dimension } }, [
    offset,
    offset + text.length,
  ]);
  return null;
}

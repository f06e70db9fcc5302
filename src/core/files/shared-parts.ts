import type { Wish } from '../rotation/wish.ts';

/** A table and the parts on it that stand at an earlier table too. */
export interface TableWithParts {
  readonly mark: string;
  readonly alsoAt: readonly { readonly part: string; readonly table: string }[];
}

/**
 * A part that stands at several tables is at one of them at a time.
 *
 * @example
 * const tables = [{ mark: '1', alsoAt: [] }, { mark: '4', alsoAt: [{ part: 'sand', table: '1' }] }];
 * sharedParts(tables) // => [{ kind: 'shared part', part: 'sand', tables: ['1', '4'], id: 'shared part sand', path: null }]
 */
export function sharedParts(tables: readonly TableWithParts[]): readonly Wish[] {
  const parts = [...new Set(tables.flatMap(({ alsoAt }) => alsoAt.map(({ part }) => part)))];
  return parts.map((part) => {
    const own = tables.flatMap(({ mark, alsoAt }) =>
      alsoAt.filter((each) => each.part === part).flatMap(({ table }) => [table, mark]),
    );
    return { kind: 'shared part', part, tables: [...new Set(own)], id: `shared part ${part}`, path: null };
  });
}

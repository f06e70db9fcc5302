import type { SourcedTable } from '../description/fields.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { bearingKinds } from '../sources/bearing.ts';
import { frictionKinds } from '../sources/friction.ts';
import { rollingKinds } from '../sources/rolling.ts';
import { sheaveKinds } from '../sources/sheave.ts';
import { type Range, type Row, rowNamed } from '../sources/source.ts';

/** A row of a sourced table, as a field of the file takes it. */
export interface SourcedKind extends Row {
  readonly moving: Range;
  /** Starting over moving; left out where no source tells the two apart. */
  readonly ratio?: Range;
}

/** The rows of a table that can fill a field of these dimensions. */
export function sourcedKinds(table: SourcedTable, dimensions: readonly Dimension[]): readonly SourcedKind[] {
  switch (table) {
    case 'friction':
      return frictionKinds;
    case 'bearing':
      return bearingKinds;
    case 'sheave':
      return sheaveKinds.map((kind) => ({ ...kind, moving: kind.share }));
    case 'rolling':
      return rollingKinds.flatMap((kind) => {
        const moving =
          (dimensions.includes('length') ? kind.arm : undefined) ??
          (dimensions.includes('ratio') ? kind.coefficient : undefined);
        return moving === undefined ? [] : [{ ...kind, moving }];
      });
  }
}

/** The row of that name, or nothing. */
export const sourcedKindNamed = (
  table: SourcedTable,
  dimensions: readonly Dimension[],
  name: string,
): SourcedKind | undefined => rowNamed(sourcedKinds(table, dimensions), name);

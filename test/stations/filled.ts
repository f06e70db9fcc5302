import type { Filled, FilledValue } from '../../src/core/description/fields.ts';
import type { Part } from '../../src/core/description/part.ts';
import type { Preparation } from '../../src/core/machines/machine.ts';
import type { Dimension } from '../../src/core/quantities/dimension.ts';
import { between, exactly, type Measured, measured } from '../../src/core/uncertainty/measured.ts';

/** A checked field as the files would hand it on, with an unknown of its own. */
export const quantity = (id: string, value: number, dimension: Dimension, u = 0.001): FilledValue => ({
  type: 'quantity',
  measured: measured(value, { id, u, shape: 'even', origin: 'stated' }),
  dimension,
  written: `${value}`,
});

/** A sourced field: stated where `written` says so, else filled in with its assumed kind. */
export const sourced = (
  moving: number,
  starting: number,
  written = `${moving}`,
  kind?: string,
): FilledValue => ({
  type: 'sourced',
  sourced: {
    moving: kind === undefined ? exactly(moving) : assumed(kind, moving),
    starting: exactly(starting),
    ...(kind === undefined ? {} : { kind }),
  },
  written,
});

const assumed = (kind: string, value: number): Measured =>
  between(`kind:${kind}`, value * 0.9, value * 1.1, 'assumed', 'a table');

/** Parts by slot and fields of a setup, with places that name slot and field. */
export const prepared = (parts: Readonly<Record<string, Part>>, fields: Filled): Preparation => ({
  parts,
  fields,
  place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
  partPlace: (slot, field) => ({ file: 'kit', path: [slot, field ?? ''], on: 'value' }),
});

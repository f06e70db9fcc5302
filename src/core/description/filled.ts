import type { Dimension } from '../quantities/dimension.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { Filled, Sourced } from './fields.ts';

/** What stands in checked fields, by key and expected type; `undefined` where it was left out. */
export const measuredIn = <Q extends number>(fields: Filled, key: string): Measured<Q> | undefined => {
  const field = fields[key];
  return field?.type === 'quantity' ? (field.measured as Measured<Q>) : undefined;
};

export const dimensionIn = (fields: Filled, key: string): Dimension | undefined => {
  const field = fields[key];
  return field?.type === 'quantity' ? field.dimension : undefined;
};

export const sourcedIn = (fields: Filled, key: string): Sourced | undefined => {
  const field = fields[key];
  return field?.type === 'sourced' ? field.sourced : undefined;
};

export const choiceIn = (fields: Filled, key: string): string | undefined => {
  const field = fields[key];
  return field?.type === 'choice' ? field.choice : undefined;
};

export const countIn = (fields: Filled, key: string): number | undefined => {
  const field = fields[key];
  return field?.type === 'count' ? field.count : undefined;
};

export const textIn = (fields: Filled, key: string): string | undefined => {
  const field = fields[key];
  return field?.type === 'text' ? field.text : undefined;
};

export const marksIn = (fields: Filled, key: string): readonly string[] | undefined => {
  const field = fields[key];
  return field?.type === 'marks' ? field.marks : undefined;
};

export const isYesIn = (fields: Filled, key: string): boolean => {
  const field = fields[key];
  return field?.type === 'yes-no' && field.yes;
};

/** A place on the apparatus: by its hole, or by its distance. */
export type Position<Q extends number> =
  | { readonly hole: number; readonly measured?: undefined }
  | { readonly hole?: undefined; readonly measured: Measured<Q> };

export const positionIn = <Q extends number>(fields: Filled, key: string): Position<Q> | undefined => {
  const field = fields[key];
  if (field?.type === 'hole') return { hole: field.hole };
  if (field?.type === 'quantity') return { measured: field.measured as Measured<Q> };
  return undefined;
};

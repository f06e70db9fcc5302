import type { QuantityFact } from './diagnostic.ts';

/** Quantities as facts of a sentence: SI with its dimension, printed only at the edge. */
export const lengthFact = (si: number, u?: number): QuantityFact => quantityFact(si, 'length', u);
export const forceFact = (si: number, u?: number): QuantityFact => quantityFact(si, 'force', u);
export const massFact = (si: number, u?: number): QuantityFact => quantityFact(si, 'mass', u);
export const angleFact = (si: number, u?: number): QuantityFact => quantityFact(si, 'angle', u);
export const ratioFact = (si: number, u?: number): QuantityFact => quantityFact(si, 'ratio', u);

const quantityFact = (si: number, dimension: QuantityFact['dimension'], u?: number): QuantityFact =>
  u === undefined ? { si, dimension } : { si, dimension, u };

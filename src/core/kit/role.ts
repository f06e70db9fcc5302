import type { Dimension } from '../quantities/dimension.ts';
import type { KitPart } from './kit.ts';

/**
 * What an activity asks of a part without knowing any kit: its kind, and where it matters its size
 * (`weight of 200 g`) or the least range that it needs (`spring scale to 2.5 N`).
 */
export interface Role {
  readonly name: string;
  readonly kind: string;
  readonly size: RoleSize | null;
  /** As written. */
  readonly text: string;
}

export interface RoleSize {
  readonly asks: 'of' | 'to';
  readonly si: number;
  readonly dimension: Dimension;
}

/** The field that a role's size is compared with. */
export const SIZE_FIELD = { of: 'of', to: 'range' } as const;

/** How a part stands to a role: made for it, good enough, of the right kind only, or something else. */
export type Fit = 'exact' | 'enough' | 'kind-only' | 'other-kind';

/** A weight within one part in twenty of the figure is that weight: common practice, no source. */
const SAME = 0.05;
/** Mass and weight are compared at the standard acceleration of free fall, 9.80665 m/s² (exact). */
const STANDARD_GRAVITY = 9.80665;

/** How well a part fits a role. A role without a size takes every part of its kind. */
export function fitOf(part: KitPart, role: Role): Fit {
  if (part.kind !== role.kind) return 'other-kind';
  if (role.size === null) return 'exact';
  const has = sizeOf(part, role.size.asks);
  if (has === null) return 'kind-only';
  const wanted = asForce(role.size);
  const is = asForce(has);
  if (Math.abs(is - wanted) <= SAME * wanted) return 'exact';
  return role.size.asks === 'to' && is > wanted ? 'enough' : 'kind-only';
}

/** The part's own figure, where it has one. */
export function sizeOf(part: KitPart, asks: RoleSize['asks']): Omit<RoleSize, 'asks'> | null {
  const field = part.fields[SIZE_FIELD[asks]];
  return field?.type === 'quantity' ? { si: field.measured.value, dimension: field.dimension } : null;
}

const asForce = (size: Omit<RoleSize, 'asks'>): number =>
  size.dimension === 'mass' ? size.si * STANDARD_GRAVITY : size.si;

/** What the kit offers for a role on a table with these machines: `exact` first, else what is enough. */
export function candidates(
  parts: readonly KitPart[],
  role: Role,
  machines: readonly string[],
): { readonly best: readonly KitPart[]; readonly ofKind: readonly KitPart[] } {
  const ofKind = parts.filter(
    (part) =>
      part.kind === role.kind &&
      !part.isSpare &&
      (part.fits === null || part.fits.some((name) => machines.includes(name))),
  );
  const fitting = (fit: Fit) => ofKind.filter((part) => fitOf(part, role) === fit);
  const exact = fitting('exact');
  const among = exact.length > 0 ? exact : fitting('enough');
  // A part that the kit keeps for this machine goes before one that fits any.
  const kept = among.filter((part) => part.fits !== null);
  return { best: kept.length > 0 ? kept : among, ofKind };
}

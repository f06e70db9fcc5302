import type { Seat } from '../../store/entry.ts';

/** What a device was given at the door: it may be this seat. */
export interface Pass {
  /** Of the visit it ends with; `null` for a teacher, who opens and closes visits. */
  readonly visit: string | null;
  readonly seat: Seat;
  /** `null` for a teacher. */
  readonly device: string | null;
  readonly given: number;
}

/** Passes and one-time links, kept as hashes. */
export interface Passes {
  /** Gives out a pass and answers its secret, which is kept nowhere. */
  readonly give: (pass: Pass) => string;
  readonly find: (secret: string) => Pass | null;
  /** Every seat that a device has been given in a visit. */
  readonly seats: (visit: string, device: string) => readonly Seat[];
  readonly end: (secret: string) => void;
  /** A link for a teacher; links that were not used before are void. */
  readonly newLink: (now: number) => string;
  /** Whether the link was good; it is no longer. */
  readonly useLink: (secret: string, now: number) => boolean;
}

/** A school day: a laptop that is borrowed tomorrow is nobody's way in. */
export const TEACHER_PASS_LASTS = 16 * 3_600_000;
/** A link that lies about in a terminal is good for as long. */
export const LINK_LASTS = 12 * 3_600_000;

import type { Seat, Stored } from '../../store/entry.ts';
import type { Audience, OpenVisit, SeatParts } from './desk.ts';

/** What a desk in a thread of its own is asked; a question has a number that comes back with its answer. */
export type ToThread =
  | { readonly ask: 'open'; readonly number: number; readonly opened: OpenVisit }
  | { readonly ask: 'take'; readonly visit: string; readonly stored: readonly Stored[] }
  | { readonly ask: 'parts'; readonly number: number; readonly visit: string; readonly seat: Seat };

export type FromThread =
  | { readonly tell: 'answer'; readonly number: number; readonly parts: SeatParts | null }
  | { readonly tell: 'fault'; readonly number: number; readonly what: string }
  | {
      readonly tell: 'change';
      readonly visit: string;
      readonly audience: Audience;
      readonly parts: SeatParts;
    };

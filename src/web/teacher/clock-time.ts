import type { ClockPart } from '../../store/wire.ts';

/** `90 000` as `1:30`, hours with the minutes. */
export function spanText(milliseconds: number): string {
  const all = Math.floor(Math.abs(milliseconds) / 1000);
  return `${Math.floor(all / 60)}:${String(all % 60).padStart(2, '0')}`;
}

/** How far it is to what ends next, the round's signal or the period; pauses put it off. `null`: nothing is known of it. */
export function toTheEnd(
  { begun, pausedSince, round, ends }: ClockPart,
  now: number,
): { readonly left: number; readonly at: number } | null {
  const due = round?.due ?? ends;
  if (begun === null || due === null) return null;
  const at = due + (pausedSince === null ? 0 : Math.max(0, now - Math.max(pausedSince, begun)));
  return { left: at - now, at };
}

/** A moment as the clock on the wall shows it. */
export const wallTime = (language: string, when: number): string =>
  new Date(when).toLocaleTimeString(language, { hour: 'numeric', minute: '2-digit' });

import { describe, expect, it } from 'vitest';
import type { SeatParts } from '../desk/desk.ts';
import { audienceParts } from './audience-parts.ts';

const parts = (value: object): SeatParts => value as SeatParts;

describe('the parts of an audience', () => {
  it('are told after a number: only what changed since', () => {
    const kept = audienceParts();
    kept.change(parts({ readings: [1], writes: 'a' }));
    kept.change(parts({ writes: 'b' }));
    expect(JSON.parse(kept.after(0, 5))).toEqual({ readings: [1], writes: 'b' });
    expect(JSON.parse(kept.after(1, 5))).toEqual({ writes: 'b' });
    expect(kept.after(2, 5)).toBe('{}');
  });

  it('that come again as they were are no change', () => {
    const kept = audienceParts();
    expect(kept.change(parts({ readings: [1] }))).toBe(true);
    expect(kept.change(parts({ readings: [1] }))).toBe(false);
    expect(kept.version()).toBe(1);
  });

  it('that are gone are told as null to whoever had them, and not at all to a page that starts', () => {
    const kept = audienceParts();
    kept.change(parts({ 'table/1': {}, readings: [] }));
    kept.replace(parts({ readings: [] }));
    expect(JSON.parse(kept.after(1, 0))).toEqual({ 'table/1': null });
    expect(JSON.parse(kept.after(0, 0))).toEqual({ readings: [] });
    expect(kept.replace(parts({ readings: [] }))).toBe(false);
  });

  it('hold a clock that says the time of sending; that it was sent again is no change', () => {
    const kept = audienceParts();
    kept.change(parts({ clock: { now: 1, begun: 0 } }));
    expect(kept.change(parts({ clock: { now: 2, begun: 0 } }))).toBe(false);
    expect(JSON.parse(kept.after(0, 77))).toEqual({ clock: { now: 77, begun: 0 } });
    expect(kept.change(parts({ clock: { now: 3, begun: 1 } }))).toBe(true);
  });
});

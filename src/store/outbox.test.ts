import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  delivery,
  emptyOutbox,
  MOST_IN_DELIVERY,
  refused,
  sent,
  stored,
  unanswered,
  written,
} from './outbox.ts';

const seat = { kind: 'group', group: 'A' } as const;
const wrote = (many: number) =>
  Array.from({ length: many }).reduce<ReturnType<typeof emptyOutbox>>(
    (box, _, n) => written(box, seat, { kind: 'done', group: 'A', table: String(n) }, 1000 + n),
    emptyOutbox('v', 'dev'),
  );
const idsOf = (box: ReturnType<typeof emptyOutbox>) => delivery(box).map(({ id }) => id);

describe('what a device has written', () => {
  it('is on this device, then sent, then stored', () => {
    const box = wrote(1);
    expect(box.items[0]?.whereabouts).toBe('here');
    const away = sent(box, ['dev.1']);
    expect(away.items[0]?.whereabouts).toBe('sent');
    expect(stored(away, ['dev.1']).items[0]?.whereabouts).toBe('stored');
  });

  it('goes again when no answer came, and never once it is stored', () => {
    const away = sent(wrote(2), ['dev.1', 'dev.2']);
    expect(idsOf(away)).toEqual(['dev.1', 'dev.2']);
    const back = unanswered(stored(away, ['dev.1']), ['dev.1', 'dev.2']);
    expect(back.items.map(({ whereabouts }) => whereabouts)).toEqual(['stored', 'here']);
    expect(idsOf(back)).toEqual(['dev.2']);
  });

  it('is kept where it was refused, with why, and does not hold up the rest', () => {
    const box = refused(wrote(2), ['dev.1'], 'visit-over');
    expect(box.items[0]).toMatchObject({ whereabouts: 'refused', refusal: 'visit-over' });
    expect(idsOf(box)).toEqual(['dev.2']);
    expect(refused(stored(box, ['dev.2']), ['dev.2'], 'late').items[1]?.whereabouts).toBe('stored');
  });

  it('goes oldest first, so many at a time', () => {
    const box = wrote(MOST_IN_DELIVERY + 5);
    expect(idsOf(box)).toHaveLength(MOST_IN_DELIVERY);
    expect(idsOf(stored(box, idsOf(box)))).toHaveLength(5);
  });

  it('whatever the network does, nothing leaves the device and nothing goes after it is stored', () => {
    const steps = fc.array(fc.tuple(fc.constantFrom('send', 'lose', 'store', 'write'), fc.nat(20)));
    fc.assert(
      fc.property(steps, (done) => {
        let box = wrote(5);
        let count = 5;
        const safe = new Set<string>();
        for (const [step, n] of done) {
          const id = `dev.${n + 1}`;
          if (step === 'write') {
            box = written(box, seat, { kind: 'begun' }, n);
            count += 1;
          }
          if (step === 'send') box = sent(box, [id]);
          if (step === 'lose') box = unanswered(box, [id]);
          if (step === 'store' && box.items.some(({ entry }) => entry.id === id)) {
            box = stored(box, [id]);
            safe.add(id);
          }
        }
        expect(box.items).toHaveLength(count);
        expect(delivery(box).some(({ id }) => safe.has(id))).toBe(false);
        expect(new Set(box.items.map(({ entry }) => entry.id)).size).toBe(count);
      }),
    );
  });
});

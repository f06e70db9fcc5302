import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyOutbox, type Outbox, written } from '../../store/outbox.ts';
import type { EntriesAnswer, EntriesRequest } from '../../store/wire.ts';
import type { Answer } from './ask.ts';
import { startSender } from './sender.ts';

const seat = { kind: 'group', group: 'A' } as const;
type Reply = Answer<EntriesAnswer>;
const away: Reply = { kind: 'away' };
const no = (status: number, why: string, wait: number | null = null): Reply => ({
  kind: 'refused',
  status,
  why,
  wait,
});

/** A device with some entries, a server that answers as told, and a clock that is moved by hand. */
function deviceWith(many: number, reply: (request: EntriesRequest, time: number) => Reply) {
  let outbox: Outbox = Array.from({ length: many }).reduce<Outbox>(
    (box, _, n) => written(box, seat, { kind: 'done', group: 'A', table: String(n) }, n),
    emptyOutbox('v', 'd'),
  );
  const asked: EntriesRequest[] = [];
  const waits: number[] = [];
  let due: (() => void) | null = null;
  let passesGone = 0;
  const sender = startSender({
    outbox: () => outbox,
    change: async (alter) => {
      outbox = alter(outbox);
    },
    post: async (request) => {
      asked.push(request);
      return reply(request, asked.length);
    },
    clock: () => 5,
    chance: () => 0.5,
    later: (wait, call) => {
      waits.push(wait);
      due = call;
      return () => {
        due = null;
      };
    },
    onPassGone: () => {
      passesGone += 1;
    },
  });
  const settle = async (): Promise<void> => {
    for (let n = 0; n < 200; n += 1) await Promise.resolve();
  };
  return {
    asked,
    waits,
    sender,
    settle,
    passesGone: () => passesGone,
    states: () => outbox.items.map(({ whereabouts }) => whereabouts),
    refusals: () => outbox.items.map(({ refusal }) => refusal),
    /** Goes on to the next moment for which a try is planned; answers whether there is one. */
    wait: async (): Promise<boolean> => {
      const call = due;
      due = null;
      call?.();
      await settle();
      return call !== null;
    },
  };
}
const all = ({ entries }: EntriesRequest): Reply => ({
  kind: 'answer',
  body: { stored: entries.map(({ id }) => id), refused: [] },
});

describe('sending what a device has written', () => {
  it('stores all of it, at most fifty at once', async () => {
    const device = deviceWith(120, all);
    device.sender.now();
    await device.settle();
    expect(device.asked.map(({ entries }) => entries.length)).toEqual([50, 50, 20]);
    expect(new Set(device.states())).toEqual(new Set(['stored']));
  });

  it('says "on this device" again where no answer came, and waits longer each time', async () => {
    const device = deviceWith(1, (request, time) => (time < 4 ? away : all(request)));
    device.sender.now();
    await device.settle();
    expect(device.states()).toEqual(['here']);
    while (await device.wait());
    expect(device.waits).toEqual([1000, 2000, 4000]);
    expect(device.states()).toEqual(['stored']);
  });

  it('waits as long as a server that is busy asks for', async () => {
    const device = deviceWith(1, (request, time) => (time === 1 ? no(429, 'too-fast', 7000) : all(request)));
    device.sender.now();
    await device.settle();
    expect(device.waits).toEqual([7000]);
    await device.wait();
    expect(device.states()).toEqual(['stored']);
  });

  it('does not let one entry that nobody can read hold up the others', async () => {
    const device = deviceWith(3, (request) =>
      request.entries.some(({ id }) => id === 'd.2') ? no(400, 'malformed') : all(request),
    );
    device.sender.now();
    await device.settle();
    expect(device.states()).toEqual(['stored', 'refused', 'stored']);
    expect(device.refusals()).toEqual([null, 'malformed', null]);
  });

  it('keeps everything and asks to join again where the server does not know it any longer', async () => {
    const device = deviceWith(2, () => no(401, 'pass-over'));
    device.sender.now();
    await device.settle();
    expect([device.passesGone(), device.waits.length, device.states()]).toEqual([1, 0, ['here', 'here']]);
  });

  it('is not stopped by an answer that speaks of nothing', async () => {
    const nothing: Reply = { kind: 'answer', body: { stored: [], refused: [] } };
    const device = deviceWith(1, (request, time) => (time === 1 ? nothing : all(request)));
    device.sender.now();
    await device.settle();
    expect(device.states()).toEqual(['here']);
    await device.wait();
    expect(device.states()).toEqual(['stored']);
  });

  it('ends with all stored, and the server having each once by its id, whatever goes wrong on the way', async () => {
    const trouble = fc.array(fc.constantFrom('lost before', 'lost after', 'half', 'fine', 'busy'), {
      maxLength: 12,
    });
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 1, max: 80 }), trouble, async (many, troubles) => {
        const server = new Set<string>();
        const device = deviceWith(many, ({ entries }, time) => {
          const ids = entries.map(({ id }) => id);
          const what = troubles[time - 1] ?? 'fine';
          if (what === 'lost before') return away;
          if (what === 'busy') return no(503, 'not-stored');
          const kept = what === 'half' ? ids.slice(0, Math.ceil(ids.length / 2)) : ids;
          for (const id of kept) server.add(id);
          return what === 'lost after'
            ? away
            : { kind: 'answer', body: { stored: [...kept, ...kept], refused: [] } };
        });
        device.sender.now();
        await device.settle();
        while (await device.wait());
        expect(device.states().every((each) => each === 'stored')).toBe(true);
        expect(server.size).toBe(many);
      }),
      { numRuns: 60 },
    );
  });
});

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type EventReader, readEvents, type StreamEvent } from './event-reader.ts';
import { entryOf, groupSeat, reading, type ServerInHand, serverInHand } from './server-in-hand.ts';
import { EXPECTED } from './stand-in-desk.ts';

let server: ServerInHand;
let address: string;
let readers: EventReader[];
beforeEach(async () => {
  server = await serverInHand();
  address = await server.app.listen({ port: 0, host: '127.0.0.1' });
  readers = [];
});
afterEach(async () => {
  for (const reader of readers) reader.close();
  await server.stop();
});

const listen = async (cookie: string, headers: Record<string, string> = {}): Promise<EventReader> => {
  const reader = await readEvents(`${address}/api/stream`, { cookie, ...headers });
  readers.push(reader);
  return reader;
};
let sequence = 0;
const write = (cookie: string, device: string, group: string, written: string) => {
  sequence += 1;
  const { visit } = server.record;
  return server.write(cookie, [
    entryOf(visit, device, sequence, groupSeat(group), reading(group, 'L1', written)),
  ]);
};
const hasReading = (written: string) => (event: StreamEvent) =>
  JSON.stringify(event.data).includes(`"${written}"`);

describe('the stream of a seat', () => {
  it('begins with all parts, with the clock as it is now', async () => {
    const reader = await listen(await server.join('d1', groupSeat('A')));
    expect(reader.status).toBe(200);
    expect(reader.headers.get('content-type')).toBe('text/event-stream; charset=utf-8');
    expect(reader.headers.get('content-security-policy')).toContain("default-src 'self'");
    const first = await reader.first(({ event }) => event === 'parts');
    expect(Object.keys(first.data).sort()).toEqual(['clock', 'readings', 'writes']);
    expect(first.data.clock.now).toBe(server.now());
  });

  it('then tells only the parts that changed', async () => {
    const a = await server.join('d1', groupSeat('A'));
    const reader = await listen(await server.enter());
    await write(a, 'd1', 'A', '2,2');
    const { data } = await reader.first(hasReading('2,2'));
    expect(Object.keys(data)).toEqual(['table/1']);
  });

  it("never tells a group another's readings or anything that is expected", async () => {
    const a = await server.join('d1', groupSeat('A'));
    const b = await server.join('d2', groupSeat('B'));
    const [ofA, ofB] = [await listen(a), await listen(b)];
    await write(a, 'd1', 'A', 'only of A');
    await write(b, 'd2', 'B', 'only of B');
    await ofA.first(hasReading('only of A'));
    await ofB.first(hasReading('only of B'));
    expect(ofA.text()).not.toContain('only of B');
    expect(ofB.text()).not.toContain('only of A');
    for (const cookie of [a, b]) {
      const answer = await server.ask({ url: '/api/parts', headers: { cookie } });
      expect(answer.body + ofA.text() + ofB.text()).not.toContain(EXPECTED);
    }
  });

  it('can not be asked of another seat than the pass is for', async () => {
    const a = await server.join('d1', groupSeat('A'));
    for (const query of ['as=teacher', 'as=helper'])
      expect((await server.ask({ url: `/api/parts?${query}`, headers: { cookie: a } })).statusCode).toBe(401);
    expect((await server.ask({ url: '/api/parts?visit=OTHER', headers: { cookie: a } })).statusCode).toBe(
      403,
    );
    const forged = a.replace('group', 'teacher');
    expect((await server.ask({ url: '/api/parts', headers: { cookie: forged } })).statusCode).toBe(401);
  });

  it('of a browser with several passes is the one that is asked for', async () => {
    const cookie = `${await server.join('d1', groupSeat('A'))}; ${await server.enter()}`;
    expect((await server.ask({ url: '/api/parts', headers: { cookie } })).json().type).toMatch(/which-seat$/);
    const keys = async (as: string) =>
      Object.keys((await server.ask({ url: `/api/parts?as=${as}`, headers: { cookie } })).json());
    expect(await keys('group')).toContain('writes');
    expect(await keys('teacher')).toContain('table/1');
  });

  it('goes on where it was cut off, with no more than what was missed', async () => {
    const a = await server.join('d1', groupSeat('A'));
    const teacher = await server.enter();
    const cut = await listen(teacher);
    const { id } = await cut.first(({ event }) => event === 'parts');
    cut.close();
    await write(a, 'd1', 'A', 'while away');
    const again = await listen(teacher, { 'last-event-id': String(id) });
    const first = await again.first(({ event }) => event === 'parts');
    expect(Object.keys(first.data)).toEqual(['table/1']);
  });

  it.each(['', 'another-run.3', '12', 'nonsense'])(
    'begins from the start after the id "%s" of nowhere',
    async (id) => {
      const reader = await listen(await server.enter(), { 'last-event-id': id });
      const first = await reader.first(({ event }) => event === 'parts');
      expect(Object.keys(first.data)).toContain('visit');
    },
  );

  it('gathers what comes quickly: thirty readings are told in few events, the last of them with the rest', async () => {
    const a = await server.join('d1', groupSeat('A'));
    const reader = await listen(await server.enter());
    await reader.first(({ event }) => event === 'parts');
    for (let n = 0; n < 30; n += 1) {
      await write(a, 'd1', 'A', `value ${n}`);
      server.pass(1);
    }
    const last = await reader.first(hasReading('value 29'));
    expect(JSON.stringify(last.data)).toContain('value 0');
    expect(reader.events.filter(({ event }) => event === 'parts').length).toBeLessThanOrEqual(4);
  });

  it('says that the visit is over, and ends', async () => {
    const reader = await listen(await server.join('d1', groupSeat('A')));
    const cookie = await server.enter();
    await server.ask({
      method: 'POST',
      url: `/api/teacher/visits/${server.record.visit}/close`,
      headers: { cookie },
    });
    await reader.ended;
    expect(reader.events.at(-1)?.event).toBe('over');
  });

  it('is counted, and no device holds more than a few', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const open = await Promise.all(Array.from({ length: 8 }, () => listen(cookie)));
    expect(server.house.hub.count()).toBe(8);
    expect((await listen(cookie)).status).toBe(503);
    open[0]?.close();
    while (server.house.hub.count() > 7) await new Promise((resolve) => setTimeout(resolve, 5));
    expect((await listen(cookie)).status).toBe(200);
  });
});

describe('a server that is told to stop', () => {
  it('ends the streams with a word, and answers what is on its way', async () => {
    const a = await server.join('d1', groupSeat('A'));
    const reader = await listen(a);
    const entry = entryOf(server.record.visit, 'd1', 900, groupSeat('A'), reading('A', 'L1', '2'));
    const sent = fetch(`${address}/api/entries`, {
      method: 'POST',
      headers: { cookie: a, 'content-type': 'application/json' },
      body: JSON.stringify({ sent: 1, entries: [entry] }),
    });
    const [answer] = await Promise.all([sent, sent.then(() => server.stop())]);
    expect(await answer.json()).toEqual({ stored: ['d1.900'], refused: [] });
    await reader.ended;
    expect(reader.events.at(-1)?.event).toBe('stopping');
    await expect(fetch(`${address}/health`)).rejects.toThrow();
  });
});

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Happening } from '../../src/store/entry.ts';
import { entryOf, groupSeat, reading, type ServerInHand, serverInHand } from './server-in-hand.ts';

let server: ServerInHand;
let visit: string;
let a: string;
beforeEach(async () => {
  server = await serverInHand();
  visit = server.record.visit;
  a = await server.join('d1', groupSeat('A'));
});
afterEach(() => server.stop());

const inA = (sequence: number, what: Happening, device = 'd1', made = server.now()) =>
  entryOf(visit, device, sequence, groupSeat('A'), what, made);
const refusals = async (cookie: string, ...entries: Parameters<ServerInHand['write']>[1][number][]) =>
  (await server.write(cookie, entries)).json().refused.map(({ why }: { why: string }) => why);
const stored = async () => (await server.house.journal.since(visit, 0)).map(({ entry }) => entry.id);

describe('what a device writes', () => {
  it('is stored, answered by id, and handed to the desk', async () => {
    const answer = await server.write(a, [
      inA(1, reading('A', 'L1', '2,2')),
      inA(2, reading('A', 'L1', '2,3')),
    ]);
    expect(answer.json()).toEqual({ stored: ['d1.1', 'd1.2'], refused: [] });
    expect(await stored()).toEqual(['d1.1', 'd1.2']);
    expect(server.desk.taken.get(visit)?.map(({ entry }) => entry.id)).toEqual(['d1.1', 'd1.2']);
  });

  it('stands once however often and in whatever order it is sent', async () => {
    const entries = [1, 2, 3].map((n) => inA(n, reading('A', 'L1', `${n}`)));
    for (const delivery of [entries, entries.toReversed(), entries]) {
      const answer = await server.write(a, delivery);
      expect(answer.json().stored).toHaveLength(3);
    }
    expect(await stored()).toEqual(['d1.1', 'd1.2', 'd1.3']);
  });

  it('is kept with how far the clock of the device is behind', async () => {
    const in2010 = 1_270_000_000_000;
    await server.write(a, [inA(1, reading('A', 'L1', '2'), 'd1', in2010)], in2010 + 5);
    const [found] = await server.house.journal.since(visit, 0);
    expect(found?.behind).toBe(server.now() - in2010 - 5);
  });

  it('is refused one by one, and the rest is stored', async () => {
    const answer = await server.write(a, [
      inA(1, reading('A', 'L1', '2')),
      inA(2, reading('B', 'L1', '2')),
      { ...inA(3, reading('A', 'L1', '2')), visit: 'ANOTHER' },
      inA(4, reading('A', 'L1', '2'), 'd9'),
      entryOf(visit, 'd1', 5, groupSeat('B'), reading('B', 'L1', '2')),
    ]);
    expect(answer.json()).toEqual({
      stored: ['d1.1'],
      refused: [
        { id: 'd1.2', why: 'seat' },
        { id: 'd1.3', why: 'visit' },
        { id: 'd9.4', why: 'device' },
        { id: 'd1.5', why: 'seat' },
      ],
    });
  });

  it('under an id that stands for something else is refused, and what stood there stays', async () => {
    await server.write(a, [inA(1, reading('A', 'L1', '2'))]);
    expect(await refusals(a, inA(1, reading('A', 'L1', '3')))).toEqual(['other']);
    const [found] = await server.house.journal.since(visit, 0);
    expect(found?.entry.what).toMatchObject({ written: '2' });
  });

  it('before it changed its group still counts for the group it was', async () => {
    const b = await server.join('d1', groupSeat('B'));
    expect(await refusals(b, inA(1, reading('A', 'L1', '2')))).toEqual([]);
  });

  it('after the visit was closed is refused, but what was stored before is still answered as stored', async () => {
    await server.write(a, [inA(1, reading('A', 'L1', '2'))]);
    server.house.visits.close(visit, server.now());
    const answer = await server.write(a, [inA(1, reading('A', 'L1', '2')), inA(2, reading('A', 'L1', '3'))]);
    expect(answer.json()).toEqual({ stored: ['d1.1'], refused: [{ id: 'd1.2', why: 'over' }] });
  });

  it('needs a pass', async () => {
    expect((await server.write('', [])).json().type).toMatch(/no-pass$/);
    expect((await server.write('handspike-group=AAAAAAAAAAAAAAAAAAAAAA', [])).json().type).toMatch(
      /pass-over$/,
    );
  });

  it('is answered as not stored where the disk takes nothing, and nothing of it stands', async () => {
    const { journal } = server.house;
    Object.assign(journal, { append: () => Promise.reject(new Error('disk full')) });
    const answer = await server.write(a, [inA(1, reading('A', 'L1', '2'))]);
    expect([answer.statusCode, answer.json().type]).toEqual([503, 'urn:handspike:problem:not-stored']);
    expect(server.desk.taken.get(visit)).toBeUndefined();
  });
});

describe('two devices on one label', () => {
  it('the one that took it last writes; what the other wrote before that still counts', async () => {
    const second = await server.join('d2', groupSeat('A'));
    server.pass(1000);
    const taken = server.now();
    await server.write(second, [inA(1, { kind: 'handed', group: 'A' }, 'd2')]);
    server.pass(1000);
    expect(await refusals(a, inA(1, reading('A', 'L1', '2')))).toEqual(['handed']);
    expect(await refusals(a, inA(2, reading('A', 'L1', '2'), 'd1', taken - 1))).toEqual([]);
    expect(await refusals(second, inA(2, reading('A', 'L1', '2'), 'd2'))).toEqual([]);
    expect(await refusals(a, inA(3, { kind: 'handed', group: 'A' }))).toEqual([]);
    server.pass(1000);
    expect(await refusals(a, inA(4, reading('A', 'L1', '2')))).toEqual([]);
    expect(await refusals(second, inA(3, reading('A', 'L1', '2'), 'd2'))).toEqual(['handed']);
  });

  it('both read, and each is told whether it writes', async () => {
    const second = await server.join('d2', groupSeat('A'));
    await server.write(second, [inA(1, { kind: 'handed', group: 'A' }, 'd2')]);
    const heldBy = async (cookie: string) =>
      (await server.ask({ url: '/api/pass', headers: { cookie } })).json().heldBy;
    expect([await heldBy(a), await heldBy(second)]).toEqual(['another', 'this']);
    for (const cookie of [a, second])
      expect((await server.ask({ url: '/api/parts', headers: { cookie } })).json()).toHaveProperty(
        'readings',
      );
  });
});

describe('what is no delivery', () => {
  const send = (body: object | string, headers: Record<string, string> = {}) =>
    server.ask({ method: 'POST', url: '/api/entries', headers: { cookie: a, ...headers }, body });

  it('is refused with the place that is wrong', async () => {
    const answer = await send({
      sent: 1,
      entries: [{ ...inA(1, reading('A', 'L1', '2')), sequence: 'one' }],
    });
    expect(answer.statusCode).toBe(400);
    expect(answer.headers['content-type']).toMatch(/^application\/problem\+json/);
    expect(answer.json().errors).toEqual([{ pointer: '#/entries/0/sequence', detail: 'must be integer' }]);
  });

  it.each([
    ['a field that there is not', { kind: 'reading', group: 'A', setup: 'L1', written: '2', pupil: 'x' }],
    ['a kind that there is not', { kind: 'deleted' }],
    ['a reading that is a book', reading('A', 'L1', 'x'.repeat(201))],
    ['a place in the order below the first', { ...reading('A', 'L1', '2'), ease: 0 }],
  ])('is refused with %s', async (_what, what) => {
    expect((await send({ sent: 1, entries: [inA(1, what as Happening)] })).statusCode).toBe(400);
  });

  it('is refused where it is more than fifty entries, or more bytes than those could be', async () => {
    const many = Array.from({ length: 51 }, (_, n) => inA(n + 1, reading('A', 'L1', '2')));
    expect((await send({ sent: 1, entries: many })).statusCode).toBe(400);
    const large = await send({ sent: 1, entries: [], more: 'x'.repeat(300_000) });
    expect([large.statusCode, large.json().type]).toEqual([413, 'urn:handspike:problem:too-large']);
  });

  it('is refused where it is not JSON', async () => {
    expect((await send('sent=1', { 'content-type': 'application/x-www-form-urlencoded' })).statusCode).toBe(
      415,
    );
    expect((await send('{"sent":', { 'content-type': 'application/json' })).statusCode).toBe(400);
    expect((await send('{}', { 'content-type': 'text/plain' })).statusCode).toBe(415);
  });

  it('takes fifty of the longest', async () => {
    const longest: Happening = {
      kind: 'reading',
      group: 'A',
      setup: 'L1',
      written: '𝟚'.repeat(100),
      ease: 5,
      turns: '9'.repeat(60),
      note: '𝟚'.repeat(250),
    };
    const most = Array.from({ length: 50 }, (_, n) => inA(n + 1, longest));
    expect((await send({ sent: 1, entries: most })).json().stored).toHaveLength(50);
  });
});

describe('a device that sends too fast', () => {
  it('is told how long to wait, and the others are not held up', async () => {
    const other = await server.join('d2', groupSeat('B'));
    let answer = await server.write(a, []);
    for (let n = 0; n < 60 && answer.statusCode === 200; n += 1) answer = await server.write(a, []);
    expect([answer.statusCode, answer.headers['retry-after']]).toEqual([429, '1']);
    expect((await server.write(other, [])).statusCode).toBe(200);
    server.pass(1000);
    expect((await server.write(a, [])).statusCode).toBe(200);
  });
});

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Entry, Happening, Seat } from '../../src/store/entry.ts';
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

describe('who may write what', () => {
  const everything: readonly Happening[] = [
    reading('A', 'L1', '2'),
    { kind: 'arrived', group: 'A', table: '1' },
    { kind: 'done', group: 'A', table: '1' },
    { kind: 'handed', group: 'A' },
    { kind: 'begun' },
    { kind: 'signal', round: 1 },
    { kind: 'paused' },
    { kind: 'resumed' },
    { kind: 'late', group: 'A', minutes: 5 },
    { kind: 'closed', table: '1' },
    { kind: 'opened', table: '1' },
    { kind: 'arrival', setup: 'L1', written: '2' },
    { kind: 'telling', much: 'again' },
    { kind: 'freed', group: 'A', from: 'd9' },
    { kind: 'recalled', of: 't1.5' },
  ];
  const allowed = async (cookie: string, device: string, seat: Seat): Promise<readonly string[]> => {
    const entries = everything.map((what, n) => entryOf(visit, device, n + 1, seat, what));
    const { stored } = (await server.write(cookie, entries)).json() as { stored: readonly string[] };
    return entries.filter(({ id }) => stored.includes(id)).map(({ what }) => what.kind);
  };

  it('a group writes its own readings and where it is, and nothing else', async () => {
    expect(await allowed(a, 'd1', groupSeat('A'))).toEqual(['reading', 'arrived', 'done', 'handed']);
  });

  it("a helper writes what belongs to her table, for any group, and nothing of another's", async () => {
    const seat = { kind: 'helper', table: '1' } as const;
    const cookie = await server.join('h1', seat);
    expect(await allowed(cookie, 'h1', seat)).toEqual([
      'reading',
      'arrived',
      'done',
      'closed',
      'opened',
      'arrival',
    ]);
    const other = { kind: 'helper', table: '2' } as const;
    expect(await allowed(await server.join('h2', other), 'h2', other)).toEqual([]);
    const none = { kind: 'helper', table: null } as const;
    expect(await allowed(await server.join('h3', none), 'h3', none)).toEqual([]);
  });

  it("a helper corrects and strikes what was read at her table, and no other table's reading", async () => {
    await server.write(a, [inA(1, reading('A', 'L1', '2')), inA(2, reading('A', 'S1', '2'))]);
    const seat = { kind: 'helper', table: '1' } as const;
    const cookie = await server.join('h1', seat);
    const tries = (of: string, from: number) =>
      (['void', 'restore', 'correction'] as const).map((kind, n) =>
        entryOf(
          visit,
          'h1',
          from + n,
          seat,
          kind === 'correction' ? { kind, of, written: '9' } : { kind, of },
        ),
      );
    expect(await refusals(cookie, ...tries('d1.1', 1))).toEqual([]);
    expect(await refusals(cookie, ...tries('d1.2', 4))).toEqual(['seat', 'seat', 'seat']);
  });

  it('a helper takes back what she wrote herself, and not what another did', async () => {
    const seat = { kind: 'helper', table: '1' } as const;
    const cookie = await server.join('h1', seat);
    const ofHelper = (sequence: number, what: Happening) => entryOf(visit, 'h1', sequence, seat, what);
    const arrival = ofHelper(1, { kind: 'arrival', setup: 'L1', written: '2' });
    expect(await refusals(cookie, arrival, ofHelper(2, { kind: 'recalled', of: 'h1.1' }))).toEqual([]);
    expect(await refusals(cookie, ofHelper(3, { kind: 'recalled', of: 't1.1' }))).toEqual(['seat']);
  });

  it("a teacher brings what a group's device could not send, under its own id: it counts once, whoever is first", async () => {
    const teacher = await server.enter();
    const brings = async (...entries: readonly Entry[]): Promise<readonly string[]> => {
      const body = { sent: server.now(), entries };
      const answer = await server.ask({
        method: 'POST',
        url: '/api/entries?as=teacher',
        headers: { cookie: teacher },
        body,
      });
      return answer.json().refused.map(({ why }: { why: string }) => why);
    };
    const brought = inA(1, reading('A', 'L1', '2'));
    expect(await brings(brought)).toEqual([]);
    expect(await brings({ ...brought, made: brought.made + 5000 })).toEqual([]);
    expect(await refusals(a, brought)).toEqual([]);
    // Also what was refused to the device itself, since another has the group.
    const second = await server.join('d2', groupSeat('A'));
    await server.write(second, [inA(1, { kind: 'handed', group: 'A' }, 'd2')]);
    server.pass(1000);
    const late = inA(2, reading('A', 'L1', '3'));
    expect(await refusals(a, late)).toEqual(['handed']);
    expect(await brings(late, inA(3, reading('B', 'L1', '3')))).toEqual(['seat']);
    expect(await refusals(a, late)).toEqual([]);
  });

  it('a teacher writes all of it', async () => {
    const cookie = await server.enter();
    expect(await allowed(cookie, 't1', { kind: 'teacher' })).toEqual(everything.map(({ kind }) => kind));
  });

  it("a group corrects and voids its own readings, also from another device, and nobody else's", async () => {
    await server.write(a, [inA(1, reading('A', 'L1', '2'))]);
    const again = await server.join('d2', groupSeat('A'));
    expect(await refusals(again, inA(1, { kind: 'correction', of: 'd1.1', written: '3' }, 'd2'))).toEqual([]);
    const b = await server.join('d3', groupSeat('B'));
    const ofB = (sequence: number, what: Happening) => entryOf(visit, 'd3', sequence, groupSeat('B'), what);
    expect(
      await refusals(
        b,
        ofB(1, { kind: 'void', of: 'd1.1' }),
        ofB(2, { kind: 'correction', of: 'd1.1', written: '9' }),
      ),
    ).toEqual(['seat', 'seat']);
    expect(await refusals(b, ofB(3, { kind: 'void', of: 'd1.7' }))).toEqual(['seat']);
    // A correction that overtakes its reading.
    expect(await refusals(b, ofB(4, { kind: 'void', of: 'd3.5' }))).toEqual([]);
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

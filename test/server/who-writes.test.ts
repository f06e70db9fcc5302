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
    { kind: 'wall', shows: { question: 'saved', isOpen: true, names: false } },
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

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { groupSeat, type ServerInHand, serverInHand } from './server-in-hand.ts';

let server: ServerInHand;
beforeEach(async () => {
  server = await serverInHand();
});
afterEach(() => server.stop());

const join = (code: string, seat: object, device = 'd1', address = '10.0.0.1') =>
  server.ask({
    method: 'POST',
    url: '/api/join',
    body: { code, device, seat },
    remoteAddress: address,
  });

describe('the door of a visit', () => {
  it('shows what can be chosen to whoever has the code, typed any way', async () => {
    const typed = server.record.code.toLowerCase().replace(/^(...)/, ' $1-');
    const answer = await server.ask({ url: '/api/visit', query: { code: typed } });
    expect(answer.json()).toEqual({
      opens: 'group',
      title: 'Harbour day',
      language: 'en',
      groups: ['A', 'B'],
      tables: [
        { mark: '1', title: 'The lever' },
        { mark: '2', title: 'The screw' },
      ],
    });
  });

  it('has codes without a vowel, of letters that nobody takes for another', () => {
    expect(server.record.code).toMatch(/^[CDFGHJKMNPQRTVWX]{6}$/);
    expect(server.record.helperCode).toMatch(/^[CDFGHJKMNPQRTVWX]{10}$/);
  });

  it('gives a pass as a cookie that no script and no other site can use', async () => {
    const answer = await join(server.record.code, groupSeat('A'));
    expect(answer.json()).toEqual({
      visit: server.record.visit,
      seat: groupSeat('A'),
      device: 'd1',
      now: server.now(),
      heldBy: 'nobody',
    });
    expect(answer.headers['set-cookie']).toMatch(
      /^handspike-group=[\w-]{22}; HttpOnly; SameSite=Strict; Path=\/; Max-Age=\d+$/,
    );
  });

  it('knows the device again by its pass', async () => {
    const cookie = await server.join('d1', groupSeat('B'));
    const answer = await server.ask({ url: '/api/pass', headers: { cookie } });
    expect(answer.json()).toMatchObject({ seat: groupSeat('B'), device: 'd1' });
  });

  it("does not let a group in as a helper with the groups' code, nor as a teacher with any", async () => {
    expect((await join(server.record.code, { kind: 'helper', table: '1' })).statusCode).toBe(403);
    expect((await join(server.record.helperCode, groupSeat('A'))).statusCode).toBe(403);
    for (const code of [server.record.code, server.record.helperCode])
      expect((await join(code, { kind: 'teacher' })).statusCode).toBe(400);
  });

  it('refuses a group or a table that there is not', async () => {
    expect((await join(server.record.code, groupSeat('Z'))).json().type).toMatch(/no-such-seat$/);
    const helper = await join(server.record.helperCode, { kind: 'helper', table: '9' });
    expect(helper.json().type).toMatch(/no-such-seat$/);
  });

  it('takes no name of anybody: what the schema does not know is refused', async () => {
    const answer = await server.ask({
      method: 'POST',
      url: '/api/join',
      body: { code: server.record.code, device: 'd', seat: groupSeat('A'), name: 'x' },
    });
    expect(answer.statusCode).toBe(400);
  });

  it('ends with the visit: neither code nor pass is good after it', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const teacher = await server.enter();
    await server.ask({
      method: 'POST',
      url: `/api/teacher/visits/${server.record.visit}/close`,
      headers: { cookie: teacher },
    });
    expect((await join(server.record.code, groupSeat('A'))).json().type).toMatch(/wrong-code$/);
    expect((await server.ask({ url: '/api/parts', headers: { cookie } })).json().type).toMatch(/visit-over$/);
    expect((await server.ask({ url: '/api/pass', headers: { cookie } })).statusCode).toBe(403);
  });

  it('ends a pass when the device leaves', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const left = await server.ask({ method: 'POST', url: '/api/leave', headers: { cookie } });
    expect(left.statusCode).toBe(204);
    expect(left.headers['set-cookie']).toContain('Max-Age=0');
    expect((await server.ask({ url: '/api/parts', headers: { cookie } })).json().type).toMatch(/pass-over$/);
  });
});

describe('guessing a code', () => {
  it('makes an address wait from its fifth wrong try, longer each time, even with the right code', async () => {
    for (let n = 0; n < 5; n += 1) expect((await join('CCCCCC', groupSeat('A'))).statusCode).toBe(403);
    const right = await join(server.record.code, groupSeat('A'));
    expect(right.statusCode).toBe(429);
    expect(right.headers['retry-after']).toBe('1');
    server.pass(1001);
    expect((await join('CCCCCC', groupSeat('A'))).statusCode).toBe(403);
    server.pass(1001);
    expect((await join(server.record.code, groupSeat('A'))).statusCode).toBe(429);
    server.pass(1000);
    expect((await join(server.record.code, groupSeat('A'))).statusCode).toBe(200);
  });

  it('does not hold up the class at another address', async () => {
    for (let n = 0; n < 20; n += 1) await join('CCCCCC', groupSeat('A'));
    expect((await join(server.record.code, groupSeat('A'), 'd2', '10.0.0.2')).statusCode).toBe(200);
  });

  it('is slowed down from many addresses too, by seconds and not for good', async () => {
    for (let n = 0; n < 80; n += 1) {
      server.pass(5001);
      await join('CCCCCC', groupSeat('A'), 'd', `10.0.1.${n}`);
    }
    const waiting = await join(server.record.code, groupSeat('A'), 'd', '10.0.2.1');
    expect(waiting.statusCode).toBe(429);
    expect(Number(waiting.headers['retry-after'])).toBeLessThanOrEqual(5);
    server.pass(5001);
    expect((await join(server.record.code, groupSeat('A'), 'd', '10.0.2.1')).statusCode).toBe(200);
  });

  it('costs the same wait at the link of a teacher', async () => {
    for (let n = 0; n < 5; n += 1)
      expect((await server.ask({ url: '/enter/nonsense' })).statusCode).toBe(403);
    expect((await server.ask({ url: '/enter/nonsense' })).statusCode).toBe(429);
  });
});

describe('the one-time link', () => {
  it("lets the teacher in once, and on to the teacher's page", async () => {
    const link = server.house.passes.newLink(server.now());
    const first = await server.ask({ url: `/enter/${link}` });
    expect([first.statusCode, first.headers.location]).toEqual([303, '/teacher']);
    expect(first.headers['set-cookie']).toMatch(/^handspike-teacher=.*HttpOnly; SameSite=Strict/);
    expect((await server.ask({ url: `/enter/${link}` })).json().type).toMatch(/wrong-link$/);
  });

  it('is not used up by asking for its head only, as a preview does', async () => {
    const link = server.house.passes.newLink(server.now());
    expect((await server.ask({ method: 'HEAD', url: `/enter/${link}` })).statusCode).toBe(405);
    expect((await server.ask({ url: `/enter/${link}` })).statusCode).toBe(303);
  });

  it('is void when a newer one is printed, and after twelve hours', async () => {
    const old = server.house.passes.newLink(server.now());
    const newer = server.house.passes.newLink(server.now());
    expect((await server.ask({ url: `/enter/${old}` })).statusCode).toBe(403);
    server.pass(12 * 3_600_000 + 1);
    expect((await server.ask({ url: `/enter/${newer}` })).statusCode).toBe(403);
  });

  it('gives a pass for a school day', async () => {
    const cookie = await server.enter();
    const list = () => server.ask({ url: '/api/teacher/visits', headers: { cookie } });
    expect((await list()).statusCode).toBe(200);
    server.pass(16 * 3_600_000 + 1);
    expect((await list()).json().type).toMatch(/pass-over$/);
  });
});

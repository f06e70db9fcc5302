import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { cookieOf, entryOf, groupSeat, reading, type ServerInHand, serverInHand } from './server-in-hand.ts';

let server: ServerInHand;
beforeEach(async () => {
  server = await serverInHand();
});
afterEach(() => server.stop());

describe('whoever tries what is not meant', () => {
  it.each(["' OR 1=1 --", '%', '_', '', 'CDF\u0000GHJ', '"; DROP TABLE visit; --'])(
    'finds no door with the code "%s"',
    async (code) => {
      const answer = await server.ask({ url: '/api/visit', query: { code } });
      expect([400, 403]).toContain(answer.statusCode);
      expect(server.house.visits.list()).toHaveLength(1);
    },
  );

  it('writes a reading full of signs, and it is kept as it was written', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const nasty = `<img src=x onerror=alert(1)>'); DROP TABLE entry; -- "\u2028=cmd|' /C calc'!A0`;
    const entry = entryOf(server.record.visit, 'd1', 1, groupSeat('A'), reading('A', 'L1', nasty));
    expect((await server.write(cookie, [entry])).json().stored).toEqual(['d1.1']);
    const [found] = await server.house.journal.since(server.record.visit, 0);
    expect(found?.entry).toEqual(entry);
    const { headers } = await server.ask({ url: '/api/parts', headers: { cookie } });
    expect([headers['content-type'], headers['x-content-type-options']]).toEqual([
      'application/json; charset=utf-8',
      'nosniff',
    ]);
  });

  it('says the same thing twice and is refused, instead of one of the two being taken', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const answer = await server.ask({ url: '/api/parts?as=group&as=teacher', headers: { cookie } });
    expect(answer.statusCode).toBe(400);
  });

  it('reaches for what every object has, and is refused', async () => {
    const body = '{"code":"CCCCCC","device":"d","seat":{"kind":"group","group":"A"},"__proto__":{"seat":1}}';
    const headers = { 'content-type': 'application/json' };
    const answer = await server.ask({ method: 'POST', url: '/api/join', headers, body });
    expect(answer.statusCode).toBe(400);
  });

  it("sends another's pass along with a guess and gets neither", async () => {
    const a = await server.join('d1', groupSeat('A'));
    const guessed = a.replace(/.$/, (last) => (last === 'A' ? 'B' : 'A'));
    expect((await server.ask({ url: '/api/parts', headers: { cookie: guessed } })).statusCode).toBe(401);
  });

  it('is given another pass each time it joins, of 128 bits, of which the file holds only a hash', async () => {
    const seen = new Set<string>();
    for (let n = 0; n < 50; n += 1) seen.add(await server.join('d1', groupSeat('A')));
    expect(seen.size).toBe(50);
    for (const cookie of seen) expect(Buffer.from(cookie.split('=')[1] ?? '', 'base64url')).toHaveLength(16);
    const one = [...seen][0]?.split('=')[1] ?? '';
    expect(server.house.passes.find(one)).not.toBeNull();
    expect(server.house.passes.find(one.toUpperCase())).toBeNull();
  });

  it('asks by methods that there are not, and is told so', async () => {
    for (const method of ['PUT', 'DELETE', 'PATCH', 'TRACE'])
      expect(
        (await server.ask({ method: method as 'PUT', url: '/api/entries' })).statusCode,
      ).toBeGreaterThanOrEqual(400);
    const put = await server.ask({ method: 'PUT', url: '/api/entries' });
    expect(put.json().type).toBe('urn:handspike:problem:wrong-method');
  });

  it('is sent on to no page but the one of the teacher', async () => {
    const link = server.house.passes.newLink(server.now());
    const answer = await server.ask({ url: `/enter/${link}?next=//elsewhere.example` });
    expect(answer.headers.location).toBe('/teacher');
    expect(cookieOf(answer)).toMatch(/^handspike-teacher=/);
  });

  it('asks from one address far too often and is told to wait', async () => {
    let answer = await server.ask({ url: '/api/pass' });
    for (let n = 0; n < 700 && answer.statusCode !== 429; n += 1)
      answer = await server.ask({ url: '/api/pass' });
    expect(answer.json().type).toBe('urn:handspike:problem:too-fast');
    expect((await server.ask({ url: '/api/pass', remoteAddress: '10.0.0.2' })).statusCode).toBe(401);
  });
});

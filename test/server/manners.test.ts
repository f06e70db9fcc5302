import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { pageFiles } from '../../src/server/http/page-files.ts';
import { PROBLEMS, problemType } from '../../src/server/http/problem.ts';
import { entryOf, groupSeat, reading, type ServerInHand, serverInHand } from './server-in-hand.ts';
import { EXPECTED } from './stand-in-desk.ts';

let server: ServerInHand;
let folder: string;
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pages-'));
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), `<!doctype html><title>first</title>${'<p>'.repeat(500)}`);
  writeFileSync(join(folder, 'teacher.html'), '<!doctype html><title>teacher</title>');
  writeFileSync(join(folder, 'assets', 'page-1a2b.js'), 'export {};\n'.repeat(100));
  writeFileSync(join(folder, 'notes.secret'), 'nothing of the pages');
  server = await serverInHand({ pages: pageFiles(folder) });
});
afterEach(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('every answer', () => {
  it.each(['/', '/teacher', '/api/parts', '/health', '/nothing', '/assets/page-1a2b.js', '/openapi.json'])(
    'at %s forbids inline script, frames, sniffing and being told where one came from',
    async (url) => {
      const { headers } = await server.ask({ url });
      expect(headers['content-security-policy']).toBe(
        "default-src 'self'; object-src 'none'; base-uri 'none'; form-action 'self'; frame-ancestors 'none'",
      );
      expect(headers['x-content-type-options']).toBe('nosniff');
      expect(headers['x-frame-options']).toBe('DENY');
      expect(headers['referrer-policy']).toBe('no-referrer');
      expect(headers['access-control-allow-origin']).toBeUndefined();
      expect(headers.server).toBeUndefined();
      expect(headers['x-powered-by']).toBeUndefined();
    },
  );

  it('lets WebAssembly run at the page for preparing and in its typesetter, and nowhere else', async () => {
    for (const [url, allows] of [
      ['/prepare', true],
      ['/prepare.html', true],
      ['/assets/paper-thread-1a2b.js', true],
      ['/group', false],
      ['/teacher', false],
      ['/assets/study-thread-1a2b.js', false],
    ] as const) {
      const policy = String((await server.ask({ url })).headers['content-security-policy']);
      expect([url, policy.includes("script-src 'self' 'wasm-unsafe-eval'")]).toEqual([url, allows]);
      expect(policy).toContain("default-src 'self'; object-src 'none'");
      expect(policy).not.toContain("'unsafe-eval'");
    }
  });

  it('of the API is kept by no cache', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const { headers } = await server.ask({ url: '/api/parts', headers: { cookie } });
    expect(headers['cache-control']).toBe('no-store');
  });

  it('that refuses says what, and what to do, as RFC 9457 has it', async () => {
    const answer = await server.ask({ url: '/api/parts' });
    expect(answer.headers['content-type']).toBe('application/problem+json; charset=utf-8');
    expect(answer.json()).toEqual({
      type: 'urn:handspike:problem:no-pass',
      title: 'Not let in yet',
      status: 401,
      detail: 'Join with the code on the screen of the room, or with the one-time link.',
    });
  });

  it('that is a fault tells nothing of the inside, and the log tells nothing of what was sent', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    Object.assign(server.desk, { parts: () => Promise.reject(new Error(`SELECT ${EXPECTED}`)) });
    const answer = await server.ask({ url: '/api/parts', headers: { cookie } });
    expect([answer.statusCode, answer.json().type]).toEqual([500, problemType('fault')]);
    expect(answer.body).not.toContain('SELECT');
    expect(server.lines.join('')).toContain('/api/parts');
    expect(server.lines.join('')).not.toContain(EXPECTED);
  });

  it('each kind of refusal has a title and a sentence that says what to do', () => {
    for (const [status, title, detail] of Object.values(PROBLEMS)) {
      expect(status).toBeGreaterThanOrEqual(400);
      expect(title.length).toBeGreaterThan(10);
      expect(detail).toMatch(/\.$/);
    }
  });
});

describe('a request that another site makes', () => {
  const join = (headers: Record<string, string>) =>
    server.ask({
      method: 'POST',
      url: '/api/join',
      headers: { host: '192.168.1.7:8377', ...headers },
      body: { code: server.record.code, device: 'd', seat: groupSeat('A') },
    });

  it('is refused where its origin is not that of the address', async () => {
    expect((await join({ origin: 'http://192.168.1.7:8377' })).statusCode).toBe(200);
    for (const origin of ['http://elsewhere.example', 'null', 'http://192.168.1.7', 'http://192.168.1.7:83'])
      expect((await join({ origin })).json().type).toMatch(/other-site$/);
    expect((await join({ 'sec-fetch-site': 'cross-site' })).statusCode).toBe(403);
  });

  it('by a name that is led here is refused; numbers and the names of this machine are known', async () => {
    const health = async (host: string) =>
      (await server.ask({ url: '/health', headers: { host } })).statusCode;
    expect(await health('elsewhere.example:8377')).toBe(421);
    for (const host of ['localhost:8377', '10.1.2.3', '[::1]:8377', 'Bench-Laptop:8377'])
      expect(await health(host)).toBe(200);
  });

  it('is answered with no permission to be read across sites', async () => {
    const answer = await server.ask({
      method: 'OPTIONS' as 'GET',
      url: '/api/entries',
      headers: { origin: 'http://elsewhere.example', 'access-control-request-method': 'POST' },
    });
    expect(answer.statusCode).toBeGreaterThanOrEqual(400);
    expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-control'))).toEqual([]);
  });
});

describe('the pages', () => {
  it('come from memory, each at its address, the first one where a page has no file of its own', async () => {
    expect((await server.ask({ url: '/teacher' })).body).toContain('teacher');
    for (const url of ['/', '/group', '/helper', '/chart'])
      expect((await server.ask({ url })).body).toContain('<title>first</title>');
  });

  it('are asked for anew, what they are made of is kept for good', async () => {
    expect((await server.ask({ url: '/' })).headers['cache-control']).toBe('no-cache');
    const { headers } = await server.ask({ url: '/assets/page-1a2b.js' });
    expect(headers['cache-control']).toBe('public, max-age=31536000, immutable');
    expect(headers['content-type']).toBe('text/javascript; charset=utf-8');
  });

  it('come zipped to whoever takes that, and not at all where they have not changed', async () => {
    const zipped = await server.ask({ url: '/', headers: { 'accept-encoding': 'gzip, br' } });
    expect(zipped.headers['content-encoding']).toBe('gzip');
    expect(gunzipSync(zipped.rawPayload).toString()).toContain('<title>first</title>');
    const again = await server.ask({ url: '/', headers: { 'if-none-match': String(zipped.headers.etag) } });
    expect([again.statusCode, again.body]).toEqual([304, '']);
  });

  it.each([
    '/../package.json',
    '/%2e%2e/package.json',
    '/assets/',
    '/notes.secret',
    '/assets/..%2findex.html',
  ])('are all that there is: %s leads nowhere', async (url) => {
    expect((await server.ask({ url })).statusCode).toBe(404);
  });

  it('that are not built are said to be so, and the API works', async () => {
    const bare = await serverInHand();
    expect((await bare.ask({ url: '/group' })).json().type).toBe(problemType('no-pages'));
    expect((await bare.ask({ url: '/health' })).json()).toEqual({ status: 'ok' });
    await bare.stop();
  });
});

describe('what the person who runs the server asks', () => {
  it('counts, in the text format of Prometheus, without a word of whom', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    await server.write(cookie, [
      entryOf(server.record.visit, 'd1', 1, groupSeat('A'), reading('A', 'L1', '2,2 N')),
      entryOf(server.record.visit, 'd1', 2, groupSeat('A'), reading('B', 'L1', '2,2 N')),
    ]);
    const { body, headers } = await server.ask({ url: '/metrics' });
    expect(headers['content-type']).toContain('version=0.0.4');
    expect(body).toContain('handspike_entries_stored_total 1\n');
    expect(body).toContain('handspike_entries_refused_total{why="seat"} 1\n');
    expect(body).toContain('handspike_joined_total{seat="group"} 1\n');
    expect(body).toContain('handspike_acknowledgement_seconds_count 1\n');
    for (const line of body.trim().split('\n'))
      expect(line).toMatch(/^(# (HELP|TYPE) \w+ .+|\w+(\{\w+="[^"]*"\})? [0-9.e+-]+)$/);
    for (const secret of [server.record.code, 'd1.1', '2,2', cookie.split('=')[1] ?? '?'])
      expect(body).not.toContain(secret);
  });

  it('is answered only on that machine', async () => {
    expect((await server.ask({ url: '/metrics', remoteAddress: '10.0.0.9' })).statusCode).toBe(403);
  });

  it('is described from the schemas that check it', async () => {
    const api = (await server.ask({ url: '/openapi.json' })).json();
    expect(api.openapi).toBe('3.1.0');
    expect(Object.keys(api.paths).sort()).toEqual([
      '/api/entries',
      '/api/join',
      '/api/leave',
      '/api/parts',
      '/api/pass',
      '/api/stream',
      '/api/teacher/visits',
      '/api/teacher/visits/{visit}/close',
      '/api/teacher/visits/{visit}/code',
      '/api/teacher/visits/{visit}/door.svg',
      '/api/teacher/visits/{visit}/entries.jsonl',
      '/api/teacher/visits/{visit}/readings.csv',
      '/api/teacher/visits/{visit}/talk',
      '/api/visit',
      '/enter/{secret}',
      '/health',
      '/metrics',
      '/openapi.json',
    ]);
    const body = api.paths['/api/entries'].post.requestBody.content['application/json'].schema;
    expect(body.properties.entries.items.properties.what.oneOf).toHaveLength(19);
    for (const path of Object.values<Record<string, { summary: string }>>(api.paths))
      for (const { summary } of Object.values(path)) expect(summary).not.toBe('');
  });

  it('the log holds the route and the status of what was refused, and no address, code, pass or reading', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    await server.ask({ url: `/api/visit?code=${server.record.code}`, remoteAddress: '10.9.8.7' });
    await server.ask({ url: '/api/visit?code=CCCCCC', remoteAddress: '10.9.8.7' });
    await server.ask({ url: '/enter/abcdefghijklmnopqrstuv', remoteAddress: '10.9.8.7' });
    await server.ask({ method: 'POST', url: '/api/entries', headers: { cookie }, body: { sent: '2,2 N' } });
    const log = server.lines.join('');
    expect(log).toContain('"route":"/api/visit","status":403');
    expect(log).toContain('"route":"/enter/:secret","status":403');
    const secrets = [
      server.record.code,
      'CCCCCC',
      '10.9.8.7',
      'abcdefghijklmnopqrstuv',
      '2,2 N',
      cookie.split('=')[1],
    ];
    for (const secret of secrets) expect(log).not.toContain(secret);
  });
});

import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join as path } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { enter, join, post, startServer } from '../../bench/live/server-process.mjs';
import { runCommand } from '../command-line.ts';
import { entryOf, groupSeat, reading } from './server-in-hand.ts';

const folder = mkdtempSync(path(tmpdir(), 'handspike-commands-'));
const data = path(folder, 'data');
const visit = path(import.meta.dirname, '../../examples/brackwater/harbour-day.visit.yaml');
const at = (...args: readonly string[]) => runCommand([...args, '--data', data], { folder });
let server: ReturnType<typeof startServer>;
let address: string;
let code: string;
let link: string;

beforeAll(async () => {
  server = startServer({ data });
  ({ address, code, link } = await server.told);
  const { cookie, visit: opened } = await join(address, code, 'd1', 'A');
  const entry = entryOf(opened, 'd1', 1, groupSeat('A'), reading('A', 'L1', '2,2'));
  await post(`${address}/api/entries`, cookie, { sent: Date.now(), entries: [entry] });
}, 60_000);
afterAll(async () => {
  await server.stop();
  rmSync(folder, { recursive: true, force: true });
});

describe('handspike serve', () => {
  it('says where the teacher, the groups and the helpers come in, and that only this machine reaches it', () => {
    const said = server.text();
    expect(said).toMatch(/teacher {2}http:\/\/127\.0\.0\.1:\d+\/enter\/[\w-]{22}\n/);
    expect(said).toMatch(/groups {3}http:\/\/127\.0\.0\.1:\d+\/group#([A-Z]{6}) {4}code [A-Z]{3} [A-Z]{3}\n/);
    expect(said).toMatch(/helpers {2}\S+\/helper#[A-Z]{10}/);
    expect(said).toContain('Only this machine reaches it; --lan opens it to the network.');
    expect(said).toMatch(/▀|█/);
  });

  it('refuses a folder that another server uses, and a port that is taken', () => {
    const second = at('serve', visit, '--once');
    expect([second.code, second.err]).toEqual([
      3,
      expect.stringContaining('a server uses it at this moment'),
    ]);
    const { port } = new URL(address);
    const other = runCommand(['serve', visit, '--once', '--port', port, '--data', path(folder, 'other')]);
    expect([other.code, other.err]).toEqual([3, expect.stringContaining('the port is taken')]);
  });

  it('refuses a port that is none, and has nothing to open where nothing is named', () => {
    expect(at('serve', visit, '--port', '99999').code).toBe(2);
    const none = runCommand(['serve', '--once', '--port', '0'], { folder });
    expect([none.code, none.err]).toEqual([2, expect.stringContaining('name a visit file')]);
  });

  it('on the network says aloud who can reach it', () => {
    const lan = runCommand(['serve', visit, '--once', '--lan', '--port', '0', '--data', path(folder, 'lan')]);
    expect(lan.code).toBe(0);
    expect(lan.out).toContain('EVERYBODY ON THIS NETWORK can reach the door of this server, by plain http');
  });
});

describe('handspike link', () => {
  it('prints another link while the server runs; the one before is void', async () => {
    const printed = at('link');
    expect(printed.code).toBe(0);
    expect(await enter(link)).toBe('');
    expect(await enter(printed.out.trim())).toMatch(/^handspike-teacher=/);
  });

  it('says where no server runs', () => {
    const none = runCommand(['link', '--data', path(folder, 'nowhere')], { folder });
    expect([none.code, none.err]).toEqual([3, expect.stringContaining('no server runs')]);
  });
});

describe('handspike backup and restore', () => {
  it('copies while the server runs, into a new file only', () => {
    const copied = at('backup', 'kept.db');
    expect([copied.code, copied.out]).toEqual([0, '1 visits with 1 entries are in kept.db\n']);
    const again = at('backup', 'kept.db');
    expect([again.code, again.err]).toEqual([3, expect.stringContaining('is not written over')]);
  });

  it('puts nothing back under a running server', () => {
    const refused = at('restore', 'kept.db');
    expect([refused.code, refused.err]).toEqual([3, expect.stringContaining('stop that one first')]);
  });

  it('puts a copy back elsewhere, keeps what was there, and the visit goes on from it', () => {
    const other = path(folder, 'restored');
    const restored = (file: string) => runCommand(['restore', file, '--data', other], { folder });
    expect(restored('kept.db').code).toBe(0);
    const second = restored('kept.db');
    expect(second.out).toContain('what was there before is kept in');
    expect(existsSync(path(other, 'visits.db.before-restore'))).toBe(true);
    const served = runCommand(['serve', '--once', '--port', '0', '--data', other], { folder });
    expect(served.out).toContain('is open and goes on, with 1 entries so far.');
    expect(served.out).toContain(`group#${code}`);
  });

  it('refuses a file that is no copy, and leaves what is there as it is', () => {
    writeFileSync(path(folder, 'torn.db'), readFileSync(path(folder, 'kept.db')).subarray(0, 6000));
    const refused = runCommand(['restore', 'torn.db', '--data', path(folder, 'restored')], { folder });
    expect([refused.code, refused.err]).toEqual([3, expect.stringContaining('it is damaged')]);
    const served = runCommand(['serve', '--once', '--port', '0', '--data', path(folder, 'restored')], {
      folder,
    });
    expect(served.out).toContain('with 1 entries so far');
  });
});

it('a server that is told to end does so with code 0 and a word, and its lock is gone', async () => {
  await server.stop();
  expect(server.child.exitCode).toBe(0);
  const again = at('serve', '--once', '--port', '0');
  expect([again.code, again.out]).toEqual([0, expect.stringContaining('with 1 entries so far')]);
});

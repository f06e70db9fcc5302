import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readReadingsFile } from '../../src/core/files/readings-file.ts';
import { entryOf, FILES, groupSeat, reading, type ServerInHand, serverInHand } from './server-in-hand.ts';

let server: ServerInHand;
let teacher: string;
beforeEach(async () => {
  server = await serverInHand();
  teacher = await server.enter();
});
afterEach(() => server.stop());

const ask = (url: string, method: 'GET' | 'POST' = 'GET', body?: object, cookie = teacher) =>
  server.ask({ method, url, headers: { cookie }, ...(body === undefined ? {} : { body }) });
const here = (rest: string) => `/api/teacher/visits/${server.record.visit}/${rest}`;

describe('a teacher', () => {
  it('sees the visits with their codes', async () => {
    expect((await ask('/api/teacher/visits')).json()).toEqual([
      {
        visit: server.record.visit,
        title: 'Harbour day',
        opened: server.record.opened,
        closed: null,
        code: server.record.code,
        helperCode: server.record.helperCode,
        entries: 0,
        listening: 0,
      },
    ]);
  });

  it('opens another visit from its files, and both go on side by side', async () => {
    server.pass(1000);
    const answer = await ask('/api/teacher/visits', 'POST', { files: FILES });
    expect(answer.statusCode).toBe(201);
    expect(answer.json().code).not.toBe(server.record.code);
    const both = (await ask('/api/teacher/visits')).json().map(({ visit }: { visit: string }) => visit);
    expect(both).toEqual([answer.json().visit, server.record.visit]);
    const parts = async (query: string) => (await ask(`/api/parts${query}`)).json().visit.code;
    expect(await parts('')).toBe(answer.json().code);
    expect(await parts(`?visit=${server.record.visit}`)).toBe(server.record.code);
    expect((await ask('/api/parts?visit=NONE')).statusCode).toBe(404);
  });

  it('is told what is wrong with files that can not be prepared, and nothing is opened', async () => {
    const files = { ...FILES, kit: { name: 'k', text: 'spoilt' } };
    const answer = await ask('/api/teacher/visits', 'POST', { files });
    expect([answer.statusCode, answer.json().errors]).toEqual([
      422,
      [{ pointer: '#/files', detail: 'the kit file can not be read' }],
    ]);
    const open = (await ask('/api/teacher/visits'))
      .json()
      .filter(({ closed }: { closed: unknown }) => closed === null);
    expect(open).toHaveLength(1);
  });

  it('changes the codes; the old ones let nobody in, and who is in stays in', async () => {
    const cookie = await server.join('d1', groupSeat('A'));
    const changed = (await ask(here('code'), 'POST')).json();
    expect(changed.code).not.toBe(server.record.code);
    expect((await server.ask({ url: `/api/visit?code=${server.record.code}` })).statusCode).toBe(403);
    expect((await server.ask({ url: `/api/visit?code=${changed.code}` })).statusCode).toBe(200);
    expect((await ask('/api/parts', 'GET', undefined, cookie)).statusCode).toBe(200);
  });

  it('takes the readings away as a file that this program reads, corrected and without void ones', async () => {
    const entries = [
      entryOf(server.record.visit, 't', 1, { kind: 'teacher' }, reading('A', 'L1', '2,2 N')),
      entryOf(server.record.visit, 't', 2, { kind: 'teacher' }, reading('B', 'L1', '9')),
      entryOf(server.record.visit, 't', 3, { kind: 'teacher' }, { kind: 'void', of: 't.2' }),
      entryOf(
        server.record.visit,
        't',
        4,
        { kind: 'teacher' },
        { kind: 'correction', of: 't.1', written: '2,4 N' },
      ),
      entryOf(server.record.visit, 't', 5, { kind: 'teacher' }, {
        ...reading('B', 'S1', '=1+1'),
        note: 'hook "slipped"',
        ease: 4,
      } as ReturnType<typeof reading>),
    ];
    await server.write(teacher, entries);
    const answer = await ask(here('readings.csv'));
    expect(answer.headers['content-disposition']).toBe(
      `attachment; filename="visit-${server.record.visit}.csv"`,
    );
    expect(answer.body).toBe(
      'group,setup,reading,note,ease,turns\r\nA,L1,"2,4 N",,,\r\nB,S1,\'=1+1,"hook ""slipped""",4,\r\n',
    );
    const read = readReadingsFile({ name: 'visit.csv', text: answer.body }, ['L1', 'S1']);
    expect(JSON.stringify(read)).toContain('"written":"2,4 N"');
  });

  it('has what the talk at the end is made of: files, readings as they stand, and the trials on arrival', async () => {
    const by = (sequence: number, what: Parameters<typeof entryOf>[4]) =>
      entryOf(server.record.visit, 't', sequence, { kind: 'teacher' }, what);
    await server.write(teacher, [
      by(1, reading('A', 'L1', '2.2 N')),
      by(2, reading('B', 'L1', '9')),
      by(3, { kind: 'void', of: 't.2' }),
      by(4, { kind: 'arrival', setup: 'L1', written: '2.3' }),
      by(5, { kind: 'arrival', setup: 'L1', written: '2.4' }),
    ]);
    expect((await ask(here('talk'))).json()).toEqual({
      files: FILES,
      readings: {
        name: `visit-${server.record.visit}.csv`,
        text: 'group,setup,reading,note,ease,turns\r\nA,L1,2.2 N,,,\r\n',
      },
      trials: [{ setup: 'L1', written: '2.4' }],
    });
  });

  it('takes everything away, one entry a line', async () => {
    const entry = entryOf(server.record.visit, 't', 1, { kind: 'teacher' }, { kind: 'begun' });
    await server.write(teacher, [entry]);
    const lines = (await ask(here('entries.jsonl'))).body.trimEnd().split('\n');
    expect(lines.map((line) => JSON.parse(line))).toEqual([
      { entry, position: 1, received: server.now(), behind: 0 },
    ]);
  });

  it('has the address as a picture without a style or a script in it', async () => {
    const { body, headers } = await ask(here('door.svg'));
    expect(headers['content-type']).toMatch(/^image\/svg/);
    expect(body).toMatch(/^<svg/);
    expect(body).not.toMatch(/style=|<style|<script/);
    expect((await ask(here('door.svg?for=helper'))).body).not.toBe(body);
  });

  it('closes a visit: its codes are gone from the list, and what was stored stays', async () => {
    await ask(here('close'), 'POST');
    const [view] = (await ask('/api/teacher/visits')).json();
    expect(view).toMatchObject({ closed: server.now(), code: null, helperCode: null });
    expect((await ask(here('entries.jsonl'))).statusCode).toBe(200);
    expect((await ask(here('code'), 'POST')).json().type).toMatch(/visit-over$/);
  });
});

it('a visit that can not be prepared is still in the list, under the name of its file', async () => {
  Object.assign(server.desk, { parts: () => Promise.reject(new Error('no such table')) });
  const [view] = (await ask('/api/teacher/visits')).json();
  expect(view).toMatchObject({ title: 'v.visit.yaml', code: server.record.code });
});

describe('nobody else', () => {
  const routes = [
    ['GET', '/api/teacher/visits'],
    ['POST', '/api/teacher/visits'],
    ['POST', 'close'],
    ['POST', 'code'],
    ['GET', 'entries.jsonl'],
    ['GET', 'readings.csv'],
    ['GET', 'talk'],
    ['GET', 'door.svg'],
  ] as const;

  it.each(routes)('may %s %s', async (method, path) => {
    const url = path.startsWith('/') ? path : here(path);
    const group = await server.join('d1', groupSeat('A'));
    const helper = await server.join('h1', { kind: 'helper', table: '1' });
    // A pass under another kind's name is no pass of that kind.
    const forged = group.replace('group', 'teacher');
    for (const cookie of ['', group, helper, forged]) {
      const answer = await ask(url, method, method === 'POST' ? { files: FILES } : undefined, cookie);
      expect(answer.statusCode).toBe(401);
      expect(answer.body).not.toContain(server.record.code);
    }
    expect(server.house.visits.state(server.record.visit)).toBe('open');
  });
});

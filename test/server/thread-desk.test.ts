import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Audience, SeatParts } from '../../src/server/desk/desk.ts';
import { inlineDesk } from '../../src/server/desk/inline-desk.ts';
import { threadDesk } from '../../src/server/desk/thread-desk.ts';
import type { GroupParts, TeacherParts } from '../../src/store/wire.ts';
import { demoOpened, ofGroup, reading, storedEntries, teacher } from './demo-desk.ts';

const folder = mkdtempSync(join(tmpdir(), 'desk-'));
const script = join(folder, 'desk-thread.js');
const entries = storedEntries([
  [0, teacher, { kind: 'begun' }],
  [400, ofGroup('A'), reading('A', 'L1', '22')],
]);
const timeless = (parts: SeatParts): SeatParts =>
  JSON.parse(JSON.stringify({ ...parts, ...(parts.clock ? { clock: { ...parts.clock, now: 0 } } : {}) }));

beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: 'src/server/desk/desk-thread.ts',
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: 'desk-thread.js', format: 'es' } },
    },
    ssr: { noExternal: true },
  });
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

test('a desk in a thread of its own shows every seat what one shows that works here', async () => {
  const [away, here] = [threadDesk({ script }), inlineDesk()];
  try {
    for (const desk of [away, here]) {
      await desk.open(demoOpened());
      desk.take('demo', entries);
    }
    for (const seat of [teacher, ofGroup('A'), ofGroup('F'), { kind: 'helper', table: '1' }] as const)
      expect(timeless(await away.parts('demo', seat))).toEqual(timeless(await here.parts('demo', seat)));
    await expect(away.parts('elsewhere', teacher)).rejects.toThrow('elsewhere');
  } finally {
    await Promise.all([away.close(), here.close()]);
  }
}, 60_000);

test('changes are told across threads, and nothing here waits while the other thread works', async () => {
  const desk = threadDesk({ script });
  try {
    await desk.open(demoOpened());
    const told: (readonly [Audience, SeatParts])[] = [];
    const heard = new Promise<void>((resolve) => {
      desk.onChange((_, audience, parts) => {
        told.push([audience, parts]);
        if (audience === 'group:A' && 'readings' in parts) resolve();
      });
    });
    const before = performance.now();
    desk.take('demo', entries);
    expect(performance.now() - before).toBeLessThan(20);
    await heard;
    expect(told.map(([audience]) => audience)).toContain('teacher');
  } finally {
    await desk.close();
  }
}, 60_000);

test('a thread that dies is begun anew with its visits and all their readings', async () => {
  const faults: string[] = [];
  const faulty = join(folder, 'faulty.js');
  const flag = JSON.stringify(join(folder, 'died'));
  writeFileSync(
    faulty,
    `import { existsSync, writeFileSync } from 'node:fs';
import { parentPort } from 'node:worker_threads';
import './desk-thread.js';
parentPort.on('message', ({ ask, seat }) => {
  if (ask !== 'parts' || seat.kind !== 'teacher' || existsSync(${flag})) return;
  writeFileSync(${flag}, '');
  throw new Error('out of steam');
});
`,
  );
  const desk = threadDesk({ script: faulty, onFault: ({ message }) => faults.push(message) });
  try {
    await desk.open(demoOpened());
    desk.take('demo', entries);
    await desk.parts('demo', teacher).catch(() => null);
    const parts = (await desk.parts('demo', ofGroup('A'))) as GroupParts;
    expect(parts.readings.map(({ written }) => written)).toEqual(['22']);
    const seen = (await desk.parts('demo', teacher)) as TeacherParts;
    expect(seen.visit.code).toBe('BOAT-42');
    expect(faults).toEqual(['out of steam']);
  } finally {
    await desk.close();
  }
}, 60_000);

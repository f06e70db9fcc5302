import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Outbox, stored, written } from '../../store/outbox.ts';
import { openDeviceStore } from './device-store.ts';

const seat = { kind: 'group', group: 'A' } as const;
const whose = { visit: 'v', device: 'd', from: 0 };
const write = (box: Outbox): Outbox => written(box, seat, { kind: 'done', group: 'A', table: '1' }, 1);
const idsOf = ({ items }: Outbox): readonly string[] => items.map(({ entry }) => entry.id);
const factory = globalThis.indexedDB;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  globalThis.indexedDB = factory;
});

describe('what a device keeps', () => {
  it('is there after the page was closed in the middle, with the state of each', async () => {
    const before = await openDeviceStore('one');
    await before.change(whose, write);
    await before.change(whose, write);
    await before.change(whose, (box) => stored(box, ['d.1']));
    await before.keepNote('device', 'd');
    before.close();
    const after = await openDeviceStore('one');
    const box = await after.change(whose, (same) => same);
    expect(box.items.map(({ whereabouts }) => whereabouts)).toEqual(['stored', 'here']);
    expect([await after.note('device'), after.isKept()]).toEqual(['d', true]);
  });

  it('never gives a number twice, though two tabs write at the same time', async () => {
    const [one, other] = [await openDeviceStore('two'), await openDeviceStore('two')];
    await Promise.all(Array.from({ length: 40 }, (_, n) => (n % 2 === 0 ? one : other).change(whose, write)));
    const ids = idsOf(await one.change(whose, (same) => same));
    expect([ids.length, new Set(ids).size]).toEqual([40, 40]);
  });

  it('keeps visits apart', async () => {
    const store = await openDeviceStore('three');
    await store.change(whose, write);
    expect(idsOf(await store.change({ ...whose, visit: 'w' }, (same) => same))).toEqual([]);
  });

  it('begins after the number it is told where nothing stands there', async () => {
    const store = await openDeviceStore('four');
    expect(idsOf(await store.change({ ...whose, from: 700 }, write))).toEqual(['d.701']);
    expect(idsOf(await store.change({ ...whose, from: 900 }, write))).toEqual(['d.701', 'd.702']);
  });

  it('is said to be not kept where the browser refuses, and goes on as long as the page', async () => {
    globalThis.indexedDB = {
      open: () => {
        throw new DOMException('not in a private window', 'InvalidStateError');
      },
    } as unknown as IDBFactory;
    const store = await openDeviceStore('five');
    await store.change(whose, write);
    expect([store.isKept(), idsOf(await store.change(whose, write))]).toEqual([false, ['d.1', 'd.2']]);
  });

  it('is not waited for without end where the browser does not answer', async () => {
    const silent = Object.create(IDBRequest.prototype);
    silent.addEventListener = () => undefined;
    globalThis.indexedDB = { open: () => silent } as unknown as IDBFactory;
    expect((await openDeviceStore('six', 20)).isKept()).toBe(false);
  });

  it('goes on from what stood there when the database is lost while the page is open', async () => {
    const store = await openDeviceStore('seven');
    await store.change(whose, write);
    store.close();
    const box = await store.change(whose, write);
    expect([idsOf(box), store.isKept()]).toEqual([['d.1', 'd.2'], false]);
  });
});

// A simulated class whose server is killed again and again: what was shown as stored must be there, once.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join as path } from 'node:path';
import { enter, join, pause, post, startServer } from './server-process.mjs';

const GROUPS = ['A', 'B', 'C', 'D', 'E', 'F'];
const DEVICES = 12;
/** How often a device that has something to send sends, at random up to this. */
const PAUSE = 25;
const IN_2010 = Date.UTC(2010, 3, 1);

/** Chance that repeats: xorshift, so that a round that failed can be run again. */
function chanceFrom(seed) {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

/**
 * @param {{ rounds: number, seed: number, tell?: (line: string) => void }} options
 * @returns {Promise<{ rounds: number, written: number, acknowledged: number, lost: number, doubled: number, changed: number, outOfOrder: number, missing: number, deliveries: number }>}
 */
export async function killedClass({ rounds, seed, tell = () => undefined }) {
  const chance = chanceFrom(seed);
  const data = mkdtempSync(path(tmpdir(), 'handspike-killed-'));
  let server = startServer({ data });
  try {
    const { address, code } = await server.told;
    const port = Number(new URL(address).port);
    const devices = [];
    for (let n = 0; n < DEVICES; n += 1) devices.push(await newDevice(address, code, n, chance));
    for (let round = 1; round <= rounds; round += 1) {
      const isEnding = { yes: false };
      const busy = devices.map((device) => device.writeAndSend(isEnding));
      await pause(30 + chance() * 400);
      await server.kill();
      isEnding.yes = true;
      await Promise.all(busy);
      server = startServer({ data, port });
      await server.isUp();
      const count = devices.reduce((sum, { acknowledged }) => sum + acknowledged.size, 0);
      tell(`round ${round}: ${count} readings shown as stored`);
    }
    await Promise.all(devices.map((device) => device.sendAll()));
    const { link } = await server.told;
    const cookie = await enter(link);
    const found = await exported(address, cookie, devices[0].visit);
    return { rounds, ...compared(devices, found) };
  } finally {
    await server.stop();
    rmSync(data, { recursive: true, force: true });
  }
}

async function newDevice(address, code, n, chance) {
  const device = `device${n}`;
  const group = GROUPS[n % GROUPS.length];
  const { cookie, visit } = await join(address, code, device, group);
  // One tablet believes it is 2010, one is an hour ahead.
  const wrong = n === 0 ? IN_2010 - Date.now() : n === 1 ? 3_600_000 : 0;
  const written = [];
  const acknowledged = new Set();
  let deliveries = 0;

  const write = () => {
    const sequence = written.length + 1;
    const id = `${device}.${sequence}`;
    const what = {
      kind: 'reading',
      group,
      setup: 'L1',
      written: `${device} ${sequence}`,
      ease: null,
      turns: null,
      note: null,
    };
    written.push({
      id,
      visit,
      device,
      sequence,
      made: Date.now() + wrong,
      seat: { kind: 'group', group },
      what,
    });
  };
  /** Some of what is not acknowledged, now and then with what is; turned round as often as not. */
  const some = () => {
    const open = written.filter(({ id }) => !acknowledged.has(id) || chance() < 0.1);
    const taken = open.slice(-50);
    return chance() < 0.5 ? taken.toReversed() : taken;
  };
  const send = async (entries) => {
    deliveries += 1;
    try {
      const answer = await post(`${address}/api/entries`, cookie, { sent: Date.now() + wrong, entries });
      if (answer.ok) {
        const { stored, refused } = await answer.json();
        if (refused.length > 0) throw new Error(`refused: ${JSON.stringify(refused)}`);
        for (const id of stored) acknowledged.add(id);
      } else if (answer.status !== 429 && answer.status !== 503) throw new Error(`answered ${answer.status}`);
      return answer.ok;
    } catch (fault) {
      if (/^(refused|answered)/.test(fault.message)) throw fault;
      return false;
    }
  };
  return {
    visit,
    written,
    acknowledged,
    deliveries: () => deliveries,
    writeAndSend: async (isEnding) => {
      while (!isEnding.yes) {
        write();
        // Twice at the same time, as a page does that thinks the first got lost.
        const entries = some();
        await Promise.all(chance() < 0.3 ? [send(entries), send(entries.toReversed())] : [send(entries)]);
        await pause(20 + chance() * PAUSE);
      }
    },
    sendAll: async () => {
      for (let time = 0; time < 3; time += 1)
        for (let from = 0; from < written.length; from += 50) {
          const entries = written.slice(from, from + 50).toReversed();
          while (!(await send(entries))) await pause(100);
        }
    },
  };
}

async function exported(address, cookie, visit) {
  const answer = await fetch(`${address}/api/teacher/visits/${visit}/entries.jsonl`, { headers: { cookie } });
  const text = await answer.text();
  return text
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
}

function compared(devices, found) {
  const byId = new Map();
  for (const stored of found) byId.set(stored.entry.id, [...(byId.get(stored.entry.id) ?? []), stored]);
  const acknowledged = devices.flatMap((device) => [...device.acknowledged]);
  const written = devices.flatMap((device) => device.written);
  const count = (list, is) => list.filter(is).length;
  return {
    written: written.length,
    acknowledged: acknowledged.length,
    deliveries: devices.reduce((sum, device) => sum + device.deliveries(), 0),
    lost: count(acknowledged, (id) => !byId.has(id)),
    doubled: count([...byId.values()], (all) => all.length > 1),
    missing: count(written, ({ id }) => !byId.has(id)),
    changed: count(
      written,
      (entry) => JSON.stringify(byId.get(entry.id)?.[0]?.entry) !== JSON.stringify(entry),
    ),
    outOfOrder: outOfOrder(found),
  };
}

/**
 * Set right by what its clock was wrong at sending, nothing was made after it came, and what a device
 * wrote later was not made earlier: how many entries can't be put in order so.
 */
function outOfOrder(found) {
  const devices = Map.groupBy?.(found, ({ entry }) => entry.device) ?? grouped(found);
  let wrong = found.filter(({ position }, n) => position !== n + 1).length;
  for (const own of devices.values()) {
    const inOrder = own.toSorted((a, b) => a.entry.sequence - b.entry.sequence);
    for (const [n, { entry, behind, received }] of inOrder.entries()) {
      // Clocks of one machine: to a second.
      if (entry.made + behind > received + 1000) wrong += 1;
      const next = inOrder[n + 1];
      if (next !== undefined && entry.made > next.entry.made) wrong += 1;
    }
  }
  return wrong;
}

function grouped(found) {
  const devices = new Map();
  for (const stored of found)
    devices.set(stored.entry.device, [...(devices.get(stored.entry.device) ?? []), stored]);
  return devices;
}

// 60 pages listen while 300 readings a second arrive: acknowledgement, arrival at the teacher, memory.
import { mkdtempSync, rmSync } from 'node:fs';
import http from 'node:http';
import { tmpdir } from 'node:os';
import { join as path } from 'node:path';
import { parseArgs } from 'node:util';
import { enter, join, pause, startServer } from './live/server-process.mjs';

const { values } = parseArgs({
  options: {
    pages: { type: 'string', default: '60' },
    rate: { type: 'string', default: '300' },
    /** All of them new: seventeen classes' readings in ten seconds. */
    seconds: { type: 'string', default: '10' },
    /** Then as long with deliveries that are repeated, as after a network that came back, and a class's pace of new ones. */
    minutes: { type: 'string', default: '1' },
    fresh: { type: 'string', default: '1' },
  },
});
const [pages, rate, seconds, minutes, fresh] = [
  values.pages,
  values.rate,
  values.seconds,
  values.minutes,
  values.fresh,
].map(Number);
const GROUPS = ['A', 'B', 'C', 'D', 'E', 'F'];
const SETUPS = [
  'L1',
  'L2',
  'L3',
  'S1',
  'S2',
  'S3',
  'S4',
  'T1',
  'T2',
  'C1',
  'C2',
  'C3',
  'P1',
  'P2',
  'G1',
  'G2',
];

const agent = new http.Agent({ keepAlive: true, maxSockets: pages });
const data = mkdtempSync(path(tmpdir(), 'handspike-live-'));
const server = startServer({ data });
try {
  const { address, code, link } = await server.told;
  const sentAt = new Map();
  const arrivals = [];
  let bytes = 0;
  const teacher = await enter(link);
  await listen(address, teacher, (text) => {
    const now = performance.now();
    for (const [, id] of text.matchAll(/"id":"(device\d+\.\d+)"/g)) {
      const at = sentAt.get(id);
      if (at === undefined) continue;
      arrivals.push(now - at);
      sentAt.delete(id);
    }
  });
  const devices = [];
  for (let n = 0; n < pages; n += 1) {
    const device = `device${n}`;
    const group = GROUPS[n % GROUPS.length];
    const { cookie, visit } = await join(address, code, device, group);
    await listen(address, cookie, (text) => {
      bytes += text.length;
    });
    devices.push({ device, group, cookie, visit, sequence: 0, last: null });
  }
  console.log(`  ${pages} pages and the teacher's listen; memory ${await memory(address)} MB`);

  await phase(`${rate} new readings a second`, seconds, 1);
  await pause(3000);
  console.log(
    `  not listed by the teacher's page when it was next told: ${sentAt.size}; memory ${await memory(address)} MB`,
  );
  sentAt.clear();
  for (let minute = 1; minute <= minutes; minute += 1)
    await phase(`minute ${minute}: ${rate} deliveries a second, ${fresh} of them new`, 60, fresh / rate);
  console.log(`  sent to the pages: ${(bytes / 2 ** 20).toFixed(1)} MB`);

  async function phase(name, length, share) {
    const acknowledged = [];
    arrivals.length = 0;
    const faults = new Map();
    const pending = new Set();
    const began = performance.now();
    let sent = 0;
    while (performance.now() - began < length * 1000) {
      const due = ((performance.now() - began) / 1000) * rate;
      for (; sent < due; sent += 1) {
        const at = devices[sent % devices.length];
        const isNew = at.last === null || Math.floor((sent + 1) * share) > Math.floor(sent * share);
        const one = deliver(at, isNew).then(
          (took) => void acknowledged.push(took),
          (fault) => void faults.set(fault.message, (faults.get(fault.message) ?? 0) + 1),
        );
        pending.add(one);
        one.finally(() => pending.delete(one));
      }
      await pause(1);
    }
    await Promise.all(pending);
    console.log(
      `  ${name}: ${acknowledged.length} acknowledged, ${spread(acknowledged)}` +
        (faults.size === 0 ? '' : `; ${JSON.stringify([...faults])}`),
    );
    if (arrivals.length > 0)
      console.log(`    at the teacher's page: ${arrivals.length} arrived, ${spread(arrivals)}`);
    console.log(
      `    by the server's own count ${await withinGoal(address)} within 50 ms so far; memory ${await memory(address)} MB`,
    );
  }

  async function deliver(at, isNew) {
    if (isNew) {
      at.sequence += 1;
      const what = {
        kind: 'reading',
        group: at.group,
        setup: SETUPS[at.sequence % SETUPS.length],
        written: `${(1 + (at.sequence % 40) / 10).toFixed(1)} N`,
        ease: null,
        turns: null,
        note: null,
      };
      at.last = {
        id: `${at.device}.${at.sequence}`,
        visit: at.visit,
        device: at.device,
        sequence: at.sequence,
        made: Date.now(),
        seat: { kind: 'group', group: at.group },
        what,
      };
    }
    const { id } = at.last;
    const began = performance.now();
    if (isNew) sentAt.set(id, began);
    const answer = await send(`${address}/api/entries`, at.cookie, { sent: Date.now(), entries: [at.last] });
    if (!answer.stored?.includes(id)) throw new Error(answer.title ?? JSON.stringify(answer.refused));
    return performance.now() - began;
  }
} finally {
  agent.destroy();
  await server.stop();
  rmSync(data, { recursive: true, force: true });
}

function send(url, cookie, body) {
  return new Promise((resolve, reject) => {
    const headers = { cookie, 'content-type': 'application/json' };
    const request = http.request(url, { method: 'POST', agent, headers }, (answer) => {
      let text = '';
      answer.setEncoding('utf8');
      answer.on('data', (chunk) => {
        text += chunk;
      });
      answer.on('end', () => resolve(JSON.parse(text)));
    });
    request.on('error', reject);
    request.end(JSON.stringify(body));
  });
}

/** Each event as a whole, unread. */
function listen(address, cookie, heard) {
  return new Promise((resolve, reject) => {
    http
      .get(`${address}/api/stream`, { headers: { cookie } }, (answer) => {
        if (answer.statusCode !== 200) reject(new Error(`the stream is answered with ${answer.statusCode}`));
        answer.setEncoding('utf8');
        let rest = '';
        answer.on('data', (chunk) => {
          rest += chunk;
          const end = rest.lastIndexOf('\n\n');
          if (end < 0) return;
          heard(rest.slice(0, end));
          rest = rest.slice(end + 2);
          resolve();
        });
        // The server ends before this does.
        answer.on('error', () => undefined);
      })
      .on('error', reject);
  });
}

async function metricsOf(address) {
  return (await fetch(`${address}/metrics`)).text();
}

async function memory(address) {
  const bytes = /process_resident_memory_bytes (\d+)/.exec(await metricsOf(address))?.[1];
  return Math.round(Number(bytes) / 2 ** 20);
}

/** How much of what was asked the server itself answered within 50 ms, from the arrival of a delivery. */
async function withinGoal(address) {
  const text = await metricsOf(address);
  const number = (pattern) => Number(pattern.exec(text)?.[1]);
  const within = number(/acknowledgement_seconds_bucket\{le="0.05"\} (\d+)/);
  return `${((100 * within) / number(/acknowledgement_seconds_count (\d+)/)).toFixed(2)} %`;
}

function spread(times) {
  const inOrder = times.toSorted((a, b) => a - b);
  const at = (share) => inOrder[Math.min(inOrder.length - 1, Math.floor(inOrder.length * share))].toFixed(1);
  return `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms, longest ${at(1)} ms`;
}

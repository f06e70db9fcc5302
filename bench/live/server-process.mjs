// The server as it is handed over, in a process of its own, and what a page asks of it.
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const command = fileURLToPath(new URL('../../dist/handspike.js', import.meta.url));
const visit = fileURLToPath(new URL('../../examples/brackwater/harbour-day.visit.yaml', import.meta.url));

/**
 * Starts it on a folder. `told` is there once the door is printed, `isUp` as soon as it answers.
 * @param {{ data: string, port?: number }} options
 */
export function startServer({ data, port = 0 }) {
  const child = spawn(process.execPath, [command, 'serve', visit, '--data', data, '--port', String(port)], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  child.stderr.on('data', (chunk) => {
    err += chunk;
  });
  /** @type {Promise<void>} */
  const ended = new Promise((resolve) => child.once('exit', () => resolve()));
  /** @type {Promise<{ address: string, link: string, code: string, helperCode: string }>} */
  const told = new Promise((resolve, reject) => {
    child.once('exit', () => reject(new Error(`the server ended: ${out}${err}`)));
    child.stdout.on('data', (chunk) => {
      out += chunk;
      const link = /http\S+\/enter\/\S+/.exec(out)?.[0];
      const code = /\/group#([A-Z]+)/.exec(out)?.[1];
      const helperCode = /\/helper#([A-Z]+)/.exec(out)?.[1];
      if (link && code && helperCode && out.includes('Ctrl-C'))
        resolve({ address: new URL(link).origin, link, code, helperCode });
    });
  });
  told.catch(() => undefined);
  return {
    child,
    pid: child.pid ?? 0,
    told,
    ended,
    text: () => out,
    isUp: async () => {
      for (;;) {
        if (child.exitCode !== null) throw new Error(`the server ended: ${out}${err}`);
        const answer = await fetch(`http://127.0.0.1:${port}/health`).catch(() => null);
        if (answer?.ok) return;
        await pause(10);
      }
    },
    kill: async () => {
      child.kill('SIGKILL');
      await ended;
    },
    stop: async () => {
      child.kill('SIGTERM');
      await ended;
    },
  };
}

/** @param {number} milliseconds @returns {Promise<void>} */
export const pause = (milliseconds) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** @param {Response} answer */
export const cookieOf = (answer) => answer.headers.get('set-cookie')?.split(';')[0] ?? '';

/** @param {string} url @param {string} cookie @param {unknown} body */
export const post = (url, cookie, body) =>
  fetch(url, {
    method: 'POST',
    headers: { cookie, 'content-type': 'application/json', origin: new URL(url).origin },
    body: JSON.stringify(body),
  });

/** @param {string} link */
export const enter = async (link) => cookieOf(await fetch(link, { redirect: 'manual' }));

/**
 * @param {string} address @param {string} code @param {string} device @param {string} group
 * @returns {Promise<{ cookie: string, visit: string }>}
 */
export async function join(address, code, device, group) {
  const answer = await post(`${address}/api/join`, '', { code, device, seat: { kind: 'group', group } });
  const said = await answer.json();
  if (!answer.ok) throw new Error(JSON.stringify(said));
  return { cookie: cookieOf(answer), visit: said.visit };
}

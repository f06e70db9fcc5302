import { isIP } from 'node:net';
import type { FastifyInstance } from 'fastify';
import { Refusal } from './problem.ts';

/**
 * Refuses what another site's page makes a browser send. The name by which the server is asked must be
 * one of its own (a number always is), so that no foreign name can be made to lead here; and what
 * changes something must come from a page of the same origin.
 */
export function refuseOtherSites(app: FastifyInstance, names: readonly string[]): void {
  const known = new Set(['localhost', ...names.map((name) => name.toLowerCase())]);
  app.addHook('onRequest', async (request) => {
    const host = request.headers.host ?? '';
    if (!isOwnHost(host, known)) throw new Refusal('unknown-host');
    if (request.method === 'GET' || request.method === 'HEAD') return;
    const { origin } = request.headers;
    const site = request.headers['sec-fetch-site'];
    const isForeign =
      origin === undefined ? site !== undefined && site !== 'same-origin' : hostOf(origin) !== host;
    if (isForeign) throw new Refusal('other-site');
  });
}

const isOwnHost = (host: string, known: ReadonlySet<string>): boolean => {
  const name = host.replace(/:\d*$/, '').toLowerCase();
  return known.has(name) || isIP(name.replace(/^\[(.*)\]$/, '$1')) !== 0;
};

const hostOf = (origin: string): string | null => /^https?:\/\/([^/]+)$/.exec(origin)?.[1] ?? null;

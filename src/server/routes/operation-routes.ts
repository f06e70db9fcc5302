import type { FastifyInstance } from 'fastify';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';

const isHere = (address: string): boolean =>
  address === '127.0.0.1' || address === '::1' || address === '::ffff:127.0.0.1';

/** What the person who runs the server asks: is it well, what does it do, what can be asked. */
export function operationRoutes(app: FastifyInstance, house: House, openApi: () => unknown): void {
  app.get('/health', { schema: { summary: 'Whether the server is well' } }, async (_request, reply) => {
    if (house.isStopping()) throw new Refusal('stopping');
    // Asked of the file and not of memory.
    house.visits.latest();
    return reply.header('cache-control', 'no-store').send({ status: 'ok' });
  });

  app.get(
    '/metrics',
    { schema: { summary: 'Counters for Prometheus; only on the machine on which the server runs' } },
    async (request, reply) => {
      if (!isHere(request.ip)) throw new Refusal('only-here');
      return reply
        .type('text/plain; version=0.0.4; charset=utf-8')
        .header('cache-control', 'no-store')
        .send(
          house.metrics.text({
            streams: house.hub.count(),
            uptimeSeconds: (house.clock() - house.started) / 1000,
            memoryBytes: process.memoryUsage.rss(),
          }),
        );
    },
  );

  app.get('/openapi.json', { schema: { summary: 'This description' } }, async () => openApi());
}

import type { FastifyInstance } from 'fastify';
import type { Seat } from '../../store/entry.ts';
import { passOf, visitOf } from '../doors/pass-of-request.ts';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';
import { asSchema } from '../http/request-schemas.ts';

interface Asked {
  readonly as?: Seat['kind'];
  readonly visit?: string;
}

/** A page opens one; a few more are left over from pages that were closed a moment ago. */
const MOST_OF_A_PASS = 8;
const MOST_OF_ALL = 600;

/** What each seat is shown: all at once, and then whatever changes of it. */
export function liveRoutes(app: FastifyInstance, house: House): void {
  const { hub, metrics, visits } = house;
  const open = new Map<string, number>();
  const count = (secret: string, by: number): void => {
    const left = (open.get(secret) ?? 0) + by;
    if (left <= 0) open.delete(secret);
    else open.set(secret, left);
  };

  app.get<{ Querystring: Asked }>(
    '/api/parts',
    { schema: { summary: 'All parts of what this seat is shown', querystring: asSchema } },
    async (request, reply) => {
      const { pass } = passOf(request, request.query.as, house);
      const visit = visitOf(pass, request.query.visit, visits);
      await house.ready(visit);
      return reply.type('application/json; charset=utf-8').send(await hub.parts(visit, pass.seat));
    },
  );

  app.get<{ Querystring: Asked }>(
    '/api/stream',
    {
      schema: {
        summary: 'Events with the parts that change; resumes after Last-Event-ID',
        querystring: asSchema,
      },
      exposeHeadRoute: false,
    },
    async (request, reply) => {
      const { pass, secret } = passOf(request, request.query.as, house);
      const visit = visitOf(pass, request.query.visit, visits);
      await house.ready(visit);
      if (house.isStopping()) throw new Refusal('stopping');
      if ((open.get(secret) ?? 0) >= MOST_OF_A_PASS || hub.count() >= MOST_OF_ALL) {
        metrics.count('slowedDown');
        throw new Refusal('too-many-streams', { wait: 5000 });
      }
      // Asked for here, so that a fault is still an answer and no broken stream.
      await hub.parts(visit, pass.seat);
      count(secret, 1);
      reply.hijack();
      const { raw } = reply;
      raw.writeHead(200, {
        ...reply.getHeaders(),
        'content-type': 'text/event-stream; charset=utf-8',
        'cache-control': 'no-store',
        'x-accel-buffering': 'no',
      } as Record<string, string>);
      const sink = {
        write: (text: string) => void raw.write(text),
        isBehind: () => raw.writableNeedDrain,
        end: () => void raw.end(),
      };
      const last = request.headers['last-event-id'];
      const listening = await hub.listen(visit, pass.seat, sink, typeof last === 'string' ? last : null);
      raw.on('drain', listening.drained);
      raw.on('error', () => raw.destroy());
      const gone = (): void => {
        listening.stop();
        count(secret, -1);
      };
      if (raw.closed || raw.destroyed) gone();
      else raw.once('close', gone);
    },
  );
}

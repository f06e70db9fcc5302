import { type FastifyInstance, fastify, LogController } from 'fastify';
import type { Journal } from '../store/journal.ts';
import type { Desk } from './desk/desk.ts';
import { attempts } from './doors/attempts.ts';
import { pace } from './doors/pace.ts';
import type { Passes } from './doors/passes.ts';
import { type Chance, newSecret } from './doors/secret.ts';
import { visitIndex } from './entries/visit-index.ts';
import type { House } from './house.ts';
import { answerProblems } from './http/answer-problems.ts';
import { metrics } from './http/metrics.ts';
import { openApiOf } from './http/open-api.ts';
import type { PageFiles } from './http/page-files.ts';
import { Refusal } from './http/problem.ts';
import { refuseOtherSites } from './http/same-origin.ts';
import { sendSecurityHeaders } from './http/security-headers.ts';
import { streamHub } from './live/stream-hub.ts';
import { doorRoutes } from './routes/door-routes.ts';
import { entryRoutes } from './routes/entry-routes.ts';
import { liveRoutes } from './routes/live-routes.ts';
import { operationRoutes } from './routes/operation-routes.ts';
import { pageRoutes } from './routes/page-routes.ts';
import { teacherRoutes } from './routes/teacher-routes.ts';
import { type VisitPlan, visitPlan } from './visits/visit-plan.ts';
import type { Visits } from './visits/visits.ts';

export interface ServerParts {
  readonly journal: Journal;
  readonly visits: Visits;
  readonly passes: Passes;
  readonly desk: Desk;
  readonly clock: () => number;
  readonly chance: Chance;
  readonly pages: PageFiles;
  readonly addresses: () => readonly string[];
  /** Names by which the server may be asked, beside numbers and localhost. */
  readonly names: readonly string[];
  readonly version: string;
  /** Where a line of the log goes, as JSON; `null`: nowhere. */
  readonly log: { readonly write: (line: string) => void } | null;
}

export interface Server {
  readonly app: FastifyInstance;
  readonly house: House;
  /** Takes nothing more, finishes what it has, ends the streams and closes the journal. */
  readonly stop: () => Promise<void>;
}

/** Fifty entries of the longest kind, and room to spare. */
const MOST_BYTES = 256 * 1024;

/** The server, put together from its parts; it listens nowhere yet. */
export function createServer(parts: ServerParts): Server {
  const { journal, visits, passes, desk, clock, log } = parts;
  let isStopping = false;
  const counters = metrics();
  const plans = new Map<string, Promise<VisitPlan>>();
  const preparing = new Map<string, Promise<void>>();
  const ready = async (visit: string): Promise<void> => preparing.get(visit);
  const house: House = {
    journal,
    visits,
    passes,
    desk,
    clock,
    hub: streamHub({ desk, clock, run: newSecret(parts.chance), onEvent: () => counters.count('events') }),
    index: visitIndex(journal),
    metrics: counters,
    attempts: attempts(),
    // A whole class may stand behind one address, where a hotspot hides it.
    pace: { ofAddress: pace({ atOnce: 600, perSecond: 400 }), ofPass: pace({ atOnce: 60, perSecond: 20 }) },
    started: clock(),
    isStopping: () => isStopping,
    addresses: parts.addresses,
    plan: (visit) => {
      const plan = plans.get(visit) ?? ready(visit).then(() => visitPlan(desk, visit));
      plans.set(visit, plan);
      plan.catch(() => plans.delete(visit));
      return plan;
    },
    preparing: (visit, done) => {
      preparing.set(visit, done);
      const over = (): void => {
        if (preparing.get(visit) === done) preparing.delete(visit);
      };
      done.then(over, over);
    },
    ready,
    forgetPlan: (visit) => plans.delete(visit),
  };

  const app = fastify({
    bodyLimit: MOST_BYTES,
    logController: new LogController({ disableRequestLogging: true }),
    requestTimeout: 30_000,
    routerOptions: { maxParamLength: 100 },
    ajv: {
      customOptions: { coerceTypes: false, removeAdditional: false, allErrors: false, discriminator: true },
    },
    // No line holds an address, a code, a pass or a reading: what was asked is named by its route.
    logger:
      log === null ? false : { level: 'info', stream: log, base: null, serializers: { req: () => ({}) } },
  });
  app.removeContentTypeParser('text/plain');
  app.setSerializerCompiler(() => (data) => JSON.stringify(data));
  const openApi = openApiOf(app, parts.version);

  sendSecurityHeaders(app);
  answerProblems(app);
  refuseOtherSites(app, parts.names);
  app.addHook('onRequest', async (request) => {
    if (!request.url.startsWith('/api/') && !request.url.startsWith('/enter/')) return;
    const wait = house.pace.ofAddress.take(request.ip, clock());
    if (wait === 0) return;
    counters.count('slowedDown');
    throw new Refusal('too-fast', { wait });
  });
  app.addHook('onResponse', async (request, reply) => {
    counters.count('requests', `${Math.floor(reply.statusCode / 100)}xx`);
    if (reply.statusCode < 400) return;
    const { method, url: route } = request.routeOptions;
    request.log.info({ method, route, status: reply.statusCode }, 'refused');
  });

  doorRoutes(app, house);
  entryRoutes(app, house);
  liveRoutes(app, house);
  teacherRoutes(app, house);
  operationRoutes(app, house, openApi);
  pageRoutes(app, parts.pages);

  return {
    app,
    house,
    stop: async () => {
      if (isStopping) return;
      isStopping = true;
      house.hub.close();
      await app.close();
      await desk.close();
      await journal.close();
    },
  };
}

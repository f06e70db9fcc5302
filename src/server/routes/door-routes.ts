import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Seat } from '../../store/entry.ts';
import type { DoorAnswer, JoinRequest, PassView } from '../../store/wire.ts';
import { readCode } from '../doors/code.ts';
import { handOver, passOf, takeBack } from '../doors/pass-of-request.ts';
import type { Pass } from '../doors/passes.ts';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';
import { asSchema, codeSchema, joinSchema } from '../http/request-schemas.ts';
import type { VisitPlan } from '../visits/visit-plan.ts';

type As = { readonly as?: Seat['kind'] };

/** The ways in and out: a code for groups and helpers, a one-time link for the teacher. */
export function doorRoutes(app: FastifyInstance, house: House): void {
  const { attempts, clock, metrics, passes, visits } = house;

  /** Right or wrong, a try during the wait is refused unseen: else the wait would not slow anybody. */
  const tried = <T>(request: FastifyRequest, code: 'wrong-code' | 'wrong-link', find: () => T | null): T => {
    const now = clock();
    const wait = attempts.wait(request.ip, now);
    if (wait > 0) {
      metrics.count('slowedDown');
      throw new Refusal('too-many-tries', { wait });
    }
    const found = find();
    if (found !== null) return found;
    attempts.failed(request.ip, now);
    metrics.count('wrongCodes');
    throw new Refusal(code);
  };

  app.get<{ Querystring: { code: string } }>(
    '/api/visit',
    { schema: { summary: 'What a code opens: its title, groups and tables', querystring: codeSchema } },
    async (request): Promise<DoorAnswer> => {
      const { record, opens } = tried(request, 'wrong-code', () =>
        visits.behind(readCode(request.query.code)),
      );
      const { title, language, groups, tables } = await house.plan(record.visit);
      return { opens, title, language, groups, tables: tables.map(({ mark, title }) => ({ mark, title })) };
    },
  );

  app.post<{ Body: JoinRequest }>(
    '/api/join',
    { schema: { summary: 'Gives this device a seat; the pass comes as a cookie', body: joinSchema } },
    async (request, reply): Promise<PassView> => {
      const { code, device, seat } = request.body;
      const { record, opens } = tried(request, 'wrong-code', () => visits.behind(readCode(code)));
      if (seat.kind !== opens) throw new Refusal('not-this-seat');
      if (!isInPlan(seat, await house.plan(record.visit))) throw new Refusal('no-such-seat');
      const pass = { visit: record.visit, seat, device, given: clock() };
      handOver(reply, seat.kind, passes.give(pass));
      metrics.count('joined', seat.kind);
      return passView(pass);
    },
  );

  app.get<{ Querystring: As }>(
    '/api/pass',
    { schema: { summary: 'Who this device is', querystring: asSchema } },
    async (request): Promise<PassView> => {
      const { pass } = passOf(request, request.query.as, house);
      if (pass.visit !== null && visits.state(pass.visit) !== 'open') throw new Refusal('visit-over');
      return passView(pass);
    },
  );

  app.post<{ Querystring: As }>(
    '/api/leave',
    { schema: { summary: 'Ends the pass of this device', querystring: asSchema } },
    async (request, reply) => {
      const { pass, secret } = passOf(request, request.query.as, house);
      passes.end(secret);
      takeBack(reply, pass.seat.kind);
      return reply.code(204).send();
    },
  );

  app.get<{ Params: { secret: string } }>(
    '/enter/:secret',
    {
      schema: { summary: "Lets the teacher in once and goes on to the teacher's page" },
      exposeHeadRoute: false,
    },
    async (request, reply) => {
      const now = clock();
      tried(request, 'wrong-link', () => (passes.useLink(request.params.secret, now) ? true : null));
      const pass = { visit: null, seat: { kind: 'teacher' }, device: null, given: now } as const;
      handOver(reply, 'teacher', passes.give(pass));
      metrics.count('joined', 'teacher');
      return reply.header('cache-control', 'no-store').redirect('/teacher', 303);
    },
  );

  const passView = async ({ visit, seat, device }: Pass): Promise<PassView> => {
    const now = clock();
    if (visit === null) return { visit: visits.latest(), seat, device, now, heldBy: 'nobody' };
    const holder =
      seat.kind === 'group' ? (await house.index.of(visit)).handed.get(seat.group)?.device : undefined;
    const heldBy = holder === undefined ? 'nobody' : holder === device ? 'this' : 'another';
    return { visit, seat, device, now, heldBy };
  };
}

function isInPlan(seat: Seat, { groups, tables }: VisitPlan): boolean {
  switch (seat.kind) {
    case 'group':
      return groups.includes(seat.group);
    case 'helper':
      return seat.table === null || tables.some(({ mark }) => mark === seat.table);
    case 'teacher':
      return false;
  }
}

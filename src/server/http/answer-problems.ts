import type { FastifyError, FastifyInstance, FastifyReply } from 'fastify';
import { type ProblemCode, problemOf, Refusal } from './problem.ts';

const JSON_TYPE = 'application/problem+json; charset=utf-8';

/** Every refusal and every fault goes out as RFC 9457 says, and tells nothing of the inside. */
export function answerProblems(app: FastifyInstance): void {
  app.setErrorHandler((fault: FastifyError | Refusal, request, reply) => {
    const refusal = refusalOf(fault);
    if (refusal.code === 'fault' || refusal.code === 'not-stored')
      request.log.error({ route: request.routeOptions.url, fault: faultWords(fault) }, 'a request failed');
    return sendProblem(reply, refusal);
  });
  const known: RegExp[] = [];
  app.addHook('onRoute', ({ url }) => {
    known.push(new RegExp(`^${url.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/:\w+/g, '[^/]+')}$`));
  });
  app.setNotFoundHandler((request, reply) => {
    const [path = ''] = request.url.split('?');
    const isKnown = known.some((each) => each.test(path));
    return sendProblem(reply, new Refusal(isKnown ? 'wrong-method' : 'no-such-page'));
  });
}

export function sendProblem(reply: FastifyReply, refusal: Refusal): FastifyReply {
  const problem = problemOf(refusal);
  if (refusal.wait !== null) reply.header('retry-after', Math.max(1, Math.ceil(refusal.wait / 1000)));
  return reply
    .code(problem.status)
    .type(JSON_TYPE)
    .header('cache-control', 'no-store')
    .send(JSON.stringify(problem));
}

function refusalOf(fault: FastifyError | Refusal): Refusal {
  if (fault instanceof Refusal) return fault;
  if (fault.validation !== undefined) {
    const errors = fault.validation.map(({ instancePath, message }) => ({
      pointer: `#${instancePath}`,
      detail: message ?? 'is not as it should be',
    }));
    return new Refusal('malformed', { errors });
  }
  return new Refusal(BY_STATUS[fault.statusCode ?? 500] ?? 'fault');
}

/** What the framework refuses by itself. */
const BY_STATUS: Readonly<Record<number, ProblemCode>> = {
  400: 'malformed',
  413: 'too-large',
  415: 'not-json',
  503: 'stopping',
};

/** Its name and where it came from; a message may hold what somebody sent. */
const faultWords = (fault: Error): { readonly name: string; readonly at: string } => ({
  name: fault.name,
  at: (fault.stack ?? '').split('\n').slice(1, 4).join(' ').trim(),
});

import type { FastifyReply, FastifyRequest } from 'fastify';
import type { Seat } from '../../store/entry.ts';
import { Refusal } from '../http/problem.ts';
import type { Visits } from '../visits/visits.ts';
import { type Pass, type Passes, TEACHER_PASS_LASTS } from './passes.ts';

type Kind = Seat['kind'];

const KINDS: readonly Kind[] = ['teacher', 'helper', 'group'];
const A_WEEK = 7 * 24 * 3600;

/** One a kind of seat, so that a laptop can be the teacher's and show a group's page. */
const cookieName = (kind: Kind): string => `handspike-${kind}`;

/** Not `Secure`: on a LAN the address is plain http. No script reads it, no other site sends it. */
export function handOver(reply: FastifyReply, kind: Kind, secret: string): void {
  const lasts = kind === 'teacher' ? TEACHER_PASS_LASTS / 1000 : A_WEEK;
  const cookie = `${cookieName(kind)}=${secret}; HttpOnly; SameSite=Strict; Path=/; Max-Age=${lasts}`;
  reply.header('set-cookie', cookie);
}

export function takeBack(reply: FastifyReply, kind: Kind): void {
  reply.header('set-cookie', `${cookieName(kind)}=; HttpOnly; SameSite=Strict; Path=/; Max-Age=0`);
}

/** The secrets that a browser sends, by kind of seat. */
function secretsOf(request: FastifyRequest): ReadonlyMap<Kind, string> {
  const found = new Map<Kind, string>();
  for (const pair of (request.headers.cookie ?? '').split(';')) {
    const [name = '', value = ''] = pair.trim().split('=');
    const kind = KINDS.find((each) => cookieName(each) === name);
    if (kind !== undefined && /^[\w-]{20,40}$/.test(value)) found.set(kind, value);
  }
  return found;
}

export interface Shown {
  readonly pass: Pass;
  readonly secret: string;
}

/** The pass that a request shows; refused where there is none, or where several leave it open. */
export function passOf(
  request: FastifyRequest,
  as: Kind | undefined,
  { passes, clock }: { readonly passes: Passes; readonly clock: () => number },
): Shown {
  const secrets = secretsOf(request);
  if (as === undefined && secrets.size > 1) throw new Refusal('which-seat');
  const kind = as ?? [...secrets.keys()][0];
  const secret = kind === undefined ? undefined : secrets.get(kind);
  if (secret === undefined) throw new Refusal('no-pass');
  const pass = passes.find(secret);
  // The kind that the browser claims is not believed; the pass says what it is.
  if (pass === null || pass.seat.kind !== kind) throw new Refusal('pass-over');
  if (kind === 'teacher' && clock() - pass.given > TEACHER_PASS_LASTS) throw new Refusal('pass-over');
  return { pass, secret };
}

/** The visit that a pass is for now: a teacher may name one, and else means the one opened last. */
export function visitOf({ visit }: Pass, named: string | undefined, visits: Visits): string {
  if (visit === null) {
    const found = named ?? visits.latest();
    if (found === null || visits.state(found) === null) throw new Refusal('no-such-visit');
    return found;
  }
  if (named !== undefined && named !== visit) throw new Refusal('not-this-seat');
  if (visits.state(visit) !== 'open') throw new Refusal('visit-over');
  return visit;
}

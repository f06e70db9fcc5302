import type { Problem } from '../../store/wire.ts';

/** Every way in which a request is refused: its status, what it is, and what to do about it. */
export const PROBLEMS = {
  malformed: [400, 'The request is not as it should be', 'Each place that is wrong is named below.'],
  'which-seat': [
    400,
    'This browser has several passes',
    'Say which one is meant: add ?as=group, ?as=helper or ?as=teacher.',
  ],
  'no-pass': [
    401,
    'Not let in yet',
    'Join with the code on the screen of the room, or with the one-time link.',
  ],
  'pass-over': [401, 'This pass has ended', 'Join again with the code, or ask for a new one-time link.'],
  'wrong-code': [
    403,
    'No open visit has this code',
    'Look at the code again: it has no vowels and no figures. A code ends with its visit.',
  ],
  'wrong-link': [
    403,
    'This link has been used or is too old',
    'Print another one on the machine on which the server runs: handspike link.',
  ],
  'not-this-seat': [403, 'This seat may not do that', 'It is for the teacher, or for another seat.'],
  'visit-over': [403, 'This visit is over', 'What was stored is kept. Join the next visit with its code.'],
  'other-site': [
    403,
    'The request comes from another page',
    'Open the address that the server printed, and no other page, and try again.',
  ],
  'unknown-host': [
    421,
    'The server is not known by this name',
    'Open the address that the server printed, or start it with --name NAME.',
  ],
  'only-here': [403, 'Only on the machine on which the server runs', 'Ask it there, by 127.0.0.1.'],
  'no-such-seat': [404, 'There is no such group or table', 'Choose one that the door shows.'],
  'no-such-visit': [404, 'There is no such visit', 'Open one first; the list shows those that there are.'],
  'no-such-page': [404, 'There is nothing at this address', 'Begin at the first page of the server.'],
  'no-pages': [
    503,
    'The pages are not built',
    'Run npm run build, and start the server again. What is asked under /api works without them.',
  ],
  'wrong-method': [405, 'This address is not asked like that', 'See /openapi.json for what is.'],
  'too-large': [413, 'The request is too large', 'Send less at once: at most 50 entries.'],
  'not-json': [415, 'The request is not JSON', 'Send it with the content type application/json.'],
  'too-fast': [429, 'Too many requests', 'Wait as long as the header Retry-After says; nothing is lost.'],
  'too-many-tries': [
    429,
    'Too many wrong codes',
    'Wait as long as the header Retry-After says, then type the code once more.',
  ],
  'too-many-streams': [
    503,
    'Too many pages listen',
    'Close other pages of this device and load this one anew.',
  ],
  stopping: [
    503,
    'The server is being stopped',
    'Keep the page open: it sends what it has when the server is back.',
  ],
  'not-stored': [
    503,
    'It could not be stored',
    'What was sent is still on the device and is sent again. Look whether the disk of the server is full.',
  ],
  'visit-unprepared': [
    422,
    'The visit can not be prepared',
    'Put right what is named below, and send the files again.',
  ],
  fault: [500, 'A fault of the server', 'Try again; the log of the server says more.'],
} as const satisfies Record<string, readonly [number, string, string]>;

export type ProblemCode = keyof typeof PROBLEMS;

/** Names a kind of refusal for good; RFC 9457, 3.1.1. */
export const problemType = (code: ProblemCode): string => `urn:handspike:problem:${code}`;

/** A request is refused; whoever throws this says no more than the caller may know. */
export class Refusal extends Error {
  readonly code: ProblemCode;
  readonly errors: Problem['errors'];
  /** Milliseconds until it is worth trying again. */
  readonly wait: number | null;
  constructor(code: ProblemCode, more: { errors?: Problem['errors']; wait?: number } = {}) {
    super(code);
    this.name = 'Refusal';
    this.code = code;
    this.errors = more.errors;
    this.wait = more.wait ?? null;
  }
}

export function problemOf({ code, errors }: Pick<Refusal, 'code' | 'errors'>): Problem {
  const [status, title, detail] = PROBLEMS[code];
  return {
    type: problemType(code),
    title,
    status,
    detail,
    ...(errors === undefined || errors.length === 0 ? {} : { errors }),
  };
}

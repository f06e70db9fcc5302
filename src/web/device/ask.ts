import type { Problem } from '../../store/wire.ts';

/** What comes of asking the server: it is never an exception. */
export type Answer<T> =
  | { readonly kind: 'answer'; readonly body: T }
  /** The server says no: the last word of the problem's type, and how long to wait where it says. */
  | {
      readonly kind: 'refused';
      readonly status: number;
      readonly why: string;
      readonly wait: number | null;
    }
  /** Nobody answered, or not in time, or something that is not ours. */
  | { readonly kind: 'away' };

const PATIENCE = 12_000;

export async function ask<T>(address: string, body?: unknown): Promise<Answer<T>> {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), PATIENCE);
  try {
    const answer = await fetch(address, {
      signal: stop.signal,
      cache: 'no-store',
      ...(body === undefined
        ? {}
        : {
            method: 'POST',
            body: JSON.stringify(body),
            headers: { 'content-type': 'application/json' },
          }),
    });
    if (answer.status === 204) return { kind: 'answer', body: undefined as T };
    const told: unknown = await answer.json();
    if (answer.ok) return { kind: 'answer', body: told as T };
    const { type } = told as Problem;
    return {
      kind: 'refused',
      status: answer.status,
      why: String(type).replace(/^.*:/, ''),
      wait: waitOf(answer.headers.get('retry-after')),
    };
  } catch {
    return { kind: 'away' };
  } finally {
    clearTimeout(timer);
  }
}

const waitOf = (header: string | null): number | null =>
  header !== null && /^\d+$/.test(header) ? 1000 * Number(header) : null;

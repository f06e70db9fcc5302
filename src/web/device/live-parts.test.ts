import { describe, expect, it } from 'vitest';
import type { Answer } from './ask.ts';
import { type EventSourceLike, followParts } from './live-parts.ts';

/** A browser whose streams, answers and waits are in the test's hands. */
function follower(answers: readonly Answer<object>[], hasStreams = true, silentFrom = 1000) {
  const told: string[] = [];
  const streams: { readonly say: (name: string, data?: unknown) => void; isClosed: boolean }[] = [];
  const waits: { readonly wait: number; readonly call: () => void; isOff: boolean }[] = [];
  let asked = 0;
  const listen = (): EventSourceLike => {
    const listeners = new Map<string, (event: { data?: unknown }) => void>();
    const stream = {
      say: (name: string, data: unknown = {}) => listeners.get(name)?.({ data: JSON.stringify(data) }),
      isClosed: false,
    };
    streams.push(stream);
    return {
      addEventListener: (name, listener) => void listeners.set(name, listener),
      close: () => {
        stream.isClosed = true;
      },
    };
  };
  const stop = followParts(
    'group',
    {
      listen: hasStreams ? listen : null,
      ask: async () => {
        if (asked++ >= silentFrom) await new Promise(() => undefined);
        return answers[Math.min(asked - 1, answers.length - 1)] ?? { kind: 'away' };
      },
      later: (wait, call) => {
        const one = { wait, call, isOff: false };
        waits.push(one);
        return () => {
          one.isOff = true;
        };
      },
    },
    {
      onParts: (parts) => told.push(`parts ${JSON.stringify(parts)}`),
      onClock: (now) => told.push(`clock ${now}`),
      onLive: (isLive) => told.push(isLive ? 'live' : 'away'),
      onOver: () => told.push('over'),
      onPassGone: () => told.push('pass gone'),
    },
  );
  const settle = async (): Promise<void> => {
    for (let n = 0; n < 20; n += 1) await Promise.resolve();
  };
  return {
    told,
    streams,
    stop,
    settle,
    asked: () => asked,
    waiting: () => waits.filter(({ isOff }) => !isOff),
    elapse: async (): Promise<void> => {
      const next = waits.findLast(({ isOff }) => !isOff);
      if (next !== undefined) next.isOff = true;
      next?.call();
      await settle();
    },
  };
}
const here: Answer<object> = { kind: 'answer', body: { a: 1 } };
const away: Answer<object> = { kind: 'away' };

describe('following what a seat is shown', () => {
  it('asks once for all parts and then hears those that change', async () => {
    const page = follower([here]);
    await page.settle();
    page.streams[0]?.say('parts', { b: 2 });
    page.streams[0]?.say('beat', { now: 77 });
    expect(page.told.filter((each) => each !== 'live')).toEqual([
      'parts {"a":1}',
      'parts {"b":2}',
      'clock 77',
    ]);
  });

  it('asks again and again while nobody answers, and listens as soon as somebody does', async () => {
    const page = follower([away, away, here]);
    await page.settle();
    await page.elapse();
    expect(page.streams.length).toBe(0);
    await page.elapse();
    expect([page.asked(), page.streams.length, page.told.at(-1)]).toEqual([3, 1, 'parts {"a":1}']);
  });

  it('goes on by asking where a browser has no streams', async () => {
    const page = follower([here], false);
    await page.settle();
    await page.elapse();
    expect(page.told.filter((each) => each.startsWith('parts')).length).toBe(2);
  });

  it('asks after a stream that has fallen silent, and says nothing where somebody answers', async () => {
    const page = follower([here]);
    await page.settle();
    await page.elapse();
    expect([page.streams[0]?.isClosed, page.streams.length, page.told.includes('away')]).toEqual([
      true,
      2,
      false,
    ]);
  });

  it('says within ten seconds that nobody is there: silence, and no answer to what was asked then', async () => {
    const page = follower([here], true, 1);
    await page.settle();
    const [silence] = page.waiting();
    await page.elapse();
    const [grace] = page.waiting();
    expect((silence?.wait ?? 0) + (grace?.wait ?? 0)).toBeLessThan(10_000);
    expect(page.told.at(-1)).not.toBe('away');
    await page.elapse();
    expect(page.told.at(-1)).toBe('away');
  });

  it('asks after a stream that broke, and never listens to the old one again', async () => {
    const page = follower([here]);
    await page.settle();
    page.streams[0]?.say('error');
    await page.elapse();
    page.streams[0]?.say('parts', { old: 1 });
    expect([page.streams.length, page.told.includes('parts {"old":1}')]).toEqual([2, false]);
  });

  it('stops for good when the visit is over or the pass is gone', async () => {
    const over = follower([here]);
    await over.settle();
    over.streams[0]?.say('over');
    const gone = follower([{ kind: 'refused', status: 401, why: 'no-pass', wait: null }]);
    await gone.settle();
    expect([over.told.at(-1), over.waiting().length]).toEqual(['over', 0]);
    expect([gone.told, gone.waiting().length]).toEqual([['pass gone'], 0]);
  });
});

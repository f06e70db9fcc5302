import type { Answered, Asked, Edit, Texts } from '../engine/prepare-wire.ts';

type Question = Pick<Asked, 'edit' | 'chosen' | 'language'>;

export interface PrepareEngine {
  readonly ask: (question: Question) => void;
}

/** What the page hears: the answer, the edit it belongs to, and whether nothing newer is on its way. */
export type Hear = (answer: Answered, edit: Edit | null, isLatest: boolean) => void;

/**
 * The engine in its own thread. One question is on its way at a time; of several at one place only the
 * last is sent, with the texts as they then are.
 */
export function startEngine(textsNow: () => Texts, hear: Hear, fail: () => void): PrepareEngine {
  const thread = new Worker(new URL('../engine/engine-thread.ts', import.meta.url), { type: 'module' });
  let number = 0;
  let underWay: Question | null = null;
  let waiting: readonly Question[] = [];
  const send = (): void => {
    const [next, ...rest] = waiting;
    if (underWay !== null || next === undefined) return;
    waiting = rest;
    underWay = next;
    number += 1;
    thread.postMessage({ ...next, texts: textsNow(), number } satisfies Asked);
  };
  thread.onerror = fail;
  thread.onmessage = ({ data }: MessageEvent<Answered>) => {
    const { edit = null } = underWay ?? {};
    const isFirst = data.whole === null;
    if (isFirst) underWay = null;
    hear(data, isFirst ? edit : null, data.number === number && waiting.length === 0);
    send();
  };
  return {
    ask: (question) => {
      const place = placeOf(question.edit);
      waiting = [...waiting.filter((each) => placeOf(each.edit) !== place), question];
      send();
    },
  };
}

const placeOf = (edit: Edit | null): string => (edit === null ? '' : JSON.stringify([edit.file, edit.path]));

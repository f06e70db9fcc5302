import type {
  AnsweredNow,
  AnsweredRest,
  AnsweredWhole,
  Asked,
  AskedNow,
  Edit,
  Texts,
} from '../engine/prepare-wire.ts';

type Question = Pick<AskedNow, 'edit' | 'chosen' | 'language'>;

export interface PrepareEngine {
  readonly ask: (question: Question) => void;
  /** Edits that no answer has brought into the texts yet. */
  readonly unanswered: () => readonly Edit[];
}

/** What the page hears: what stands at once and the edit it belongs to, then the rest of it, then all tables. */
export interface PrepareEars {
  readonly now: (answer: AnsweredNow, edit: Edit | null) => void;
  readonly rest: (answer: AnsweredRest) => void;
  /** Of the texts as they are: what an older text gave is not told. */
  readonly whole: (answer: AnsweredWhole) => void;
  readonly fail: () => void;
}

/** So long nothing is asked, in milliseconds, before all tables are reckoned anew. */
const QUIET = 80;

/**
 * The engine in two threads of its own, so that all tables are reckoned while the next edit is made. One
 * question is on its way to each at a time; of several at one place only the last is sent, with the texts
 * as they then are.
 */
export function startEngine(textsNow: () => Texts, ears: PrepareEars): PrepareEngine {
  let number = 0;
  let language: AskedNow['language'] = 'en';
  let underWay: Question | null = null;
  let waiting: readonly Question[] = [];
  const quick = thread();
  const thorough = thread();
  let isThorough = false;
  let quiet: ReturnType<typeof setTimeout> | undefined;
  const send = (): void => {
    const [next, ...rest] = waiting;
    if (underWay !== null || next === undefined) return;
    waiting = rest;
    underWay = next;
    number += 1;
    quick.postMessage({ ...next, job: 'now', texts: textsNow(), number } satisfies Asked);
  };
  const askWhole = (): void => {
    if (isThorough || underWay !== null || waiting.length > 0) return;
    isThorough = true;
    thorough.postMessage({ job: 'whole', number, language, texts: textsNow() } satisfies Asked);
  };
  quick.onerror = ears.fail;
  thorough.onerror = ears.fail;
  quick.onmessage = ({ data }: MessageEvent<AnsweredNow | AnsweredRest>) => {
    if (data.job === 'rest') {
      if (data.number === number) ears.rest(data);
      return;
    }
    const edit = underWay?.edit ?? null;
    underWay = null;
    ears.now(data, edit);
    send();
    clearTimeout(quiet);
    quiet = setTimeout(askWhole, QUIET);
  };
  thorough.onmessage = ({ data }: MessageEvent<AnsweredWhole>) => {
    isThorough = false;
    if (data.number === number && underWay === null && waiting.length === 0) ears.whole(data);
    else askWhole();
  };
  return {
    ask: (question) => {
      const place = placeOf(question.edit);
      language = question.language;
      waiting = [...waiting.filter((each) => placeOf(each.edit) !== place), question];
      send();
    },
    unanswered: () =>
      [underWay, ...waiting].flatMap((each) => (each === null || each.edit === null ? [] : [each.edit])),
  };
}

/** A thread of the engine. */
export const thread = (): Worker =>
  new Worker(new URL('../engine/engine-thread.ts', import.meta.url), { type: 'module' });

const placeOf = (edit: Edit | null): string => (edit === null ? '' : JSON.stringify([edit.file, edit.path]));

import { useEffect, useRef, useState } from 'preact/hooks';
import type { Texts } from '../../engine/prepare-wire.ts';
import type {
  AnsweredPair,
  AnsweredQuestions,
  AnsweredStart,
  AskedPair,
  AskedQuestions,
  AskedStart,
  PairStarted,
  Questions,
  TableStarted,
} from '../../engine/question-wire.ts';

export interface QuestionsAtHand {
  /** `undefined` until the first come, `null` where a file can't be read. */
  readonly questions: Questions | null | undefined;
  /** A first setup of a machine for a new table. */
  readonly start: (machine: string, mark: string, title: string) => Promise<TableStarted | null>;
  /** A partner for the last setup of a table, in which a class sees the difference. */
  readonly pair: (texts: Texts, table: string) => Promise<PairStarted | null>;
}

type Unnumbered<T> = T extends { readonly number: number } ? Omit<T, 'number'> : never;

/** The engine in a thread for the questions alone, begun with the first and ended with the last of them. */
export function useQuestions(language: 'en' | 'es', texts: Texts): QuestionsAtHand {
  const [questions, setQuestions] = useState<Questions | null | undefined>(undefined);
  const thread = useRef<Worker | null>(null);
  const number = useRef(0);
  const started = useRef(new Map<number, (found: TableStarted | null) => void>());
  const paired = useRef(new Map<number, (found: PairStarted | null) => void>());
  const post = (asked: Unnumbered<AskedQuestions | AskedStart | AskedPair>): number => {
    number.current += 1;
    thread.current?.postMessage({ ...asked, number: number.current });
    return number.current;
  };
  const latest = useRef(0);
  useEffect(() => {
    const worker = new Worker(new URL('../../engine/engine-thread.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<AnsweredQuestions | AnsweredStart | AnsweredPair>) => {
      if (data.job === 'start') {
        started.current.get(data.number)?.(data.start);
        started.current.delete(data.number);
      } else if (data.job === 'pair') {
        paired.current.get(data.number)?.(data.pair);
        paired.current.delete(data.number);
      } else if (data.number === latest.current) setQuestions(data.questions);
    };
    thread.current = worker;
    return () => worker.terminate();
  }, []);
  useEffect(() => {
    latest.current = post({ job: 'questions', language, texts });
  }, [texts, language]);
  return {
    questions,
    start: (machine, mark, title) =>
      new Promise((resolve) => {
        started.current.set(post({ job: 'start', texts, machine, mark, title }), resolve);
      }),
    pair: (asked, table) =>
      new Promise((resolve) => {
        paired.current.set(post({ job: 'pair', texts: asked, table }), resolve);
      }),
  };
}

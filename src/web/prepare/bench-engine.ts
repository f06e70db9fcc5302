import type { AnsweredBench, AskedBench, BenchFound, BenchOf } from '../engine/bench-wire.ts';
import type { Texts } from '../engine/prepare-wire.ts';
import { thread } from './prepare-engine.ts';

export interface BenchEngine {
  readonly ask: (texts: Texts, language: AskedBench['language'], of: BenchOf) => Promise<BenchFound | null>;
}

/** The engine in a thread that is begun with the first question: most evenings nobody reads on the bench. */
export function benchEngine(fail: () => void): BenchEngine {
  let worker: Worker | null = null;
  let number = 0;
  const waiting = new Map<number, (found: BenchFound | null) => void>();
  const begun = (): Worker => {
    worker ??= thread();
    worker.onerror = fail;
    worker.onmessage = ({ data }: MessageEvent<AnsweredBench>) => {
      waiting.get(data.number)?.(data.found);
      waiting.delete(data.number);
    };
    return worker;
  };
  return {
    ask: (texts, language, of) =>
      new Promise((resolve) => {
        number += 1;
        waiting.set(number, resolve);
        begun().postMessage({ job: 'bench', number, language, texts, of } satisfies AskedBench);
      }),
  };
}

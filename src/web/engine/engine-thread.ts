import { benchFound } from './bench-view.ts';
import type { AnsweredBench, AskedBench } from './bench-wire.ts';
import { pairStart } from './pair-start.ts';
import { prepareBench } from './prepare-bench.ts';
import type { Answered, Asked } from './prepare-wire.ts';
import { questionsOf } from './question-bench.ts';
import type {
  AnsweredPair,
  AnsweredQuestions,
  AnsweredStart,
  AskedPair,
  AskedQuestions,
  AskedStart,
} from './question-wire.ts';
import { tableStart } from './table-start.ts';

/** What a worker has of its own: the page's room doesn't know a worker's global by name. */
interface Port {
  onmessage:
    | ((message: { readonly data: Asked | AskedBench | AskedQuestions | AskedStart | AskedPair }) => void)
    | null;
  readonly postMessage: (
    answer: Answered | AnsweredBench | AnsweredQuestions | AnsweredStart | AnsweredPair,
  ) => void;
}

const port = globalThis as unknown as Port;
const bench = prepareBench();

/** Strip and key leave before the rest is begun: they are what is looked at while something is changed. */
port.onmessage = ({ data: asked }) => {
  const { number } = asked;
  switch (asked.job) {
    case 'bench':
      port.postMessage({ job: 'bench', number, found: benchFound(asked) });
      return;
    case 'whole':
      port.postMessage({ job: 'whole', number, whole: bench.whole(asked) });
      return;
    case 'questions':
      port.postMessage({ job: 'questions', number, questions: questionsOf(asked.texts, asked.language) });
      return;
    case 'start':
      port.postMessage({ job: 'start', number, start: tableStart(asked) });
      return;
    case 'pair':
      port.postMessage({ job: 'pair', number, pair: pairStart(asked) });
      return;
    case 'now': {
      const texts = asked.edit === null ? asked.texts : bench.edited(asked.texts, asked.edit);
      const now = bench.now({ ...asked, texts: texts ?? asked.texts });
      port.postMessage({ job: 'now', number, texts, now: now?.view ?? null });
      if (now !== null && now.rest !== null) port.postMessage({ job: 'rest', number, rest: now.rest() });
    }
  }
};

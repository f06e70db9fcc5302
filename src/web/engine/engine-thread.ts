import { prepareBench } from './prepare-bench.ts';
import type { Answered, Asked } from './prepare-wire.ts';

/** What a worker has of its own: the page's room doesn't know a worker's global by name. */
interface Port {
  onmessage: ((message: { readonly data: Asked }) => void) | null;
  readonly postMessage: (answer: Answered) => void;
}

const port = globalThis as unknown as Port;
const bench = prepareBench();
let waiting: ReturnType<typeof setTimeout> | undefined;

/** The table in hand at once, all the rest when nothing newer is asked: the latest edit wins. */
port.onmessage = ({ data: asked }) => {
  clearTimeout(waiting);
  const { number, edit } = asked;
  const texts = edit === null ? asked.texts : bench.edited(asked.texts, edit);
  const after = { ...asked, texts: texts ?? asked.texts };
  port.postMessage({ number, texts, now: bench.now(after), whole: null });
  waiting = setTimeout(() => {
    port.postMessage({ number, texts, now: null, whole: bench.whole(after) });
  }, 60);
};

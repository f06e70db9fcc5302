import { talkBench } from './talk-bench.ts';
import type { AnsweredTalk, AskedTalk } from './talk-wire.ts';

/** What a worker has of its own: the page's room doesn't know a worker's global by name. */
interface Port {
  onmessage: ((message: { readonly data: AskedTalk }) => void) | null;
  readonly postMessage: (answer: AnsweredTalk) => void;
}

const port = globalThis as unknown as Port;
port.onmessage = ({ data }) => port.postMessage(talkBench(data));

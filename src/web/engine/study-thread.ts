import { studyBench } from './study-bench.ts';
import type { AnsweredStudy, AskedStudy } from './study-wire.ts';

/** What a worker has of its own: the page's room doesn't know a worker's global by name. */
interface Port {
  onmessage: ((message: { readonly data: AskedStudy }) => void) | null;
  readonly postMessage: (answer: AnsweredStudy) => void;
}

const port = globalThis as unknown as Port;
port.onmessage = ({ data }) => studyBench(data, port.postMessage.bind(port));

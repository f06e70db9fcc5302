import { paperBench } from './paper-bench.ts';
import type { AnsweredPaper } from './paper-wire.ts';
import type { AskedStudy } from './study-wire.ts';
import { openTypesetter } from './typesetter.ts';

/** What a worker has of its own: the page's room doesn't know a worker's global by name. */
interface Port {
  onmessage: ((message: { readonly data: AskedStudy }) => void) | null;
  readonly postMessage: (answer: AnsweredPaper) => void;
}

const port = globalThis as unknown as Port;
const tell = port.postMessage.bind(port);
port.onmessage = ({ data }) => {
  paperBench(data, openTypesetter, tell).catch((fault: unknown) => {
    console.error(fault);
    tell({ answer: 'failed' });
  });
};

import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnsweredPaper, PaperFile } from '../engine/paper-wire.ts';
import type { AskedStudy } from '../engine/study-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';

export interface SaveAsPdfProps {
  readonly say: PrepareSay;
  readonly asked: AskedStudy;
}

/** A file with the address under which this page holds it. */
interface HeldFile extends Pick<PaperFile, 'name'> {
  readonly address: string;
  readonly size: number;
}

/** Sets the sheets that are in sight as PDF. The typesetter is fetched with the first one that is asked for. */
export function SaveAsPdf({ say, asked }: SaveAsPdfProps) {
  const [answer, setAnswer] = useState<AnsweredPaper | null>(null);
  const [files, setFiles] = useState<readonly HeldFile[]>([]);
  const thread = useRef<Worker | null>(null);
  const held = useRef<readonly HeldFile[]>([]);
  const end = (): void => {
    thread.current?.terminate();
    thread.current = null;
  };
  useEffect(
    () => () => {
      end();
      for (const { address } of held.current) URL.revokeObjectURL(address);
    },
    [],
  );
  const start = (): void => {
    const worker = new Worker(new URL('../engine/paper-thread.ts', import.meta.url), { type: 'module' });
    thread.current = worker;
    setAnswer({ answer: 'so far', done: 0, all: 0 });
    worker.onerror = () => setAnswer({ answer: 'failed' });
    worker.onmessage = ({ data }: MessageEvent<AnsweredPaper>) => {
      setAnswer(data);
      if (data.answer === 'so far') return;
      end();
      if (data.answer === 'failed') return;
      held.current = data.files.map(({ name, type, bytes }) => ({
        name,
        size: bytes.length,
        address: URL.createObjectURL(new Blob([bytes], { type })),
      }));
      setFiles(held.current);
    };
    worker.postMessage(asked);
  };
  const isAtWork = answer?.answer === 'so far';
  return (
    <div class="as-pdf" data-pdf={answer?.answer ?? 'not asked'}>
      <div class="acts">
        <button type="button" disabled={isAtWork || files.length > 0} onClick={start}>
          {say('prepare.pdf')}
        </button>
        {isAtWork && (
          <button
            type="button"
            onClick={() => {
              end();
              setAnswer(null);
            }}
          >
            {say('prepare.study.stop')}
          </button>
        )}
        <span role="status" class={answer?.answer === 'failed' ? 'trouble' : 'hint'}>
          {saidOf(say, answer)}
        </span>
      </div>
      {files.length > 0 && (
        <ul>
          {files.map(({ name, address, size }) => (
            <li key={name}>
              <a href={address} download={name}>
                {name}
              </a>{' '}
              {Math.ceil(size / 1000)} kB
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

function saidOf(say: PrepareSay, answer: AnsweredPaper | null): string {
  switch (answer?.answer) {
    case undefined:
      return '';
    case 'so far':
      return answer.done === 0
        ? say('prepare.pdf.opens')
        : say('prepare.pdf.so-far', { done: answer.done, all: answer.all });
    case 'done':
      return say('prepare.pdf.done');
    case 'failed':
      return say('prepare.pdf.failed');
  }
}

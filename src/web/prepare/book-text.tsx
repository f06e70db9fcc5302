import { keptBook } from '../engine/bench-texts.ts';
import type { FindingView, Texts } from '../engine/prepare-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import type { PrepareSay } from '../words/prepare-words.ts';
import type { BenchWork } from './bench-work.ts';
import { OneText } from './one-text.tsx';

const NO_BOOK = { name: '', text: '' };

export interface BookTextProps {
  readonly say: PrepareSay;
  readonly sayBench: BenchSay;
  readonly texts: Texts;
  readonly findings: readonly FindingView[];
  readonly bench: BenchWork;
}

/** The bench book of the kit in hand: opened and saved like the other files, and only ever added to. */
export function BookText({ say, sayBench, texts, findings, bench }: BookTextProps) {
  const { doubtful } = bench;
  const book = texts.bench ?? null;
  const isKept = book === null && keptBook(texts) !== '';
  const hint = isKept ? 'bench.book.kept' : book === null ? 'bench.book.none' : 'bench.book.hint';
  return (
    <>
      <OneText
        say={say}
        kind="bench"
        title={sayBench('bench.book')}
        file={book ?? NO_BOOK}
        findings={findings}
        accept=".csv,text/csv,text/plain"
        open={bench.openBook}
      />
      <p class="hint">{sayBench(hint)}</p>
      {hint === 'bench.book.kept' && (
        <p>
          <button type="button" onClick={bench.takeKept}>
            {sayBench('bench.book.take-kept')}
          </button>
        </p>
      )}
      <div role="alert">
        {doubtful !== null && (
          <div class="banner">
            <p>{sayBench('bench.book.lost', { file: doubtful.name, count: doubtful.lost })}</p>
            <div class="acts">
              <button type="button" onClick={() => bench.takeBook(false)}>
                {sayBench('bench.book.leave')}
              </button>
              <button type="button" class="plain" onClick={() => bench.takeBook(true)}>
                {sayBench('bench.book.take')}
              </button>
            </div>
          </div>
        )}
      </div>
    </>
  );
}

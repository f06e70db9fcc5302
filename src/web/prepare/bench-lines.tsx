import type { BenchAtSetup, BenchLineView } from '../engine/bench-wire.ts';
import type { BenchSay } from '../words/bench-words.ts';
import type { BenchDraft } from './bench-draft.ts';

export interface BenchLinesProps {
  readonly say: BenchSay;
  readonly at: BenchAtSetup;
  readonly draft: BenchDraft;
  /** The key that decides goes with its line: whoever pressed it goes on at the answer. */
  readonly toAnswer: () => void;
}

/** The lines of the book that are about the setup in hand. None is changed: another stands for it. */
export function BenchLines({ say, at, draft, toAnswer }: BenchLinesProps) {
  return (
    <section class="bench-lines" aria-labelledby="bench-lines">
      <h3 id="bench-lines">{say('bench.lines')}</h3>
      {at.lines.length === 0 && <p class="hint">{say('bench.lines.none')}</p>}
      <ul>
        {at.lines.map((line) => (
          <li key={line.line} data-line={line.line}>
            <OneLine say={say} line={line} draft={draft} toAnswer={toAnswer} />
          </li>
        ))}
      </ul>
      {at.others > 0 && <p class="hint">{say('bench.lines.others', { count: at.others })}</p>}
    </section>
  );
}

function OneLine({
  say,
  line,
  draft,
  toAnswer,
}: Omit<BenchLinesProps, 'at'> & { readonly line: BenchLineView }) {
  const number = { line: line.line };
  const decide = async (use: 'yes' | 'no'): Promise<void> => {
    if (await draft.decide(line, use)) toAnswer();
  };
  const expected =
    line.expected === null ? '' : `; ${say('bench.line.expected', { expected: line.expected })}`;
  return (
    <>
      <p>
        <b>
          {line.what}: {line.reading}
        </b>{' '}
        <span class="hint">
          ({say('bench.line', { ...number, date: line.date, by: line.by || say('bench.line.nobody') })})
        </span>
      </p>
      <p>
        {line.isUsed ? '✓' : '×'} {say('bench.line.used', { state: line.state })}
        {expected}
      </p>
      {line.note !== '' && <p class="hint">{line.note}</p>}
      {!line.isReplaced && (
        <p class="acts">
          <button type="button" class="plain" onClick={() => draft.putRight(line)}>
            {say('bench.line.put-right', number)}
          </button>
          {line.isUsed && (
            <button type="button" class="plain" onClick={() => void decide('no')}>
              {say('bench.line.leave-out', number)}
            </button>
          )}
          {line.mayBeUsed && (
            <button type="button" class="plain" onClick={() => void decide('yes')}>
              {say('bench.line.use', number)}
            </button>
          )}
        </p>
      )}
    </>
  );
}

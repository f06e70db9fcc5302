import { useEffect, useRef, useState } from 'preact/hooks';
import type { DeviceStore } from '../../device/device-store.ts';
import type { FindingView } from '../../engine/prepare-wire.ts';
import { newKitSayIn } from '../../words/new-kit-words.ts';
import type { PrepareWork } from '../prepare-work.ts';
import { StepEnd } from './step-end.tsx';
import { StepKit } from './step-kit.tsx';
import { StepParts } from './step-parts.tsx';
import { StepTables } from './step-tables.tsx';
import { StepVisit } from './step-visit.tsx';
import { STEPS, type Step, stepOf } from './steps.ts';
import { useQuestions } from './use-questions.ts';

export interface NewKitProps {
  readonly language: 'en' | 'es';
  readonly store: DeviceStore;
  readonly work: PrepareWork;
  readonly first: Step;
  readonly leave: () => void;
}

const NOTHING_FOUND: readonly FindingView[] = [];

/** What have you got, and what stands on each table? Five sheets of questions, in any order. */
export function NewKit({ language, store, work, first, leave }: NewKitProps) {
  const say = newKitSayIn(language);
  const [step, setStep] = useState(first);
  const heading = useRef<HTMLHeadingElement>(null);
  const texts = work.history.now;
  const { questions, start, pair } = useQuestions(language, texts);
  useEffect(() => void store.keepNote('questions', step), [step]);
  const go = (next: Step): void => {
    setStep(next);
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: 'start' });
  };
  const findings = work.whole?.findings ?? NOTHING_FOUND;
  const at = { say, findings, work };
  const n = STEPS.indexOf(step);
  const [back, next] = [STEPS[n - 1], STEPS[n + 1]];
  const name = (which: Step): string => say(`newkit.step.${which}`);
  return (
    <main class="new-kit" data-step={step}>
      <p class="over">{say('newkit.title')}</p>
      <nav aria-label={say('newkit.steps')}>
        <ol>
          {STEPS.map((each) => {
            const open = findings.filter(
              (found) => found.severity === 'error' && stepOf(found) === each,
            ).length;
            return (
              <li key={each}>
                <button
                  type="button"
                  aria-current={each === step ? 'step' : undefined}
                  onClick={() => go(each)}
                >
                  <b>{name(each)}</b>
                  {each !== 'end' && (
                    <small>
                      {open === 0
                        ? `✓ ${say('newkit.nothing-open')}`
                        : `◇ ${say('newkit.open', { count: open })}`}
                    </small>
                  )}
                </button>
              </li>
            );
          })}
        </ol>
      </nav>
      <section class="sheet" aria-labelledby="newkit-step">
        <h2 id="newkit-step" ref={heading} tabIndex={-1}>
          {name(step)}
        </h2>
        {questions === undefined && <p>{say('newkit.loading')}</p>}
        {questions === null && <p class="trouble">{say('newkit.not-read')}</p>}
        {questions && step === 'kit' && (
          <StepKit questions={questions} texts={texts} put={work.put} {...at} />
        )}
        {questions && step === 'parts' && <StepParts questions={questions} {...at} />}
        {questions && step === 'tables' && (
          <StepTables questions={questions} whole={work.whole} start={start} pair={pair} {...at} />
        )}
        {questions && step === 'visit' && <StepVisit questions={questions} {...at} />}
        {step === 'end' && (
          <StepEnd
            say={say}
            findings={findings}
            texts={texts}
            tables={work.whole?.tables ?? []}
            isSettled={work.isSettled}
            go={go}
          />
        )}
        <div class="acts">
          {back !== undefined && (
            <button type="button" onClick={() => go(back)}>
              {say('newkit.back', { step: name(back) })}
            </button>
          )}
          {next === undefined ? (
            <button type="button" class="main" onClick={leave}>
              {say('newkit.leave')}
            </button>
          ) : (
            <button type="button" class="main" onClick={() => go(next)}>
              {say('newkit.next', { step: name(next) })}
            </button>
          )}
          {next !== undefined && (
            <button type="button" class="plain" onClick={leave}>
              {say('newkit.leave')}
            </button>
          )}
        </div>
      </section>
    </main>
  );
}

import { useEffect, useRef, useState } from 'preact/hooks';
import type { KindOfPart, PartQuestions, Questions } from '../../engine/question-wire.ts';
import type { NewKitSay } from '../../words/new-kit-words.ts';
import { type AtQuestions, Found, foundBeside, QuestionList, unanswered } from './question-list.tsx';
import { TakeOut } from './take-out.tsx';

export interface StepPartsProps extends AtQuestions {
  readonly questions: Questions;
}

/** What lies in the box: one part after the other, each by the questions of its kind. */
export function StepParts({ questions, ...at }: StepPartsProps) {
  const { say, work } = at;
  const [inHand, setInHand] = useState('');
  return (
    <>
      <p>{say('newkit.parts.say')}</p>
      <NewPart
        say={say}
        questions={questions}
        add={(kind, mark) => {
          work.edit({ file: 'kit', path: ['parts', mark, 'part'], value: kind });
          setInHand(mark);
        }}
      />
      <h3>{say('newkit.parts.count', { count: questions.parts.length })}</h3>
      {questions.parts.length === 0 && <p class="hint">{say('newkit.parts.none')}</p>}
      {questions.parts.toReversed().map((part) => (
        <OnePart key={part.mark} part={part} isInHand={part.mark === inHand} {...at} />
      ))}
    </>
  );
}

interface NewPartProps {
  readonly say: NewKitSay;
  readonly questions: Questions;
  readonly add: (kind: string, mark: string) => void;
}

function NewPart({ say, questions: { kinds, taken }, add }: NewPartProps) {
  const [kind, setKind] = useState(kinds[0]?.kind ?? '');
  const [mark, setMark] = useState('');
  const written = mark.trim();
  const isTaken = taken.includes(written);
  return (
    <form
      class="new-part"
      onSubmit={(event) => {
        event.preventDefault();
        if (written === '' || isTaken) return;
        add(kind, written);
        setMark('');
      }}
    >
      <div class="question">
        <label for="newkit-kind">{say('newkit.parts.kind')}</label>
        <select id="newkit-kind" value={kind} onChange={(event) => setKind(event.currentTarget.value)}>
          {kinds.map((each) => (
            <option key={each.kind} value={each.kind}>
              {kindWords(say, each)}
            </option>
          ))}
        </select>
      </div>
      <div class="question">
        <label for="newkit-mark">{say('newkit.parts.mark')}</label>
        <input
          id="newkit-mark"
          value={mark}
          required
          autocomplete="off"
          spellcheck={false}
          aria-describedby="newkit-mark-says"
          aria-invalid={isTaken}
          onInput={(event) => setMark(event.currentTarget.value)}
        />
        <small id="newkit-mark-says" aria-live="polite">
          {isTaken ? `× ${say('newkit.parts.taken', { mark: written })}` : say('newkit.parts.mark.say')}
        </small>
      </div>
      <button type="submit" class="main">
        {say('newkit.parts.add')}
      </button>
    </form>
  );
}

const kindWords = (say: NewKitSay, { meaning, usedBy }: KindOfPart): string =>
  usedBy.length === 0 ? meaning : say('newkit.parts.used-by', { meaning, machines: usedBy.join(', ') });

function OnePart({
  part,
  isInHand,
  ...at
}: AtQuestions & { readonly part: PartQuestions; readonly isInHand: boolean }) {
  const { say, findings, work } = at;
  const place = useRef<HTMLDetailsElement>(null);
  // A part that was just added is answered next.
  useEffect(() => {
    if (place.current !== null) place.current.open = isInHand;
    if (isInHand) place.current?.querySelector<HTMLElement>('input, select')?.focus();
  }, [isInHand]);
  const path = ['parts', part.mark];
  const beside = foundBeside(findings, 'kit', path, part.questions);
  const open = unanswered(part.questions);
  return (
    <details ref={place} class="of-kit" data-part={part.mark}>
      <summary>
        <b>{part.mark}</b> {part.meaning}
        {open > 0 && <span class="needed"> ◇ {say('newkit.open', { count: open })}</span>}
      </summary>
      <Found findings={beside} />
      <QuestionList questions={part.questions} {...at} />
      <TakeOut say={say} what={part.mark} place={{ file: 'kit', path }} edit={work.edit} />
    </details>
  );
}

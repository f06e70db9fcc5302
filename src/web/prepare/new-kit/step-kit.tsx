import { useEffect, useState } from 'preact/hooks';
import type { Texts } from '../../engine/prepare-wire.ts';
import type { Questions } from '../../engine/question-wire.ts';
import { asStem, namesOf, renamed, stemOf } from './new-texts.ts';
import { type AtQuestions, QuestionList } from './question-list.tsx';

export interface StepKitProps extends AtQuestions {
  readonly questions: Questions;
  readonly texts: Texts;
  readonly put: (texts: Texts) => void;
}

/** What is the kit called, and where will the tables stand? */
export function StepKit({ questions, texts, put, ...at }: StepKitProps) {
  const { say } = at;
  const [stem, setStem] = useState(stemOf(texts));
  useEffect(() => setStem(stemOf(texts)), [texts.kit.name]);
  const [kit, activity, visit] = namesOf(asStem(stem) || stemOf(texts));
  return (
    <>
      <p>{say('newkit.kit.say')}</p>
      <QuestionList questions={questions.kit} first={['decimal']} {...at} />
      <p class="hint">{say('newkit.kit.place')}</p>
      <QuestionList questions={questions.place} first={['latitude', 'height']} {...at} />
      <div class="question">
        <label for="newkit-stem">{say('newkit.kit.files')}</label>
        <input
          id="newkit-stem"
          value={stem}
          autocomplete="off"
          spellcheck={false}
          aria-describedby="newkit-stem-says"
          onInput={(event) => setStem(event.currentTarget.value)}
          onBlur={() => {
            if (asStem(stem) !== '' && asStem(stem) !== stemOf(texts)) put(renamed(texts, asStem(stem)));
          }}
        />
        <small id="newkit-stem-says">{say('newkit.kit.files.say', { kit, activity, visit })}</small>
      </div>
    </>
  );
}

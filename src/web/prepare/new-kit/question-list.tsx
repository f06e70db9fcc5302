import { useState } from 'preact/hooks';
import type { Path } from '../../../core/files/context.ts';
import type { FileKind, FindingView } from '../../engine/prepare-wire.ts';
import type { Question } from '../../engine/question-wire.ts';
import type { NewKitSay } from '../../words/new-kit-words.ts';
import { FieldControl, idOf } from '../field-control.tsx';
import type { PrepareWork } from '../prepare-work.ts';
import { FromFirstToLast } from './from-first-to-last.tsx';

/** What every list of questions is given along. */
export interface AtQuestions {
  readonly say: NewKitSay;
  readonly findings: readonly FindingView[];
  readonly work: Pick<PrepareWork, 'edit' | 'turn'>;
}

export interface QuestionListProps extends AtQuestions {
  readonly questions: readonly Question[];
  /** Names that are asked openly, beside those that are needed or answered. */
  readonly first?: readonly string[];
}

/** Questions one under the other: the needed and the answered ones, and the others folded below. */
export function QuestionList({ questions, first = [], ...at }: QuestionListProps) {
  // What is being answered stays where it is: only a list that is opened anew puts it among the answered ones.
  const [answered] = useState(() => questions.filter(({ value }) => value !== '').map(({ name }) => name));
  const isOpen = ({ isNeeded, name }: Question): boolean =>
    isNeeded || first.includes(name) || answered.includes(name);
  const [open, folded] = [questions.filter(isOpen), questions.filter((each) => !isOpen(each))];
  return (
    <div class="questions">
      {open.map((question) => (
        <OneQuestion key={idOf(question)} question={question} {...at} />
      ))}
      {folded.length > 0 && (
        <details>
          <summary>{at.say('newkit.more', { count: folded.length })}</summary>
          {folded.map((question) => (
            <OneQuestion key={idOf(question)} question={question} {...at} />
          ))}
        </details>
      )}
    </div>
  );
}

function OneQuestion({ question, say, findings, work }: AtQuestions & { readonly question: Question }) {
  const { meaning, name, example, answers, isNeeded, value, said, file, path } = question;
  const id = idOf(question);
  const hint = answers
    .filter((answer) => answer !== 'words')
    .map((answer) => say(`newkit.answer.${answer}`))
    .map((words, n) => (n === 0 ? words : words.charAt(0).toLowerCase() + words.slice(1)))
    .join(` ${say('newkit.or')} `);
  return (
    <div class="question">
      <label for={id}>
        {capital(meaning)}
        {isNeeded && value === '' && <b class="needed"> ◇ {say('newkit.needed')}</b>}
      </label>
      <FieldControl field={question} said={said} turn={work.turn} edit={work.edit} unwritten="–" />
      <small id={`${id}-says`}>
        {hint === '' ? '' : `${hint}.`} {said.length === 0 && say('newkit.example', { example })}{' '}
        <span class="in-file">{say('newkit.in-file', { name })}</span>
      </small>
      {question.between !== null && (
        <FromFirstToLast
          say={say}
          between={question.between}
          id={`${id}-whole`}
          give={(each) => work.edit({ file, path, value: each })}
        />
      )}
      <Found findings={foundAt(findings, file, path).filter(({ code }) => code !== 'missing-key')} />
    </div>
  );
}

/** What is found at a place: what is wrong, why, and what can be done. */
export const Found = ({ findings }: { readonly findings: readonly FindingView[] }) => (
  <div class="found-here" aria-live="polite">
    {findings.map(({ severity, words, line, code }) => (
      <p key={`${code} ${line}`} class="finding" data-severity={severity}>
        <b>
          {severity === 'error' ? '×' : '!'} {asSentence(words.what)}
        </b>{' '}
        {asSentence(words.here)} {asSentence(words.why)} <em>{asSentence(words.help)}</em>
      </p>
    ))}
  </div>
);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const asSentence = (text: string): string => (text === '' ? '' : capital(text).replace(/([^.!?:])$/, '$1.'));

/** Findings at one place and below it. */
export const foundAt = (findings: readonly FindingView[], file: FileKind, path: Path) =>
  findings.filter((each) => each.file === file && path.every((step, n) => each.path[n] === step));

/** Findings of a group that no question of it shows: an answer that is still missing says so by itself. */
export const foundBeside = (
  findings: readonly FindingView[],
  file: FileKind,
  path: Path,
  shown: readonly { readonly path: Path }[],
) =>
  foundAt(findings, file, path).filter(
    (each) => !shown.some((other) => other.path.every((step, n) => each.path[n] === step)),
  );

/** How much of these questions is needed and not answered. */
export const unanswered = (questions: readonly Question[]): number =>
  questions.filter(({ isNeeded, value }) => isNeeded && value === '').length;

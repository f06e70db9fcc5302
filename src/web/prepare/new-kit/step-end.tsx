import { saveFile } from '../../device/save-file.ts';
import { FILE_KINDS, type FindingView, type TableRows, type Texts } from '../../engine/prepare-wire.ts';
import type { NewKitSay } from '../../words/new-kit-words.ts';
import { type Followed, useFollowed } from '../followed.ts';
import { Found } from './question-list.tsx';
import { STEPS, type Step, stepOf } from './steps.ts';

export interface StepEndProps {
  readonly say: NewKitSay;
  readonly findings: readonly FindingView[];
  readonly texts: Texts;
  readonly tables: readonly Pick<TableRows, 'mark' | 'machine'>[];
  readonly isSettled: Followed<boolean>;
  readonly go: (step: Step) => void;
}

/** What is still open, and the three files to take along. */
export function StepEnd({ say, findings, texts, tables, isSettled, go }: StepEndProps) {
  const is = useFollowed(isSettled);
  // What stands at a table is told table by table.
  const placeOf = ({ file, path: [first, n] }: FindingView): string => {
    const table = file === 'activity' && first === 'tables' && typeof n === 'number' ? tables[n] : undefined;
    if (table !== undefined) return say('newkit.tables.one', { mark: table.mark, machine: table.machine });
    return file === 'kit' && first === 'parts' && typeof n === 'string' ? n : '';
  };
  const placesOf = (here: readonly FindingView[]) =>
    [...new Set(here.map(placeOf))].map((place) => ({
      place,
      found: here.filter((each) => placeOf(each) === place),
    }));
  const wrong = findings.filter(({ severity }) => severity === 'error');
  const others = findings.filter(({ severity }) => severity !== 'error');
  return (
    <>
      <p role="status" data-end={!is ? 'working' : wrong.length === 0 ? 'fine' : 'wrong'}>
        <b>
          {wrong.length === 0
            ? `✓ ${say('newkit.end.fine')}`
            : `× ${say('newkit.end.wrong', { count: wrong.length })}`}
        </b>{' '}
        {others.length > 0 && say('newkit.end.notes', { count: others.length })}
      </p>
      {STEPS.map((step) => {
        const here = [...wrong, ...others].filter((each) => stepOf(each) === step);
        return (
          here.length > 0 && (
            <section key={step}>
              {placesOf(here).map(({ place, found }) => (
                <div key={place}>
                  {place !== '' && <h3>{place}</h3>}
                  <Found findings={found} />
                </div>
              ))}
              <button type="button" onClick={() => go(step)}>
                {say('newkit.end.go', { step: say(`newkit.step.${step}`) })}
              </button>
            </section>
          )
        );
      })}
      <h3>{say('newkit.end.save')}</h3>
      <p class="acts">
        {FILE_KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            onClick={() => saveFile(texts[kind].name, texts[kind].text, 'text/plain')}
          >
            {texts[kind].name}
          </button>
        ))}
      </p>
    </>
  );
}

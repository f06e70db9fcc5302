import type { FindingView, SetupRest, SetupView } from '../engine/prepare-wire.ts';
import type { PrepareSay } from '../words/prepare-words.ts';
import { type Followed, useFollowed } from './followed.ts';
import { Picture } from './picture.tsx';

export interface SetupFiguresProps {
  readonly say: PrepareSay;
  readonly setup: Followed<SetupView>;
  readonly rest: SetupRest;
  readonly isBuilt: boolean;
  readonly findings: readonly FindingView[];
  readonly keepBeside: (view: SetupView) => void;
}

/** One setup: how it stands, what it will read, what the schoolbook says and why the two differ. */
export function SetupFigures({ say, setup, rest, isBuilt, findings, keepBeside }: SetupFiguresProps) {
  const view = useFollowed(setup);
  const here = findings.filter((each) => isAt(each, rest));
  return (
    <section class={isBuilt ? 'figures' : 'figures before'} aria-labelledby="setup-in-hand">
      <h2 id="setup-in-hand">{say('prepare.of-setup', { mark: view.setup })}</h2>
      {!isBuilt && <p class="trouble">× {say('prepare.broken')}</p>}
      <dl class="key">
        <div>
          <dt>{say('prepare.good')}</dt>
          <dd data-figure="good">{view.good}</dd>
        </div>
        {view.expected !== null && (
          <div>
            <dt>{say('prepare.expected')}</dt>
            <dd data-figure="expected">{view.expected}</dd>
          </div>
        )}
        <div>
          <dt>{view.way}</dt>
          <dd class="both">
            {view.newtons}
            {view.grams !== null && <span>{view.grams}</span>}
          </dd>
        </div>
      </dl>
      {view.strip !== null && <Picture svg={view.strip} />}
      {rest.drawings.map(({ title, svg }) => (
        <div key={title}>
          {title !== null && <h3>{title}</h3>}
          <Picture svg={svg} />
        </div>
      ))}
      <dl class="words">
        <dt>{say('prepare.schoolbook')}</dt>
        <dd data-figure="schoolbook">{view.schoolbook}</dd>
        {view.why !== '' && (
          <>
            <dt>{say('prepare.why')}</dt>
            <dd>{view.why}</dd>
          </>
        )}
        {view.narrows !== '' && (
          <>
            <dt>{say('prepare.narrows')}</dt>
            <dd>{view.narrows}</dd>
          </>
        )}
      </dl>
      <div class="acts">
        <button type="button" data-act="keep-beside" onClick={() => keepBeside(view)}>
          {say('prepare.beside')}
        </button>
      </div>
      {here.length > 0 && (
        <>
          <h3>{say('prepare.found-here')}</h3>
          {here.map((each) => (
            <pre key={each.text}>{each.text}</pre>
          ))}
        </>
      )}
    </section>
  );
}

/** At one of the fields that are shown, or at the setup that they belong to. */
const isAt = ({ file, path }: FindingView, { groups }: SetupRest): boolean =>
  groups.some(({ fields }) =>
    fields.some(
      (field) =>
        field.file === file &&
        path.length >= field.path.length - 1 &&
        // What is found in the head of a file is at its own field only.
        (field.path.length > 1 || field.path[0] === path[0]) &&
        field.path.slice(0, -1).every((step, n) => step === path[n]),
    ),
  );

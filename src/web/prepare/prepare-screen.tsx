import { useEffect, useMemo, useState } from 'preact/hooks';
import type { DeviceStore } from '../device/device-store.ts';
import type { FindingView, Whole } from '../engine/prepare-wire.ts';
import { benchSayIn } from '../words/bench-words.ts';
import { prepareSayIn } from '../words/prepare-words.ts';
import { ArrivalPart } from './arrival-part.tsx';
import { BenchPart } from './bench-part.tsx';
import { useBenchWork } from './bench-work.ts';
import { demoTexts } from './demo-texts.ts';
import { FieldList } from './field-list.tsx';
import { FileTexts } from './file-texts.tsx';
import { Follows } from './follows.tsx';
import { type Beside, KeptBeside } from './kept-beside.tsx';
import { useNewKit } from './new-kit/use-new-kit.tsx';
import { type FirstTexts, usePrepareWork } from './prepare-work.ts';
import { SetupFigures } from './setup-figures.tsx';
import { SetupList } from './setup-list.tsx';
import { OnceSettled, StateWord } from './state-word.tsx';

export interface PrepareScreenProps {
  readonly language: 'en' | 'es';
  readonly store: DeviceStore;
  readonly first: FirstTexts;
}

const NOTHING_FOUND: readonly FindingView[] = [];
const NO_TABLES: Whole['tables'] = [];

/** Prepare: what will each setup read, and what should I change tonight? */
export function PrepareScreen({ language, store, first }: PrepareScreenProps) {
  const say = prepareSayIn(language);
  const sayBench = benchSayIn(language);
  const work = usePrepareWork(language, store, first);
  const bench = useBenchWork(language, store, work);
  const { history, whole, place, rest, undo, redo } = work;
  const [beside, setBeside] = useState<Beside | null>(null);
  const newKit = useNewKit(language, say, store, work);
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redo();
      else undo();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  });
  const findings = whole?.findings ?? NOTHING_FOUND;
  const files = useMemo(
    () => <FileTexts {...{ say, sayBench, findings, bench }} texts={history.now} write={work.write} />,
    [history.now, findings, bench.doubtful],
  );
  const fields = useMemo(
    () => <FieldList say={say} setup={rest.setup} groups={rest.groups} turn={work.turn} edit={work.edit} />,
    [rest.setup, rest.groups, work.turn],
  );
  const list = useMemo(
    () =>
      whole === null || whole.tables.length === 0 ? null : (
        <SetupList say={say} whole={whole} chosen={place} choose={work.choose} />
      ),
    [whole, place],
  );
  const onBench = useMemo(
    () => <BenchPart say={sayBench} setup={place?.setup ?? ''} work={bench} />,
    [place, bench.at, bench.answer, bench.by],
  );
  const onArrival = useMemo(
    () => <ArrivalPart say={sayBench} work={bench} edit={work.edit} />,
    [bench.arrival, bench.trials],
  );
  const follows = useMemo(
    () => (
      <Follows
        say={say}
        language={language}
        texts={history.now}
        tables={whole?.tables ?? NO_TABLES}
        table={place?.table ?? ''}
        isSettled={work.isSettled}
        put={work.put}
      />
    ),
    [history.now, whole, place],
  );
  return (
    <>
      <header class="prepare-head">
        <h1>{say('prepare.page')}</h1>
        <p class="over">{say('prepare.question')}</p>
        <div class="acts">
          <button type="button" disabled={history.before.length === 0} onClick={undo}>
            {say('prepare.undo')}
          </button>
          <button type="button" disabled={history.after.length === 0} onClick={redo}>
            {say('prepare.redo')}
          </button>
          <button type="button" class="plain" onClick={() => work.put(demoTexts)}>
            {say('prepare.demo')}
          </button>
          <a href="discuss.html">{say('prepare.to-talk')}</a>
          {newKit.ways}
          <StateWord say={say} isSettled={work.isSettled} isStopped={work.isStopped} />
          <span class={work.isKept ? 'hint' : 'not-kept'}>
            {work.isKept ? `✓ ${say('prepare.kept')}` : `! ${say('prepare.not-kept')}`}
          </span>
        </div>
        {work.isRefused && (
          <p class="trouble" role="alert">
            {say('prepare.refused')}
          </p>
        )}
      </header>
      {newKit.sheet ?? (
        <main class="prepare-place">
          <div class="at-hand">
            {list}
            {work.setup === null ? (
              <section class="figures">
                <h2>{say('prepare.none')}</h2>
                <p>
                  <OnceSettled
                    isSettled={work.isSettled}
                    then={say('prepare.none.say')}
                    until={say('prepare.working')}
                  />
                </p>
              </section>
            ) : (
              <>
                <div class={beside === null ? 'in-hand' : 'in-hand compared'}>
                  <SetupFigures
                    say={say}
                    setup={work.setup}
                    rest={rest}
                    isBuilt={work.isBuilt}
                    findings={findings}
                    keepBeside={(view) =>
                      setBeside({ view, drawings: rest.drawings, kit: history.now.kit.name })
                    }
                  />
                  {beside !== null && (
                    <KeptBeside say={say} beside={beside} takeAway={() => setBeside(null)} />
                  )}
                </div>
                <div class="at-setup">
                  {onBench}
                  {fields}
                </div>
              </>
            )}
          </div>
          {onArrival}
          {follows}
          {files}
        </main>
      )}
    </>
  );
}

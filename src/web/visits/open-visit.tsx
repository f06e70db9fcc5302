import { useState } from 'preact/hooks';
import type { VisitView } from '../../store/wire.ts';
import { ask } from '../device/ask.ts';
import type { TeacherKey, TeacherSay } from '../words/teacher-words.ts';

export interface OpenVisitProps {
  readonly say: TeacherSay;
  readonly onOpened: (visit: VisitView) => void;
}

const KINDS = ['kit', 'activity', 'visit', 'bench'] as const;
type Kind = (typeof KINDS)[number];

/** Opens a visit from its three files, with what was read on the bench where that is kept. */
export function OpenVisit({ say, onOpened }: OpenVisitProps) {
  const [files, setFiles] = useState<Partial<Record<Kind, File>>>({});
  const [trouble, setTrouble] = useState<TeacherKey | null>(null);
  const [isBusy, setBusy] = useState(false);
  const open = async (form: HTMLFormElement): Promise<void> => {
    const { kit, activity, visit, bench } = files;
    if (kit === undefined || activity === undefined) return setTrouble('visits.new.missing');
    setBusy(true);
    const source = async (file: File) => ({ name: file.name, text: await file.text() });
    const answer = await ask<VisitView>('/api/teacher/visits', {
      files: {
        kit: await source(kit),
        activity: await source(activity),
        visit: visit === undefined ? null : await source(visit),
        bench: bench === undefined ? null : await source(bench),
      },
    });
    setBusy(false);
    if (answer.kind !== 'answer')
      return setTrouble(answer.kind === 'away' ? 'visits.away' : 'visits.new.unprepared');
    setTrouble(null);
    setFiles({});
    form.reset();
    onOpened(answer.body);
  };
  return (
    <section aria-labelledby="new-visit">
      <h2 id="new-visit">{say('visits.new')}</h2>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          void open(event.currentTarget);
        }}
      >
        {KINDS.map((kind) => (
          <p key={kind}>
            <label>
              {say(`visits.new.${kind}`)}{' '}
              <input
                type="file"
                accept={kind === 'bench' ? '.csv,text/csv' : '.yaml,.yml'}
                onChange={({ currentTarget }) => {
                  const { [kind]: _before, ...others } = files;
                  const file = currentTarget.files?.[0];
                  setFiles(file === undefined ? others : { ...others, [kind]: file });
                }}
              />
            </label>
          </p>
        ))}
        <p class="trouble" role="alert">
          {trouble !== null && say(trouble)}
        </p>
        <button type="submit" disabled={isBusy}>
          {say('visits.new.do')}
        </button>
      </form>
    </section>
  );
}

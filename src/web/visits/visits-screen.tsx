import { useEffect, useState } from 'preact/hooks';
import type { VisitView } from '../../store/wire.ts';
import { ask } from '../device/ask.ts';
import { type TeacherKey, teacherSayIn } from '../words/teacher-words.ts';
import { OpenVisit } from './open-visit.tsx';
import { VisitRow } from './visit-row.tsx';

const ALL = '/api/teacher/visits';

/** The visits of a server, latest first: go on with one, take its readings home, end it, or open another. */
export function VisitsScreen({ language }: { readonly language: string }) {
  const say = teacherSayIn(language);
  const [visits, setVisits] = useState<readonly VisitView[] | null>(null);
  const [trouble, setTrouble] = useState<TeacherKey | 'outside' | null>(null);
  const [said, setSaid] = useState('');
  const look = async (): Promise<void> => {
    const answer = await ask<readonly VisitView[]>(ALL);
    if (answer.kind === 'answer') setVisits(answer.body);
    setTrouble(answer.kind === 'answer' ? null : answer.kind === 'away' ? 'visits.away' : 'outside');
  };
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = say('visits.page');
    void look();
  }, []);
  const end = async (visit: VisitView): Promise<void> => {
    const answer = await ask<VisitView>(`${ALL}/${encodeURIComponent(visit.visit)}/close`, {});
    if (answer.kind !== 'answer') return setTrouble('visits.away');
    setSaid(say('visits.ended', { title: visit.title }));
    await look();
  };
  if (trouble === 'outside')
    return (
      <main class="door">
        <h1>{say('teacher.outside')}</h1>
        <p>{say('teacher.outside.say')}</p>
      </main>
    );
  return (
    <main class="class-place visits">
      <h1>{say('visits.page')}</h1>
      <p role="status">{said}</p>
      {trouble !== null && (
        <div class="banner">
          <p>{say(trouble)}</p>
          <button type="button" onClick={() => void look()}>
            {say('visits.again')}
          </button>
        </div>
      )}
      {visits === null && trouble === null && <p>{say('looking')}</p>}
      {visits?.length === 0 && <p class="hint">{say('visits.none')}</p>}
      <ul>
        {visits?.map((visit) => (
          <VisitRow
            key={visit.visit}
            visit={visit}
            say={say}
            language={language}
            onEnd={() => void end(visit)}
          />
        ))}
      </ul>
      <OpenVisit
        say={say}
        onOpened={(visit) => {
          setSaid(say('visits.opened', { title: visit.title }));
          void look();
        }}
      />
    </main>
  );
}

import { useState } from 'preact/hooks';
import type { VisitView } from '../../store/wire.ts';
import type { TeacherSay } from '../words/teacher-words.ts';

export interface VisitRowProps {
  readonly visit: VisitView;
  readonly say: TeacherSay;
  readonly language: string;
  readonly onEnd: () => void;
}

/** One visit: when it was, what is in it, and what can be done with it. */
export function VisitRow({ visit, say, language, onEnd }: VisitRowProps) {
  const [isAsking, setAsking] = useState(false);
  const { title, opened, closed, code, helperCode, entries, listening } = visit;
  const name = encodeURIComponent(visit.visit);
  const when = (time: number): string =>
    new Date(time).toLocaleString(language, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <li>
      <h2>{title}</h2>
      <p>
        <b>
          {closed === null ? `● ${say('visits.open')}` : `○ ${say('visits.closed', { time: when(closed) })}`}
        </b>{' '}
        <span class="hint">
          {say('visits.since', { time: when(opened) })} · {say('visits.entries', { many: entries })}
          {closed === null && ` · ${say('visits.listening', { many: listening })}`}
        </span>
      </p>
      {code !== null && <p>{say('visits.codes', { code, helper: helperCode ?? '' })}</p>}
      <p class="acts">
        {closed === null && (
          <>
            <a href={`/teacher?visit=${name}`}>{say('visits.go', { title })}</a>
            <a href={`/chart?visit=${name}`}>{say('nav.chart')}</a>
          </>
        )}
        <a href={`/api/teacher/visits/${name}/readings.csv`} download>
          {say('visits.csv')}
        </a>
        <a href={`/api/teacher/visits/${name}/entries.jsonl`} download>
          {say('visits.lines')}
        </a>
      </p>
      {closed === null &&
        (isAsking ? (
          <p class="acts">
            <span>{say('visits.end.say')}</span>
            <button type="button" onClick={onEnd}>
              {say('visits.end.yes')}
            </button>
            <button type="button" class="plain" onClick={() => setAsking(false)}>
              {say('groups.cancel')}
            </button>
          </p>
        ) : (
          <button
            type="button"
            class="plain"
            aria-label={say('visits.end.of', { title })}
            onClick={() => setAsking(true)}
          >
            {say('visits.end')}
          </button>
        ))}
    </li>
  );
}

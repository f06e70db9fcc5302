import { useEffect, useState } from 'preact/hooks';
import type { Texts, Whole } from '../engine/prepare-wire.ts';
import type { StudyLine, StudyOf } from '../engine/study-wire.ts';
import type { PrepareKey, PrepareSay } from '../words/prepare-words.ts';
import { type Followed, useFollowed } from './followed.ts';
import { PaperSheet } from './paper-sheet.tsx';
import { SaveAsPdf } from './save-as-pdf.tsx';
import { StudyWishes } from './study-wishes.tsx';
import { type StudyDesk, useStudy } from './use-study.ts';

export interface FollowsProps {
  readonly say: PrepareSay;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
  readonly tables: Whole['tables'];
  /** The table in hand. */
  readonly table: string;
  readonly isSettled: Followed<boolean>;
  readonly put: (texts: Texts) => void;
}

const KINDS = [
  'timetable',
  'advice',
  'next',
  'rehearsal',
  'sheets',
] as const satisfies readonly StudyOf['kind'][];

/** What follows from all three files together, asked for by name: it takes longer than an edit may. */
export function Follows({ say, language, texts, tables, table, isSettled, put }: FollowsProps) {
  const desk = useStudy(language, texts);
  const is = useFollowed(isSettled);
  const { of, found, stands } = desk;
  const isOlder = desk.texts !== null && desk.texts !== texts;
  useEffect(() => {
    // A timetable takes a moment only: it follows by itself, whatever is changed.
    if (of?.kind === 'timetable' && isOlder && is) desk.ask(of);
  }, [is, texts]);
  const first: Readonly<Record<(typeof KINDS)[number], StudyOf>> = {
    timetable: { kind: 'timetable' },
    advice: { kind: 'advice', table },
    next: { kind: 'next' },
    rehearsal: { kind: 'rehearsal', asked: {} },
    sheets: { kind: 'sheets', name: 'cards' },
  };
  return (
    <section class="follows" aria-labelledby="follows">
      <h2 id="follows">{say('prepare.follows')}</h2>
      <div class="acts">
        {KINDS.map((kind) => (
          <button
            key={kind}
            type="button"
            data-study={kind}
            aria-pressed={of?.kind === kind}
            onClick={() => desk.ask(first[kind])}
          >
            {say(`prepare.study.${kind}`)}
          </button>
        ))}
      </div>
      {of !== null && (
        <>
          <StudyWishes key={of.kind} say={say} of={of} tables={tables} ask={desk.ask} />
          <StudyState say={say} desk={desk} isOlder={isOlder} />
          {found !== null && found.sheets.length > 0 && desk.texts !== null && stands === 'done' && (
            <SaveAsPdf say={say} asked={{ language, texts: desk.texts, of }} />
          )}
          {found !== null && <StudyFound say={say} desk={desk} isOlder={isOlder} put={put} />}
          {of.kind === 'sheets' && stands === 'done' && (
            <p class="hint">{say('prepare.study.print-say', { name: of.name })}</p>
          )}
        </>
      )}
    </section>
  );
}

interface StudyPartProps {
  readonly say: PrepareSay;
  readonly desk: StudyDesk;
  readonly isOlder: boolean;
}

function StudyState({ say, desk, isOlder }: StudyPartProps) {
  const { of, stands, progress, ask, stop, close, found } = desk;
  return (
    <div class="acts">
      <span role="status" class={stands === 'failed' ? 'trouble' : 'hint'} data-study-stands={stands}>
        {progress === null ? say(STATES[stands]) : say('prepare.study.so-far', progress)}.
      </span>
      {stands === 'at work' && (
        <button type="button" onClick={stop}>
          {say('prepare.study.stop')}
        </button>
      )}
      {isOlder && stands !== 'at work' && (
        <>
          <span class="not-kept">! {say('prepare.study.older')}</span>
          <button type="button" onClick={() => of !== null && ask(of)}>
            {say('prepare.study.ask')}
          </button>
        </>
      )}
      {found !== null && found.sheets.length > 0 && (
        <button type="button" onClick={printSheets}>
          {say('prepare.study.print')}
        </button>
      )}
      <button type="button" class="plain" onClick={close}>
        {say('prepare.study.close')}
      </button>
    </div>
  );
}

const STATES: Readonly<Record<StudyDesk['stands'], PrepareKey>> = {
  'at work': 'prepare.study.at-work',
  done: 'prepare.study.done',
  stopped: 'prepare.study.stopped',
  failed: 'prepare.study.failed',
};

/** Of the whole page only the sheets go to the printer; without this, the setup in hand does. */
function printSheets(): void {
  document.body.dataset.prints = 'sheets';
  addEventListener('afterprint', () => delete document.body.dataset.prints, { once: true });
  print();
}

function StudyFound({ say, desk, isOlder, put }: StudyPartProps & { readonly put: FollowsProps['put'] }) {
  const [covered, setCovered] = useState(0);
  const { found, of } = desk;
  useEffect(() => setCovered((before) => before + 1), [found]);
  if (found === null) return null;
  const { about, outlines, sheets, remarks } = found;
  const isEmpty = outlines.length === 0 && sheets.length === 0;
  return (
    <div class="found-out">
      {remarks.map((text) => (
        <pre key={text}>{text}</pre>
      ))}
      {isEmpty && desk.stands === 'done' && <p class="trouble">{say('prepare.study.nothing')}</p>}
      {about.map((text) => (
        <p key={text} class="hint">
          {text}
        </p>
      ))}
      {outlines.map(({ heading, lines }) => (
        <section key={heading}>
          <h3>{heading}</h3>
          {lines.map((line, n) => (
            <OutlineLine key={`${n} ${line.text}`} say={say} line={line} isOlder={isOlder} put={put} />
          ))}
        </section>
      ))}
      {sheets.map((sheet) => (
        <PaperSheet
          key={`${sheet.name} ${of?.kind === 'rehearsal' ? covered : ''}`}
          sheet={sheet}
          cover={of?.kind === 'rehearsal' ? say('prepare.study.answers') : undefined}
        />
      ))}
    </div>
  );
}

interface OutlineLineProps {
  readonly say: PrepareSay;
  readonly line: StudyLine;
  readonly isOlder: boolean;
  readonly put: FollowsProps['put'];
}

function OutlineLine({ say, line: { indent, text, tone, use }, isOlder, put }: OutlineLineProps) {
  return (
    <p class={`in-${indent} ${tone ?? ''}`}>
      {text}
      {use === null && <span class="hint"> {say('prepare.study.by-hand')}</span>}
      {use !== null && use !== undefined && (
        <button type="button" disabled={isOlder} onClick={() => put(use)}>
          {say('prepare.study.use')}
        </button>
      )}
    </p>
  );
}

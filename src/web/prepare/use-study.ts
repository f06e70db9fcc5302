import { useEffect, useRef, useState } from 'preact/hooks';
import type { Texts } from '../engine/prepare-wire.ts';
import type { AnsweredStudy, AskedStudy, Studied, StudyOf } from '../engine/study-wire.ts';

/** How what was asked for stands. */
export interface Study {
  readonly of: StudyOf | null;
  readonly stands: 'at work' | 'done' | 'stopped' | 'failed';
  /** How many tables are done, where that can be told. */
  readonly progress: { readonly done: number; readonly all: number } | null;
  readonly found: Studied | null;
  /** The files it was asked of; others may stand in the page by now. */
  readonly texts: Texts | null;
}

export interface StudyDesk extends Study {
  readonly ask: (of: StudyOf) => void;
  readonly stop: () => void;
  readonly close: () => void;
}

const NOTHING: Study = { of: null, stands: 'done', progress: null, found: null, texts: null };

/** What takes longer than an edit may: in a thread of its own, which is ended where somebody stops it. */
export function useStudy(language: 'en' | 'es', textsNow: Texts): StudyDesk {
  const [study, setStudy] = useState<Study>(NOTHING);
  const thread = useRef<Worker | null>(null);
  const end = (): void => {
    thread.current?.terminate();
    thread.current = null;
  };
  useEffect(() => end, []);
  return {
    ...study,
    ask: (of) => {
      end();
      const worker = new Worker(new URL('../engine/study-thread.ts', import.meta.url), { type: 'module' });
      thread.current = worker;
      setStudy(({ found, of: before }) => ({
        of,
        stands: 'at work',
        progress: null,
        // The last answer to the same question stays in sight until the new one is there.
        found: before?.kind === of.kind ? found : null,
        texts: textsNow,
      }));
      worker.onerror = () => setStudy((before) => ({ ...before, stands: 'failed', found: null }));
      worker.onmessage = ({ data }: MessageEvent<AnsweredStudy>) => {
        if (data.answer === 'so far')
          setStudy((before) => ({
            ...before,
            progress: { done: data.done, all: data.all },
            found: data.found,
          }));
        else {
          end();
          setStudy((before) => ({ ...before, stands: 'done', progress: null, found: data.found }));
        }
      };
      worker.postMessage({ language, texts: textsNow, of } satisfies AskedStudy);
    },
    stop: () => {
      end();
      setStudy((before) => ({ ...before, stands: 'stopped', progress: null }));
    },
    close: () => {
      end();
      setStudy(NOTHING);
    },
  };
}

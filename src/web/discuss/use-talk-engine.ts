import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnsweredTalk, AskedTalk } from '../engine/talk-wire.ts';
import { type Chosen, matterOf } from './whose-numbers.ts';

/** How the engine is doing: at work, done, or stopped for a reason that can be told. */
export interface EngineState {
  readonly stands: 'working' | 'settled' | 'stopped' | 'away';
  readonly faults: readonly string[];
  readonly refused: number;
}

/** Reckons the talk in a thread whenever something else is chosen, or the class is asked for anew. */
export function useTalkEngine(
  language: 'en' | 'es',
  chosen: Chosen,
  turn: number,
  hear: (talk: AnsweredTalk['talk']) => void,
): EngineState {
  const [state, setState] = useState<EngineState>({ stands: 'working', faults: [], refused: 0 });
  const worker = useRef<Worker | null>(null);
  const last = useRef(0);
  useEffect(() => {
    const thread = new Worker(new URL('../engine/talk-thread.ts', import.meta.url), { type: 'module' });
    worker.current = thread;
    thread.onerror = () => setState({ stands: 'stopped', faults: [], refused: 0 });
    thread.onmessage = ({ data }: MessageEvent<AnsweredTalk>) => {
      // Something else was asked for since.
      if (data.number !== last.current) return;
      setState({ stands: 'settled', faults: data.faults, refused: data.refused });
      hear(data.talk);
    };
    return () => thread.terminate();
  }, []);
  useEffect(() => {
    last.current += 1;
    const number = last.current;
    setState((before) => ({ ...before, stands: 'working' }));
    void matterOf(chosen).then((matter) => {
      if (number !== last.current) return;
      if (matter === null) setState({ stands: 'away', faults: [], refused: 0 });
      else
        worker.current?.postMessage({ number, language, names: chosen.names, ...matter } satisfies AskedTalk);
    });
  }, [chosen, turn]);
  return state;
}

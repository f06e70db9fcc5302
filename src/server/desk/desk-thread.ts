import { parentPort } from 'node:worker_threads';
import { inlineDesk } from './inline-desk.ts';
import type { FromThread, ToThread } from './thread-messages.ts';

/** The desk at work in a thread of its own: judging may take its time, and nobody's acknowledgement waits for it. */
const desk = inlineDesk();

const tell = (message: FromThread): void => parentPort?.postMessage(message);

const answer = async (number: number, work: Promise<FromThread>): Promise<void> => {
  try {
    tell(await work);
  } catch (fault) {
    tell({ tell: 'fault', number, what: fault instanceof Error ? fault.message : String(fault) });
  }
};

desk.onChange((visit, audience, parts) => tell({ tell: 'change', visit, audience, parts }));
parentPort?.on('message', (message: ToThread) => {
  switch (message.ask) {
    case 'open': {
      const { number, opened } = message;
      void answer(
        number,
        desk.open(opened).then(() => ({ tell: 'answer', number, parts: null })),
      );
      break;
    }
    case 'take':
      desk.take(message.visit, message.stored);
      break;
    case 'parts': {
      const { number, visit, seat } = message;
      void answer(
        number,
        desk.parts(visit, seat).then((parts) => ({ tell: 'answer', number, parts })),
      );
    }
  }
});

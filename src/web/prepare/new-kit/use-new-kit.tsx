import type { ComponentChild } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { DeviceStore } from '../../device/device-store.ts';
import type { PrepareSay } from '../../words/prepare-words.ts';
import type { PrepareWork } from '../prepare-work.ts';
import type { NewKitProps } from './new-kit.tsx';
import { newTexts } from './new-texts.ts';
import { isStep, type Step } from './steps.ts';

/** The way into the questions, and while they are asked what stands in the place of all else. */
export interface NewKitAtHand {
  readonly ways: ComponentChild;
  readonly sheet: ComponentChild | null;
}

/** The short name of a kit that nobody has named yet. */
const UNNAMED = 'new-kit';

export function useNewKit(
  language: 'en' | 'es',
  say: PrepareSay,
  store: DeviceStore,
  work: PrepareWork,
): NewKitAtHand {
  const [step, setStep] = useState<Step | null>(null);
  const [Sheet, setSheet] = useState<((props: NewKitProps) => ComponentChild) | null>(null);
  const [turn, setTurn] = useState(0);
  const open = (first: Step): void => {
    setStep(first);
    setTurn((before) => before + 1);
    // Loaded by whoever is asked.
    void import('./new-kit.tsx').then(({ NewKit }) => setSheet(() => NewKit));
  };
  useEffect(() => {
    // A page that was left in the middle of the questions opens there again.
    void store.note('questions').then((kept) => isStep(kept) && open(kept));
  }, []);
  const leave = (): void => {
    setStep(null);
    void store.keepNote('questions', null);
  };
  return {
    ways: (
      <>
        <button
          type="button"
          onClick={() => {
            work.put(newTexts(UNNAMED));
            open('kit');
          }}
        >
          {say('prepare.new-kit')}
        </button>
        {step === null && (
          <button type="button" onClick={() => open('parts')}>
            {say('prepare.add-to-kit')}
          </button>
        )}
      </>
    ),
    sheet:
      step === null ? null : Sheet === null ? (
        <main class="new-kit" />
      ) : (
        <Sheet key={turn} language={language} store={store} work={work} first={step} leave={leave} />
      ),
  };
}

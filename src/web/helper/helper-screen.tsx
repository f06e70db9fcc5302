import { useEffect } from 'preact/hooks';
import type { HelperParts } from '../../store/wire.ts';
import type { Device } from '../device/device.ts';
import { useDeviceState } from '../device/use-device-state.ts';
import { teacherSayIn } from '../words/teacher-words.ts';
import { AtTable } from './at-table.tsx';

export interface HelperScreenProps {
  readonly device: Device<HelperParts>;
  readonly language: string;
  /** To where codes are typed and tables chosen. */
  readonly toDoor: () => void;
}

/** Which of its few faces a helper's page shows. */
export function HelperScreen({ device, language: first, toDoor }: HelperScreenProps) {
  const state = useDeviceState(device);
  const language = state.parts.visit?.language ?? first;
  const title = state.parts.card?.title;
  const say = teacherSayIn(language);
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = title === undefined ? say('helper.page') : `${say('helper.page')}: ${title}`;
  }, [language, title]);
  useEffect(() => {
    if (state.standing === 'outside') toDoor();
  }, [state.standing]);
  switch (state.standing) {
    case 'looking':
    case 'outside':
      return <main class="door">{say('looking')}</main>;
    case 'over':
      return (
        <main class="door">
          <h1>{say('over.heading')}</h1>
          <p>{say('over.say')}</p>
        </main>
      );
    case 'inside':
      return (
        <>
          {!state.isKept && <p class="banner">{say('kept.not')}</p>}
          <AtTable device={device} state={state} say={say} language={language} onElsewhere={toDoor} />
        </>
      );
  }
}

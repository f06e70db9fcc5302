import { useEffect, useState } from 'preact/hooks';
import type { TeacherParts } from '../../store/wire.ts';
import type { Device } from '../device/device.ts';
import { teacherSayIn } from '../words/teacher-words.ts';
import { AtWork } from './at-work.tsx';

export interface TeacherScreenProps {
  readonly device: Device<TeacherParts>;
  readonly language: string;
}

/** Which of its few faces the teacher's page shows. */
export function TeacherScreen({ device, language: first }: TeacherScreenProps) {
  const [state, setState] = useState(device.state());
  useEffect(() => {
    setState(device.state());
    return device.onChange(() => setState(device.state()));
  }, [device]);
  const language = state.parts.visit?.language ?? first;
  const title = state.parts.visit?.title;
  const say = teacherSayIn(language);
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = title === undefined ? say('teacher.page') : `${say('teacher.page')}: ${title}`;
  }, [language, title]);
  switch (state.standing) {
    case 'looking':
      return <main class="door">{say('looking')}</main>;
    case 'outside':
      return (
        <main class="door">
          <h1>{say('teacher.outside')}</h1>
          <p>{say('teacher.outside.say')}</p>
        </main>
      );
    case 'over':
      return (
        <main class="door">
          <h1>{say('over.heading')}</h1>
          <p>{say('teacher.over.say')}</p>
        </main>
      );
    case 'inside':
      return (
        <>
          {!state.isKept && <p class="banner">{say('kept.not')}</p>}
          <AtWork device={device} state={state} say={say} language={language} />
        </>
      );
  }
}

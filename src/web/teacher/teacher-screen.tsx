import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import type { TeacherParts } from '../../store/wire.ts';
import type { Device, DeviceState } from '../device/device.ts';
import { useDeviceState } from '../device/use-device-state.ts';
import { type TeacherKey, type TeacherSay, teacherSayIn } from '../words/teacher-words.ts';

/** What is shown of the class once the teacher is in. */
export interface InsideProps {
  readonly device: Device<TeacherParts>;
  readonly state: DeviceState<TeacherParts>;
  readonly say: TeacherSay;
  readonly language: string;
}
export type Inside = ComponentType<InsideProps>;

export interface TeacherScreenProps {
  readonly device: Device<TeacherParts>;
  readonly language: string;
  readonly inside: Inside;
  readonly name: TeacherKey;
}

/** Which of its few faces a page of the teacher's seat shows. */
export function TeacherScreen({ device, language: first, inside: Inside, name }: TeacherScreenProps) {
  const state = useDeviceState(device);
  const language = state.parts.visit?.language ?? first;
  const title = state.parts.visit?.title;
  const say = teacherSayIn(language);
  useEffect(() => {
    document.documentElement.lang = language;
    document.title = title === undefined ? say(name) : `${say(name)}: ${title}`;
  }, [language, title, name]);
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
          <Inside device={device} state={state} say={say} language={language} />
        </>
      );
  }
}

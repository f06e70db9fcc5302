import { render } from 'preact';
import type { TeacherParts } from '../../store/wire.ts';
import { openDevice } from '../device/device.ts';
import { openDeviceStore } from '../device/device-store.ts';
import { pageElement, pageLanguage } from '../pages/page-element.ts';
import type { TeacherKey } from '../words/teacher-words.ts';
import { type Inside, TeacherScreen } from './teacher-screen.tsx';

/** A page of the teacher's seat: what it shows once she is in, and what it is called. */
export async function openTeacherPage(inside: Inside, name: TeacherKey): Promise<void> {
  const language = pageLanguage();
  const device = await openDevice<TeacherParts>('teacher', await openDeviceStore('handspike-device'));
  render(<TeacherScreen device={device} language={language} inside={inside} name={name} />, pageElement());
}

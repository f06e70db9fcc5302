import { render } from 'preact';
import type { TeacherParts } from '../../store/wire.ts';
import { openDevice } from '../device/device.ts';
import { openDeviceStore } from '../device/device-store.ts';
import { TeacherScreen } from '../teacher/teacher-screen.tsx';
import { pageElement, pageLanguage } from './page-element.ts';

/** The teacher's page: how is the class, and whom should I go to? */
async function open(): Promise<void> {
  const language = pageLanguage();
  const device = await openDevice<TeacherParts>('teacher', await openDeviceStore('handspike-device'));
  render(<TeacherScreen device={device} language={language} />, pageElement());
}

void open();

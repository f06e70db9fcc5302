import { render } from 'preact';
import type { GroupParts } from '../../store/wire.ts';
import { openDevice } from '../device/device.ts';
import { openDeviceStore } from '../device/device-store.ts';
import { GroupScreen } from '../group/group-screen.tsx';
import { keepForOffline, pageElement, pageLanguage } from './page-element.ts';

/** A group's own page. */
async function open(): Promise<void> {
  const language = pageLanguage();
  const code = location.hash.slice(1);
  if (code !== '') history.replaceState(null, '', location.pathname);
  const device = await openDevice<GroupParts>('group', await openDeviceStore('handspike-device'));
  render(<GroupScreen device={device} language={language} code={code} />, pageElement());
  keepForOffline();
}

void open();

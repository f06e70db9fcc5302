import { render } from 'preact';
import type { HelperParts } from '../../store/wire.ts';
import { openDevice } from '../device/device.ts';
import { openDeviceStore } from '../device/device-store.ts';
import { HelperScreen } from '../helper/helper-screen.tsx';
import { keepForOffline, pageElement, pageLanguage } from './page-element.ts';

/** A helper's page: what do I do at this table now? */
async function open(): Promise<void> {
  const language = pageLanguage();
  const device = await openDevice<HelperParts>('helper', await openDeviceStore('handspike-device'));
  const toDoor = (): void => location.replace(`/${location.hash}`);
  render(<HelperScreen device={device} language={language} toDoor={toDoor} />, pageElement());
  keepForOffline();
}

void open();

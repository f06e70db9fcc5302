import { render } from 'preact';
import type { Seat } from '../../store/entry.ts';
import { openDevice } from '../device/device.ts';
import { openDeviceStore } from '../device/device-store.ts';
import { Door } from '../door/door.tsx';
import { sayIn } from '../words/words.ts';
import { keepForOffline, pageElement, pageLanguage } from './page-element.ts';

/** The first page: it lets in, and leads to the page of the seat. */
async function open(): Promise<void> {
  const language = pageLanguage();
  const code = location.hash.slice(1);
  const store = await openDeviceStore('handspike-device');
  const group = await openDevice('group', store);
  const helper = await openDevice('helper', store);
  document.title = sayIn(language)('door.heading');
  render(
    <Door
      language={language}
      code={code}
      join={(typed, seat: Seat) => (seat.kind === 'helper' ? helper : group).join(typed, seat)}
      onIn={(seat) => location.assign(`/${seat.kind}`)}
    />,
    pageElement(),
  );
  keepForOffline();
}

void open();

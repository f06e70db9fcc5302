import { render } from 'preact';
import { openDeviceStore } from '../device/device-store.ts';
import { DiscussScreen } from '../discuss/discuss-screen.tsx';
import { keptTalk } from '../discuss/shared-talk.ts';
import { keptChoice } from '../discuss/whose-numbers.ts';
import { discussSayIn } from '../words/discuss-words.ts';
import { pageElement, pageLanguage } from './page-element.ts';

/** Discuss, from any host of files, or at the server with what its class wrote. */
async function open(): Promise<void> {
  const language = pageLanguage() === 'es' ? 'es' : 'en';
  document.title = discussSayIn(language)('discuss.page');
  const store = await openDeviceStore('handspike-discuss');
  const ofPrepare = async () => (await openDeviceStore('handspike-prepare')).note('texts');
  const first = await keptChoice(store, ofPrepare);
  render(
    <DiscussScreen language={language} store={store} first={first} firstNow={await keptTalk(store)} />,
    pageElement(),
  );
}

void open();

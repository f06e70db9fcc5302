import { render } from 'preact';
import { openDeviceStore } from '../device/device-store.ts';
import { isTexts } from '../engine/kept-texts.ts';
import { demoTexts } from '../prepare/demo-texts.ts';
import { PrepareScreen } from '../prepare/prepare-screen.tsx';
import { prepareSayIn } from '../words/prepare-words.ts';
import { pageElement, pageLanguage } from './page-element.ts';

/** Prepare, from any host of files: it asks no server for anything. */
async function open(): Promise<void> {
  const language = pageLanguage() === 'es' ? 'es' : 'en';
  document.title = prepareSayIn(language)('prepare.page');
  const store = await openDeviceStore('handspike-prepare');
  const kept = await store.note('texts');
  render(
    <PrepareScreen language={language} store={store} first={isTexts(kept) ? kept : demoTexts} />,
    pageElement(),
  );
}

void open();

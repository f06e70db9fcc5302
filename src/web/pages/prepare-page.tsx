import { render } from 'preact';
import { openDeviceStore } from '../device/device-store.ts';
import { areEdits, isTexts } from '../engine/kept-texts.ts';
import { demoTexts } from '../prepare/demo-texts.ts';
import { PrepareScreen } from '../prepare/prepare-screen.tsx';
import { prepareSayIn } from '../words/prepare-words.ts';
import { pageElement, pageLanguage } from './page-element.ts';

/** Prepare, from any host of files: it asks no server for anything. */
async function open(): Promise<void> {
  const language = pageLanguage() === 'es' ? 'es' : 'en';
  document.title = prepareSayIn(language)('prepare.page');
  const store = await openDeviceStore('handspike-prepare');
  const [texts, edits] = [await store.note('texts'), await store.note('edits')];
  // Nothing is kept of the demo before it is changed.
  const first = { texts: isTexts(texts) ? texts : demoTexts, edits: areEdits(edits) ? edits : [] };
  render(<PrepareScreen language={language} store={store} first={first} />, pageElement());
}

void open();

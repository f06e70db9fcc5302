import type { Texts } from '../engine/prepare-wire.ts';

/** Put in when the pages are built: the three files of `examples/brackwater`. */
declare const __DEMO_TEXTS__: Texts;

export const demoTexts: Texts = __DEMO_TEXTS__;

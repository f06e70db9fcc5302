import type { SourceText } from '../../core/files/source-text.ts';

/** Put in when the pages are built: the readings of `examples/brackwater`. */
declare const __DEMO_READINGS__: SourceText;

export const demoReadings: SourceText = __DEMO_READINGS__;

import { answerKey } from './answer-key.ts';
import { carriedPage } from './carried-page.ts';
import { dataCharts } from './data-chart.ts';
import type { SheetKind } from './paper-job.ts';

/** Every kind of sheet, in the order in which a teacher picks them up. */
export const sheetKinds: readonly SheetKind[] = [dataCharts, answerKey, carriedPage];

import { adultPosts } from './adult-posts.ts';
import { answerKey } from './answer-key.ts';
import { arrivalSheet } from './arrival-sheet.ts';
import { carriedPage } from './carried-page.ts';
import { dataCharts } from './data-chart.ts';
import { groupRoutes } from './group-routes.ts';
import { packingList } from './packing-list.ts';
import type { SheetKind } from './paper-job.ts';
import { partLabels } from './part-labels.ts';
import { rehearsalSheet } from './rehearsal-sheet.ts';
import { rekeySheet } from './rekey-sheet.ts';
import { rotationCharts, rotationPosters } from './rotation-wall.ts';
import { scaleTags } from './scale-tags.ts';
import { substitutionSlips } from './substitution-slips.ts';
import { tableCards } from './table-card.ts';
import { tableSigns } from './table-sign.ts';
import { tableVisitors } from './table-visitors.ts';
import { teachersGuide } from './teachers-guide.ts';

/** Every kind of sheet, in the order in which a teacher picks them up. */
export const sheetKinds: readonly SheetKind[] = [
  tableCards,
  tableSigns,
  partLabels,
  scaleTags,
  packingList,
  dataCharts,
  answerKey,
  rekeySheet,
  arrivalSheet,
  carriedPage,
  substitutionSlips,
  rotationCharts,
  rotationPosters,
  groupRoutes,
  tableVisitors,
  adultPosts,
  teachersGuide,
  rehearsalSheet,
];

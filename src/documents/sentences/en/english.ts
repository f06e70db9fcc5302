import { sentencesEn } from '../../../core/machines/list.ts';
import { mergedSentences } from '../merged-sentences.ts';
import { advices } from './advices.ts';
import { arrivals } from './arrivals.ts';
import { bench } from './bench.ts';
import { calendars } from './calendars.ts';
import { causes } from './causes.ts';
import { cautions } from './cautions.ts';
import { classFindings } from './class-findings.ts';
import { classSummary } from './class-summary.ts';
import { discussions } from './discussions.ts';
import { doneRows } from './done-rows.ts';
import { drawings } from './drawings.ts';
import { fields } from './fields.ts';
import { fileFields } from './file-fields.ts';
import { findings } from './findings.ts';
import { guide } from './guide.ts';
import { headings } from './headings.ts';
import { kinds } from './kinds.ts';
import { live } from './live.ts';
import { mistakes } from './mistakes.ts';
import { outcomes } from './outcomes.ts';
import { periodFields } from './period-fields.ts';
import { readingLevels } from './reading-levels.ts';
import { readingsIn } from './readings-in.ts';
import { reckonings } from './reckonings.ts';
import { rehearsals } from './rehearsals.ts';
import { reviews } from './reviews.ts';
import { rotations } from './rotations.ts';
import { sheetsKit } from './sheets-kit.ts';
import { sheetsVisit } from './sheets-visit.ts';
import { teachings } from './teachings.ts';
import { trials } from './trials.ts';
import { unknownFields } from './unknown-fields.ts';
import { unknowns } from './unknowns.ts';
import { ways } from './ways.ts';
import { words } from './words.ts';
import { working } from './working.ts';
import { works } from './works.ts';

/** English: the general sentences here, those of parts and machines from their folders. */
export const english = {
  tag: 'en',
  decimal: 'point',
  sentences: mergedSentences(
    'English',
    advices,
    arrivals,
    bench,
    calendars,
    causes,
    cautions,
    classFindings,
    classSummary,
    discussions,
    doneRows,
    drawings,
    fields,
    fileFields,
    guide,
    findings,
    headings,
    kinds,
    live,
    mistakes,
    outcomes,
    periodFields,
    readingLevels,
    readingsIn,
    reckonings,
    rehearsals,
    reviews,
    rotations,
    sheetsKit,
    sheetsVisit,
    teachings,
    trials,
    unknownFields,
    unknowns,
    ways,
    words,
    works,
    working,
    sentencesEn,
  ),
} as const;

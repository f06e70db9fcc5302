import { classSummary } from '../../core/readings/class-summary.ts';
import { reckonedAt } from '../../core/readings/reckoned-reading.ts';
import type { Review } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import { plainJson } from './plain-json.ts';
import { queriedText } from './queried-text.ts';

/** A review as JSON; nothing that stood in the file is left out. What is to be said is in the language asked for. */
export const reviewJson = (language: Language, review: Review): string =>
  plainJson({
    handspike: 'review 1',
    readings: review.judged.map(({ judgement, at }) => ({
      ...judgement.reading,
      table: at.setup.table,
      meaning: judgement.meaning,
      value: judgement.value,
      verdict: judgement.verdict,
      good: judgement.good,
      causes: judgement.causes,
      tie: judgement.tie,
      station: judgement.station,
      say: queriedText(language, judgement),
      reckoned: reckonedAt({ judgement, at }),
      because: judgement.because,
    })),
    refused: review.refused,
    notes: review.notes,
    tables: review.tables,
    groups: review.groups,
    summary: classSummary(review),
  });

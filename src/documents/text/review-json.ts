import type { Review } from '../../core/review.ts';
import { plainJson } from './plain-json.ts';

/** A review as JSON; nothing that stood in the file is left out. */
export const reviewJson = (review: Review): string =>
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
      because: judgement.because,
    })),
    refused: review.refused,
    notes: review.notes,
    tables: review.tables,
    groups: review.groups,
  });

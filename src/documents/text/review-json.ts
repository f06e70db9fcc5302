import type { Review } from '../../core/review.ts';

/** A review as JSON; nothing that stood in the file is left out. */
export const reviewJson = (review: Review): string =>
  JSON.stringify(
    {
      handspike: 'review 1',
      readings: review.judged.map(({ judgement, at }) => ({
        ...judgement.reading,
        table: at.setup.table,
        meaning: judgement.meaning,
        value: judgement.value,
        verdict: judgement.verdict,
        good: judgement.good,
        causes: judgement.causes,
        because: judgement.because,
      })),
      refused: review.refused,
    },
    null,
    2,
  );

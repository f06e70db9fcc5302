import type { FastifyInstance } from 'fastify';
import type { Seat } from '../../store/entry.ts';
import type { EntriesAnswer, EntriesRequest } from '../../store/wire.ts';
import { passOf } from '../doors/pass-of-request.ts';
import type { Pass } from '../doors/passes.ts';
import { type Sender, takeEntries } from '../entries/take-entries.ts';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';
import { asSchema, entriesSchema } from '../http/request-schemas.ts';

/** What devices write: checked, stored, and only then answered. */
export function entryRoutes(app: FastifyInstance, house: House): void {
  const { clock, metrics, passes, visits } = house;
  const place = { ...house, state: visits.state };

  const senderOf = ({ visit, device, seat }: Pass): Sender => ({
    visit,
    device,
    seats: visit === null || device === null ? [seat] : passes.seats(visit, device),
  });

  app.post<{ Body: EntriesRequest; Querystring: { readonly as?: Seat['kind'] } }>(
    '/api/entries',
    {
      schema: {
        summary: 'Stores entries; answers which of them are, after they are on the disk',
        querystring: asSchema,
        body: entriesSchema,
      },
    },
    async (request): Promise<EntriesAnswer> => {
      const received = clock();
      const began = performance.now();
      // Where a browser has several passes, the entries themselves say whose they are.
      const as = request.query.as ?? request.body.entries[0]?.seat.kind;
      const { pass, secret } = passOf(request, as, house);
      const wait = house.pace.ofPass.take(secret, received);
      if (wait > 0) {
        metrics.count('slowedDown');
        throw new Refusal('too-fast', { wait });
      }
      const answer = await takeEntries(place, senderOf(pass), request.body, received).catch(
        (fault: unknown) => {
          request.log.error(
            { fault: fault instanceof Error ? fault.name : 'unknown' },
            'entries were not stored',
          );
          throw new Refusal('not-stored');
        },
      );
      metrics.count('stored', '', answer.stored.length);
      for (const { why } of answer.refused) metrics.count('refused', why);
      metrics.acknowledged((performance.now() - began) / 1000);
      return answer;
    },
  );
}

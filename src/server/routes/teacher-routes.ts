import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { PreparationFiles } from '../../core/prepare.ts';
import { visitLog } from '../../store/visit-log.ts';
import type { TalkMatter, VisitView } from '../../store/wire.ts';
import { doorPicture } from '../doors/door-picture.ts';
import { passOf } from '../doors/pass-of-request.ts';
import type { House } from '../house.ts';
import { Refusal } from '../http/problem.ts';
import { doorSchema, openSchema, visitSchema } from '../http/request-schemas.ts';
import { closeVisit, openVisit, tellDesk } from '../visits/open-visit.ts';
import { entryLines, readingsCsv } from '../visits/visit-export.ts';
import type { VisitRecord } from '../visits/visits.ts';

interface Opening {
  readonly label?: string | null;
  readonly language?: string | null;
  readonly files: PreparationFiles;
}

type OfVisit = { Params: { readonly visit: string } };

/** What only a teacher may: visits, their codes, and everything that was written in them. */
export function teacherRoutes(app: FastifyInstance, house: House): void {
  const { hub, journal, visits } = house;

  const found = (request: FastifyRequest<OfVisit>): VisitRecord => {
    const record = visits.find(request.params.visit);
    if (record === null) throw new Refusal('no-such-visit');
    return record;
  };

  /** A closed visit isn't prepared again for its title, and one that can't be has none: its file's name will do. */
  const titleOf = async ({ visit, closed, files }: VisitRecord): Promise<string> => {
    const { name } = files.visit ?? files.activity;
    if (closed !== null) return name;
    return house.plan(visit).then(
      ({ title }) => title,
      () => name,
    );
  };

  const view = async (record: VisitRecord): Promise<VisitView> => {
    const { visit, opened, closed, code, helperCode } = record;
    return {
      visit,
      title: await titleOf(record),
      opened,
      closed,
      code: closed === null ? code : null,
      helperCode: closed === null ? helperCode : null,
      entries: visits.entries(visit),
      listening: hub.listening(visit),
    };
  };

  app.register(async (teacher) => {
    teacher.addHook('onRequest', async (request) => {
      // Whoever shows another seat's pass learns that it is not enough, and no more.
      const { pass } = passOf(request, 'teacher', house);
      if (pass.seat.kind !== 'teacher') throw new Refusal('not-this-seat');
    });

    teacher.get(
      '/api/teacher/visits',
      { schema: { summary: 'All visits, latest first, with their codes' } },
      async (): Promise<readonly VisitView[]> => Promise.all(visits.list().map(view)),
    );

    teacher.post<{ Body: Opening }>(
      '/api/teacher/visits',
      { bodyLimit: 2 * 1024 * 1024, schema: { summary: 'Opens a visit from its files', body: openSchema } },
      async (request, reply): Promise<VisitView> => {
        const { label = null, language = null, files } = request.body;
        const record = await openVisit(house, { label, language, files });
        request.log.info({ visits: visits.list().length }, 'a visit was opened');
        reply.code(201);
        return view(record);
      },
    );

    teacher.post<OfVisit>(
      '/api/teacher/visits/:visit/close',
      { schema: { summary: 'Ends a visit, its codes and its passes', params: visitSchema } },
      async (request): Promise<VisitView> => {
        const { visit } = found(request);
        closeVisit(house, visit);
        request.log.info('a visit was closed');
        return view(found(request));
      },
    );

    teacher.post<OfVisit>(
      '/api/teacher/visits/:visit/code',
      { schema: { summary: 'New codes for the door; who is in stays in', params: visitSchema } },
      async (request): Promise<VisitView> => {
        const { visit, closed } = found(request);
        if (closed !== null) throw new Refusal('visit-over');
        visits.newCodes(visit);
        const record = found(request);
        await tellDesk(house, record);
        return view(record);
      },
    );

    teacher.get<OfVisit & { Querystring: { readonly for?: 'group' | 'helper' } }>(
      '/api/teacher/visits/:visit/door.svg',
      {
        schema: {
          summary: 'The address with the code as a picture, for groups or helpers',
          params: visitSchema,
          querystring: doorSchema,
        },
      },
      async (request, reply) => {
        const { code, helperCode, closed } = found(request);
        if (closed !== null) throw new Refusal('visit-over');
        const [address = ''] = house.addresses();
        const link =
          request.query.for === 'helper' ? `${address}/helper#${helperCode}` : `${address}/group#${code}`;
        return reply.type('image/svg+xml; charset=utf-8').send(await doorPicture(link));
      },
    );

    teacher.get<OfVisit>(
      '/api/teacher/visits/:visit/talk',
      { schema: { summary: 'What the talk at the end is made of', params: visitSchema } },
      async (request): Promise<TalkMatter> => {
        const { visit, files } = found(request);
        const stored = await journal.since(visit, 0);
        const name = `visit-${visit}.csv`;
        return {
          files,
          readings: { name, text: readingsCsv(stored) },
          trials: visitLog(stored).arrival.map(({ setup, written }) => ({ setup, written })),
        };
      },
    );

    const download = (path: string, type: string, extension: string, write: typeof entryLines): void => {
      teacher.get<OfVisit>(
        `/api/teacher/visits/:visit/${path}`,
        { schema: { summary: `What was written in a visit, as ${path}`, params: visitSchema } },
        async (request, reply) => {
          const { visit } = found(request);
          return reply
            .type(type)
            .header('content-disposition', `attachment; filename="visit-${visit}.${extension}"`)
            .send(write(await journal.since(visit, 0)));
        },
      );
    };
    download('entries.jsonl', 'application/x-ndjson; charset=utf-8', 'jsonl', entryLines);
    download('readings.csv', 'text/csv; charset=utf-8', 'csv', readingsCsv);
  });
}

import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { PAGES, type PageFile, type PageFiles } from '../http/page-files.ts';
import { Refusal } from '../http/problem.ts';

/** The pages and what they are made of, from memory. */
export function pageRoutes(app: FastifyInstance, files: PageFiles): void {
  for (const page of ['/', ...PAGES.map((name) => `/${name}`)])
    if (!files.has(page))
      app.get(page, async () => {
        throw new Refusal('no-pages');
      });
  for (const [path, file] of files) app.get(path, async (request, reply) => send(request, reply, file));
}

function send(request: FastifyRequest, reply: FastifyReply, file: PageFile): FastifyReply {
  reply
    .header('etag', file.tag)
    .header('vary', 'accept-encoding')
    .header('cache-control', file.isForGood ? 'public, max-age=31536000, immutable' : 'no-cache');
  if (request.headers['if-none-match'] === file.tag) return reply.code(304).send();
  const zipped = /\bgzip\b/.test(String(request.headers['accept-encoding'])) ? file.zipped() : null;
  if (zipped !== null) reply.header('content-encoding', 'gzip');
  return reply.type(file.type).send(zipped ?? file.body);
}

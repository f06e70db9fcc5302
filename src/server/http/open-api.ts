import type { FastifyInstance } from 'fastify';
import { PROBLEMS, problemType } from './problem.ts';
import type { JsonSchema } from './request-schemas.ts';

declare module 'fastify' {
  interface FastifySchema {
    /** What the route is for, in a sentence. */
    summary?: string;
  }
}

interface Described {
  readonly method: string;
  readonly url: string;
  readonly summary: string;
  readonly query: JsonSchema | null;
  readonly body: JsonSchema | null;
}

/** Listens while routes are added; answers the document that describes them, from the schemas that check them. */
export function openApiOf(app: FastifyInstance, version: string): () => unknown {
  const routes: Described[] = [];
  app.addHook('onRoute', ({ method, url, schema }) => {
    if (schema?.summary === undefined || method === 'HEAD') return;
    routes.push({
      method: String(method).toLowerCase(),
      url,
      summary: schema.summary,
      query: (schema.querystring as JsonSchema | undefined) ?? null,
      body: (schema.body as JsonSchema | undefined) ?? null,
    });
  });
  return () => ({
    openapi: '3.1.0',
    info: { title: 'Handspike', version, description: 'A class, live: entries in, parts out.' },
    paths: Object.fromEntries(
      [...new Set(routes.map(({ url }) => url))].map((url) => [
        url.replace(/:(\w+)/g, '{$1}'),
        Object.fromEntries(
          routes.filter((each) => each.url === url).map((each) => [each.method, operation(each)]),
        ),
      ]),
    ),
    components: {
      responses: {
        problem: {
          description: `A refusal as RFC 9457 says; types: ${Object.keys(PROBLEMS)
            .map((code) => problemType(code as keyof typeof PROBLEMS))
            .join(', ')}`,
          content: { 'application/problem+json': { schema: PROBLEM } },
        },
      },
    },
  });
}

const PROBLEM: JsonSchema = {
  type: 'object',
  required: ['type', 'title', 'status', 'detail'],
  properties: {
    type: { type: 'string', format: 'uri' },
    title: { type: 'string' },
    status: { type: 'integer' },
    detail: { type: 'string' },
    errors: {
      type: 'array',
      items: { type: 'object', properties: { pointer: { type: 'string' }, detail: { type: 'string' } } },
    },
  },
};

function operation({ summary, url, query, body }: Described): unknown {
  const inPath = [...url.matchAll(/:(\w+)/g)].map(([, name]) => ({
    name,
    in: 'path',
    required: true,
    schema: { type: 'string' },
  }));
  const properties = (query?.properties ?? {}) as Readonly<Record<string, JsonSchema>>;
  const required = (query?.required ?? []) as readonly string[];
  const inQuery = Object.entries(properties).map(([name, schema]) => ({
    name,
    in: 'query',
    required: required.includes(name),
    schema,
  }));
  return {
    summary,
    ...(inPath.length + inQuery.length === 0 ? {} : { parameters: [...inPath, ...inQuery] }),
    ...(body === null
      ? {}
      : { requestBody: { required: true, content: { 'application/json': { schema: body } } } }),
    responses: { 200: { description: 'Done' }, default: { $ref: '#/components/responses/problem' } },
  };
}

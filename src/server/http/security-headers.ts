import type { FastifyInstance } from 'fastify';

/** Nothing from elsewhere, nothing inline, in nobody's frame. */
const CONTENT_SECURITY_POLICY = [
  "default-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'x-content-type-options': 'nosniff',
  'x-frame-options': 'DENY',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'permissions-policy': 'camera=(self), microphone=(), geolocation=(), payment=(), usb=()',
};

/** With every answer, whatever it is. What is asked under /api is kept by no cache. */
export function sendSecurityHeaders(app: FastifyInstance): void {
  app.addHook('onRequest', async (request, reply) => {
    reply.headers(HEADERS);
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
}

export const securityHeaders = (): Readonly<Record<string, string>> => HEADERS;

import type { FastifyInstance } from 'fastify';

/** Nothing from elsewhere, nothing inline, in nobody's frame. */
const POLICY = [
  "default-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

/** The typesetter of the page for preparing is WebAssembly: there, and in its thread, that may be compiled. */
const POLICY_OF_TYPESETTER = `${POLICY}; script-src 'self' 'wasm-unsafe-eval'`;
const OF_TYPESETTER = /^\/(?:prepare\b|assets\/paper-thread-)/;

const HEADERS: Readonly<Record<string, string>> = {
  'content-security-policy': POLICY,
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
    if (OF_TYPESETTER.test(request.url)) reply.header('content-security-policy', POLICY_OF_TYPESETTER);
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
}

export const securityHeaders = (): Readonly<Record<string, string>> => HEADERS;

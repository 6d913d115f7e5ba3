import type { IncomingMessage, ServerResponse } from 'node:http';
import { gzipSync } from 'node:zlib';
import { namesThisMachine } from './host.js';
import type { Site } from './site.js';

/** Longest address that is looked at. */
const LONGEST_URL = 1024;

const TYPES: Record<string, string> = {
  css: 'text/css; charset=utf-8',
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json',
  png: 'image/png',
  svg: 'image/svg+xml',
  txt: 'text/plain; charset=utf-8',
  webmanifest: 'application/manifest+json',
};

/** What the page's own policy says, and what only a header can say. */
const HEADERS = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'microphone=(self), camera=(), geolocation=()',
  'X-Frame-Options': 'DENY',
  // The service worker keeps the page; here every opening asks whether there is a newer one.
  'Cache-Control': 'no-cache',
};

/** Answers requests for files of a site, and nothing else. */
export function siteAnswer(site: Site): (request: IncomingMessage, answer: ServerResponse) => void {
  const policy = policyOf(site);
  const packed = new Map<string, Buffer>();
  const gzip = (name: string, bytes: Buffer): Buffer => {
    const made = packed.get(name) ?? gzipSync(bytes);
    packed.set(name, made);
    return made;
  };
  return (request, response) => {
    const { method = '', url = '' } = request;
    if (!namesThisMachine(request)) return refuse(request, response, 421);
    if (method !== 'GET' && method !== 'HEAD') return refuse(request, response, 405);
    if (hasBody(request)) return refuse(request, response, 413);
    if (url.length > LONGEST_URL) return refuse(request, response, 414);
    const name = url.split('?')[0]!.replace(/^\//, '') || 'index.html';
    const bytes = site.get(name);
    // Only whole names of known files are answered: a path with `..` is simply none of them.
    if (!bytes) return refuse(request, response, 404);
    const type = TYPES[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
    const takesGzip = /\bgzip\b/.test(String(request.headers['accept-encoding'] ?? ''));
    const small = takesGzip && !type.startsWith('image/png');
    const body = small ? gzip(name, bytes) : bytes;
    response.writeHead(200, {
      ...HEADERS,
      'Content-Security-Policy': policy,
      'Content-Type': type,
      'Content-Length': body.length,
      Vary: 'Accept-Encoding',
      ...(small ? { 'Content-Encoding': 'gzip' } : {}),
    });
    response.end(method === 'HEAD' ? undefined : body);
  };
}

/** The policy stands in the page itself, for web hosts of any kind; `frame-ancestors` works as a header only. */
function policyOf(site: Site): string {
  const page = site.get('index.html')?.toString('utf8') ?? '';
  const inPage = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1];
  return `${inPage ?? "default-src 'none'"}; frame-ancestors 'none'`;
}

function hasBody({ headers }: IncomingMessage): boolean {
  return headers['transfer-encoding'] !== undefined || Number(headers['content-length'] ?? 0) > 0;
}

function refuse(request: IncomingMessage, response: ServerResponse, status: number): void {
  // What is still on its way is not read.
  response.writeHead(status, { ...HEADERS, 'Content-Type': 'text/plain', Connection: 'close' });
  response.end(`${status}\n`, () => {
    if (hasBody(request)) request.destroy();
  });
}

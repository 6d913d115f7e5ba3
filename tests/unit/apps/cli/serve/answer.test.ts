import { request, type Server } from 'node:http';
import { connect } from 'node:net';
import { gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startServer } from '../../../../../src/apps/cli/serve/server.js';

const PAGE = '<meta http-equiv="Content-Security-Policy" content="default-src \'none\'">';
const SITE = new Map([
  ['index.html', Buffer.from(PAGE)],
  ['main.js', Buffer.from('let a = 1;')],
]);

let server: Server;
let port = 0;

beforeAll(async () => {
  const place = { address: '127.0.0.1', port: 0, open: false };
  ({ server, port } = await startServer(SITE, place, null));
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
});

interface Answer {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: Buffer;
}

function ask(path: string, options: { method?: string; headers?: object; body?: string } = {}) {
  const { body = '', ...rest } = options;
  return new Promise<Answer>((resolve, reject) => {
    const sent = request({ host: '127.0.0.1', port, path, ...rest } as never, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part: Buffer) => parts.push(part));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(parts),
        }),
      );
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

/** Bytes as they are, since clients tidy a path before they send it. */
function raw(text: string): Promise<string> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => socket.write(text));
    let seen = '';
    socket.on('data', (part) => {
      seen += part.toString('latin1');
    });
    socket.on('close', () => resolve(seen));
    socket.on('error', () => resolve(seen));
    socket.setTimeout(3000, () => socket.destroy());
  });
}

describe('the server of the page', () => {
  it('answers with the files of the site, packed where that is taken', async () => {
    expect((await ask('/')).body.toString()).toBe(PAGE);
    const packed = await ask('/main.js?v=1', { headers: { 'accept-encoding': 'gzip' } });
    expect(gunzipSync(packed.body).toString()).toBe('let a = 1;');
    expect(packed.headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect((await ask('/', { method: 'HEAD' })).body.length).toBe(0);
  });

  // Rejects a server that sends a page without its policy, or lets others frame it.
  it('sends the policy of the page and forbids framing and guessing of types', async () => {
    const { headers } = await ask('/');
    expect(headers['content-security-policy']).toBe("default-src 'none'; frame-ancestors 'none'");
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['referrer-policy']).toBe('no-referrer');
  });

  // Rejects a server that makes paths of addresses.
  it.each([
    '/../package.json',
    '/..%2f..%2fpackage.json',
    '/%2e%2e/package.json',
    '/./../../etc/passwd',
    '//etc/passwd',
    '/models/../../package.json',
    '/..\\..\\package.json',
    '/__proto__',
    '/constructor',
  ])('has no file %s', async (path) => {
    const answer = await raw(
      `GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`,
    );
    expect(answer).toMatch(/^HTTP\/1\.1 404 /);
  });

  it('refuses what is too long, what brings a body, and other methods', async () => {
    expect((await ask(`/${'a'.repeat(2000)}`)).status).toBe(414);
    const body = await raw(
      'GET / HTTP/1.1\r\nHost: localhost\r\nContent-Length: 9999999999\r\n\r\n',
    );
    expect(body).toMatch(/^HTTP\/1\.1 413 /);
    const chunked = await raw(
      'GET / HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\n',
    );
    expect(chunked).toMatch(/^HTTP\/1\.1 413 /);
    const huge = `GET / HTTP/1.1\r\nHost: localhost\r\nX: ${'a'.repeat(40_000)}\r\n\r\n`;
    expect(await raw(huge)).toMatch(/^HTTP\/1\.1 431 /);
    for (const method of ['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])
      expect((await ask('/', { method })).status).toBe(405);
  });

  // Rejects a server that answers to a name of somebody else's that was pointed at this machine.
  it.each(['127.0.0.1', '127.0.0.1:4590', 'localhost', 'LOCALHOST:80'])(
    'answers %s',
    async (host) => {
      expect((await ask('/', { headers: { host } })).status).toBe(200);
    },
  );

  it.each([
    'example.org',
    'localhost.example.org',
    '127.0.0.1.example.org:4590',
    '127.0.0.2',
    '192.0.2.7',
    'a@localhost',
    'localhost:80:80',
    '[::1]',
  ])('does not answer as %s', async (host) => {
    expect((await ask('/', { headers: { host } })).status).toBe(421);
  });

  it('does not answer where no host is named', async () => {
    expect(await raw('GET / HTTP/1.0\r\n\r\n')).toMatch(/^HTTP\/1\.1 421 /);
  });

  // Rejects a server whose connections can be used up by opening them and saying nothing.
  it('answers while 300 silent connections are open, and lets those go', async () => {
    const silent = Array.from({ length: 300 }, () => connect(port, '127.0.0.1'));
    for (const one of silent) one.on('error', () => {}).resume();
    await Promise.all(silent.map((one) => new Promise((open) => one.once('connect', open))));
    const begun = Date.now();
    expect((await ask('/')).status).toBe(200);
    expect(Date.now() - begun).toBeLessThan(2000);
    await expect.poll(() => silent.every((one) => one.destroyed), { timeout: 9000 }).toBe(true);
  }, 15_000);

  it('says which port is taken', async () => {
    const place = { address: '127.0.0.1', port, open: false };
    await expect(startServer(SITE, place, null)).rejects.toMatchObject({ code: 'port-taken' });
    const far = { address: '192.0.2.1', port: 0, open: true };
    await expect(startServer(SITE, far, null)).rejects.toMatchObject({ code: 'address-not-here' });
  });
});

import { createServer as createPlain, type Server } from 'node:http';
import { createServer as createSecure } from 'node:https';
import type { AddressInfo } from 'node:net';
import { ArcError } from '../../../core/index.js';
import type { Place } from './address.js';
import { siteAnswer } from './answer.js';
import type { Certificate } from './certificate.js';
import { limitConnections } from './connections.js';
import type { Site } from './site.js';

/** A request line with its headers is never longer than this, bytes. */
const LONGEST_HEAD = 16_384;
const MOST_CONNECTIONS = 200;
/** A page is asked for at once; who stays silent that long is let go, ms. */
const SILENT_MS = 5_000;

/**
 * Offers a site, by HTTPS where a certificate is given. Answers with the server and the port it has.
 * @throws ArcError `port-taken`, `address-not-here`, `port-not-allowed`
 */
export async function startServer(
  site: Site,
  place: Place,
  certificate: Certificate | null,
): Promise<{ server: Server; port: number }> {
  const limits = {
    maxHeaderSize: LONGEST_HEAD,
    requestTimeout: 30_000,
    headersTimeout: SILENT_MS,
    keepAliveTimeout: SILENT_MS,
    connectionsCheckingInterval: 1_000,
  };
  const answer = siteAnswer(site);
  const server = certificate
    ? createSecure(
        { ...limits, handshakeTimeout: SILENT_MS, cert: certificate.cert, key: certificate.key },
        answer,
      )
    : createPlain(limits, answer);
  limitConnections(server, MOST_CONNECTIONS);
  await new Promise<void>((resolve, reject) => {
    server.once('error', (error) => reject(listenError(place, error)));
    server.listen(place.port, place.address, resolve);
  });
  return { server, port: (server.address() as AddressInfo).port };
}

function listenError({ address, port }: Place, error: NodeJS.ErrnoException): Error {
  const where = `${address}:${port}`;
  const known: Record<string, [code: string, what: string, todo: string]> = {
    EADDRINUSE: ['port-taken', `${where} is in use.`, 'Choose another --port, or 0 for any.'],
    EADDRNOTAVAIL: [
      'address-not-here',
      `${address} is no address of this machine.`,
      'Leave --address out, or take 0.0.0.0.',
    ],
    EACCES: ['port-not-allowed', `${where} may not be used by you.`, 'Choose a --port above 1023.'],
  };
  const found = known[error.code ?? ''];
  if (!found) return error;
  const [code, what, todo] = found;
  return new ArcError({ code, what, expected: 'an address and port to listen on', todo });
}

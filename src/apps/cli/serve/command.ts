import type { Server } from 'node:http';
import { renderUnicodeCompact } from 'uqr';
import { setupLink } from '../../../setup/index.js';
import { readProcedureFile } from '../../terminal/flags/procedure-file.js';
import { reachable, readPlace, urlOf } from './address.js';
import { type Certificate, ownCertificate } from './certificate.js';
import { startServer } from './server.js';
import { loadSite } from './site.js';

type Options = Readonly<Record<string, unknown>>;

/**
 * Serves the browser page until it is stopped (Ctrl+C). Beyond this machine only where an address was
 * given, and then by HTTPS, without which browsers give no microphone.
 * @throws ArcError for wrong use, or where the address and port can't be had
 */
export async function serveCommand(options: Options): Promise<void> {
  const place = readPlace(options);
  const link = await linkOf(options);
  const site = await loadSite();
  const addresses = place.open ? reachable(place.address) : [];
  const certificate = place.open ? await ownCertificate(addresses) : null;
  const { server, port } = await startServer(site, place, certificate);
  const scheme = certificate ? 'https' : 'http';
  const shown = addresses.length > 0 ? addresses : [place.address];
  const urls = shown.map((one) => `${urlOf(scheme, one, port)}${link}`);
  // The address is the data of this command; everything else is words.
  process.stdout.write(`${urls.join('\n')}\n`);
  process.stderr.write(certificate ? openWords(urls, certificate) : HERE_ONLY);
  stopOnSignal(server);
}

/** What a procedure fixes travels behind the `#` of the address, so that pages kept for use offline take it too. */
async function linkOf(options: Options): Promise<string> {
  const procedure = await readProcedureFile(options);
  if (!procedure) return '';
  const { fillSetup } = await import('../../../procedure/index.js');
  return setupLink(fillSetup(procedure, {}));
}

const HERE_ONLY = `The page is open to this machine only. For a phone in the same network: --address 0.0.0.0
Stop with Ctrl+C.
`;

function openWords(urls: readonly string[], { fingerprint, file, made }: Certificate): string {
  const url = urls[0] ?? '';
  const code = url === '' ? '' : `${renderUnicodeCompact(url)}\n`;
  return `${code}Anyone in this network can open the page; what they record stays on their own device.
${made ? 'A certificate was made for this machine' : 'The certificate of this machine is used'}: ${file}
Its SHA-256 fingerprint: ${fingerprint}
The browser will warn, since nobody else vouches for that certificate. Compare the fingerprint it shows
(under "details" or "certificate") with the one above; go on only if they are the same.
To install the page and use it without a network, the phone must trust the certificate: copy the file
above to it and install it there as a CA certificate, or put the page on a web host (arc-transfer page).
Stop with Ctrl+C.
`;
}

function stopOnSignal(server: Server): void {
  const stop = (): void => {
    server.close();
    server.closeAllConnections();
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
}

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

const HERE_ONLY = `Open to this machine only. For phones: put the page on a web host (arc-transfer page --out page/),
or offer it in this network with --address 0.0.0.0.
Stop with Ctrl+C.
`;

function openWords(urls: readonly string[], { fingerprint, file }: Certificate): string {
  const url = urls[0] ?? '';
  const code = url === '' ? '' : `${renderUnicodeCompact(url)}\n`;
  return `${code}Anyone in this network can open the page. Recordings stay on the device that made them.
The browser warns, as nobody else vouches for this machine. Go on only if the certificate it shows has the
SHA-256 fingerprint ${fingerprint}
Without a warning, and to install the page: put it on a web host (arc-transfer page --out page/), or install
${file} on the phone. It can vouch for these addresses alone.
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

import type { IncomingMessage } from 'node:http';

/**
 * True where a request names this machine by `localhost` or by the address it came in at. Any other name
 * belongs to a site that a browser was led here from, which would then share this page's store of runs.
 */
export function namesThisMachine({ headers, socket }: IncomingMessage): boolean {
  const host = hostOf(headers.host ?? '');
  return host === 'localhost' || (host !== '' && host === plain(socket.localAddress ?? ''));
}

/** Host without port and brackets, as browsers write it; empty where it is none. */
function hostOf(given: string): string {
  const match = /^(?:\[([0-9a-f:.]+)\]|([^:/@\s[\]]+))(?::\d{1,5})?$/i.exec(given);
  return plain((match?.[1] ?? match?.[2] ?? '').toLowerCase());
}

/** An IPv4 address that reached a socket of IPv6, as IPv4; no zone. */
function plain(address: string): string {
  return address.replace(/^::ffff:(?=\d+\.)/i, '').replace(/%.*$/, '');
}

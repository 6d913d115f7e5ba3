import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';
import { ArcError } from '../../../core/index.js';

/** Where the page is offered. `open` is true where other machines may reach it. */
export interface Place {
  address: string;
  port: number;
  open: boolean;
}

export const DEFAULT_ADDRESS = '127.0.0.1';
/** Free choice; 0 takes any port that is free. */
export const DEFAULT_PORT = 4590;

/** @throws ArcError `bad-address`, `bad-port` */
export function readPlace(options: Readonly<Record<string, unknown>>): Place {
  const given = String(options['address'] ?? DEFAULT_ADDRESS);
  const address = given === 'localhost' ? DEFAULT_ADDRESS : given;
  if (isIP(address) === 0)
    throw new ArcError({
      code: 'bad-address',
      what: `--address was given "${given}".`,
      expected: 'an address of this machine, or 0.0.0.0 for all of them',
      todo: `Leave it out for ${DEFAULT_ADDRESS}, which no other machine reaches.`,
    });
  const port = Number(options['port'] ?? DEFAULT_PORT);
  if (!Number.isInteger(port) || port < 0 || port > 65_535)
    throw new ArcError({
      code: 'bad-port',
      what: `--port was given "${String(options['port'])}".`,
      expected: 'a whole number from 0 (any free port) to 65535',
      todo: `Leave it out for ${DEFAULT_PORT}.`,
    });
  return { address, port, open: !isLoopback(address) };
}

/** Reached by this machine only. */
export function isLoopback(address: string): boolean {
  return address === '::1' || /^127\./.test(address) || /^::ffff:127\./i.test(address);
}

/** The addresses under which other machines can reach this one; for a single address that one. */
export function reachable(address: string): string[] {
  if (address !== '0.0.0.0' && address !== '::') return [address];
  return Object.values(networkInterfaces())
    .flatMap((all) => all ?? [])
    .filter((one) => !one.internal && one.family === 'IPv4')
    .map((one) => one.address);
}

/** `https://192.0.2.7:4590/`; an IPv6 address stands in brackets. */
export function urlOf(scheme: 'http' | 'https', address: string, port: number): string {
  return `${scheme}://${isIP(address) === 6 ? `[${address}]` : address}:${port}/`;
}

import { describe, expect, it } from 'vitest';
import {
  isLoopback,
  reachable,
  readPlace,
  urlOf,
} from '../../../../../src/apps/cli/serve/address.js';

describe('where the page is offered', () => {
  // Rejects a default that other machines can reach.
  it('is this machine only, unless told otherwise', () => {
    expect(readPlace({})).toMatchObject({ address: '127.0.0.1', open: false });
    expect(readPlace({ address: 'localhost' })).toMatchObject({ open: false });
    expect(readPlace({ address: '::1' })).toMatchObject({ open: false });
    expect(readPlace({ address: '0.0.0.0' })).toMatchObject({ open: true });
    expect(readPlace({ address: '192.0.2.7', port: '0' })).toEqual({
      address: '192.0.2.7',
      port: 0,
      open: true,
    });
  });

  it('takes no names, no ports out of range, no words', () => {
    for (const address of ['example.org', '', '1.2.3', '127.0.0.1/8'])
      expect(() => readPlace({ address })).toThrow(
        expect.objectContaining({ code: 'bad-address' }),
      );
    for (const port of ['-1', '65536', '80.5', 'http'])
      expect(() => readPlace({ port })).toThrow(expect.objectContaining({ code: 'bad-port' }));
  });

  it('knows loopback by its whole range (RFC 1122, 3.2.1.3; RFC 4291, 2.5.3)', () => {
    for (const one of ['127.0.0.1', '127.255.0.9', '::1', '::ffff:127.0.0.1'])
      expect(isLoopback(one)).toBe(true);
    for (const one of ['128.0.0.1', '0.0.0.0', '::', '10.0.0.1'])
      expect(isLoopback(one)).toBe(false);
  });

  it('writes addresses as URLs, IPv6 in brackets (RFC 3986, 3.2.2)', () => {
    expect(urlOf('https', '192.0.2.7', 4590)).toBe('https://192.0.2.7:4590/');
    expect(urlOf('http', '::1', 80)).toBe('http://[::1]:80/');
    expect(reachable('192.0.2.7')).toEqual(['192.0.2.7']);
    expect(reachable('0.0.0.0')).not.toContain('127.0.0.1');
  });
});

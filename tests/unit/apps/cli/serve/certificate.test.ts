import { X509Certificate } from 'node:crypto';
import { statSync } from 'node:fs';
import { join } from 'node:path';
import { connect } from 'node:tls';
import { describe, expect, it } from 'vitest';
import { ownCertificate } from '../../../../../src/apps/cli/serve/certificate.js';
import { startServer } from '../../../../../src/apps/cli/serve/server.js';
import { scratch } from '../../../../support/scratch.js';

describe('the certificate of this machine', () => {
  // Rejects a certificate made anew at each start (the phone would have to trust it again), and one kept
  // although it does not name the address.
  it('is made once, kept for the same addresses, made anew for others', async () => {
    const folder = join(scratch(), 'certificate');
    const first = await ownCertificate(['192.0.2.7'], folder);
    expect(first.made).toBe(true);
    const second = await ownCertificate(['192.0.2.7'], folder);
    expect(second.made).toBe(false);
    expect(second.fingerprint).toBe(first.fingerprint);
    const third = await ownCertificate(['192.0.2.8'], folder);
    expect(third.made).toBe(true);
    expect(new X509Certificate(third.cert).checkIP('192.0.2.8')).toBe('192.0.2.8');
  });

  it('keeps its key from others', async () => {
    const folder = join(scratch(), 'certificate');
    await ownCertificate(['192.0.2.7'], folder);
    if (process.platform !== 'win32')
      expect(statSync(join(folder, 'serve-key.pem')).mode & 0o077).toBe(0);
  });

  it('holds for TLS by one who trusts it, and for nobody else', async () => {
    const folder = join(scratch(), 'certificate');
    const certificate = await ownCertificate(['127.0.0.1'], folder);
    const site = new Map([['index.html', Buffer.from('page')]]);
    const place = { address: '127.0.0.1', port: 0, open: false };
    const { server, port } = await startServer(site, place, certificate);
    const meet = (ca?: string): Promise<string> =>
      new Promise((resolve) => {
        const options = { port, host: '127.0.0.1', ...(ca ? { ca } : {}) };
        const socket = connect(options, () => {
          resolve('trusted');
          socket.destroy();
        });
        socket.on('error', (error: NodeJS.ErrnoException) => resolve(String(error.code)));
      });
    expect(await meet(certificate.cert)).toBe('trusted');
    expect(await meet()).toMatch(/SELF_SIGNED|UNABLE_TO_VERIFY/);
    server.close();
  });
});

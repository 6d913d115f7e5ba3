import { execFileSync } from 'node:child_process';
import { createPrivateKey, X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { connect as connectPlain } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect } from 'node:tls';
import { afterAll, describe, expect, it } from 'vitest';
import { ownCertificate } from '../../../../../src/apps/cli/serve/certificate.js';
import { permittedOnly } from '../../../../../src/apps/cli/serve/name-constraints.js';
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
    expect(await meet(certificate.authority)).toBe('trusted');
    // Opened and silent, before any handshake: more than the server holds at a time.
    const silent = Array.from({ length: 250 }, () => connectPlain(port, '127.0.0.1'));
    for (const one of silent) one.on('error', () => {});
    await Promise.all(silent.map((one) => new Promise((open) => one.once('connect', open))));
    expect(await meet(certificate.authority)).toBe('trusted');
    for (const one of silent) one.destroy();
    expect(await meet()).toMatch(/SELF_SIGNED|UNABLE_TO_VERIFY/);
    server.close();
  });

  // Rejects an authority whose key lies about, and a certificate that could itself sign for other names.
  it('can sign nothing, and the key of what vouches for it is nowhere', async () => {
    const folder = join(scratch(), 'certificate');
    const { cert, key, authority, file } = await ownCertificate(['192.0.2.7'], folder);
    expect(new X509Certificate(cert).ca).toBe(false);
    expect(new X509Certificate(authority).ca).toBe(true);
    expect(readFileSync(file, 'utf8')).toBe(authority);
    const owner = new X509Certificate(cert).publicKey.export({ type: 'spki', format: 'pem' });
    const vouching = new X509Certificate(authority).publicKey.export({
      type: 'spki',
      format: 'pem',
    });
    expect(vouching).not.toBe(owner);
    expect(key).toContain('PRIVATE KEY');
    expect(new X509Certificate(authority).checkPrivateKey(createPrivateKey(key))).toBe(false);
  });

  // An earlier kind was an authority with its key beside it.
  it('replaces one that could sign', async () => {
    const folder = join(scratch(), 'certificate');
    const first = await ownCertificate(['192.0.2.7'], folder);
    writeFileSync(join(folder, 'serve-certificate.pem'), first.authority);
    expect((await ownCertificate(['192.0.2.7'], folder)).made).toBe(true);
  });
});

/** A chain below an authority with these constraints, for whatever name, judged by OpenSSL. */
describe('the limits of the authority (RFC 5280, 4.2.1.10), as OpenSSL reads them', () => {
  const folder = mkdtempSync(join(tmpdir(), 'arc-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const openssl = (...words: string[]): string =>
    execFileSync('openssl', words, { cwd: folder, encoding: 'utf8', stdio: 'pipe' });

  /** Signs a certificate for `name` by an authority of the test that carries our extension. */
  const judged = (name: string, permitted: Uint8Array): string => {
    const value = Buffer.from(permitted).toString('hex').replace(/../g, '$&:').slice(0, -1);
    writeFileSync(
      join(folder, 'ca.cnf'),
      `[req]\ndistinguished_name=d\nx509_extensions=e\nprompt=no\n[d]\nCN=a\n[e]\nbasicConstraints=critical,CA:TRUE\n2.5.29.30=critical,DER:${value}\n`,
    );
    const made = ['-newkey', 'ec', '-pkeyopt', 'ec_paramgen_curve:P-256', '-nodes'];
    openssl('req', '-x509', ...made, '-keyout', 'ca.key', '-out', 'ca.pem', '-config', 'ca.cnf');
    writeFileSync(join(folder, 'leaf.cnf'), `subjectAltName=${name}\n`);
    openssl('req', ...made, '-keyout', 'leaf.key', '-out', 'leaf.csr', '-subj', '/O=b');
    const by = ['-CA', 'ca.pem', '-CAkey', 'ca.key', '-CAcreateserial', '-extfile', 'leaf.cnf'];
    openssl('x509', '-req', '-in', 'leaf.csr', ...by, '-out', 'leaf.pem');
    try {
      return openssl('verify', '-CAfile', 'ca.pem', 'leaf.pem').trim();
    } catch (error) {
      return String((error as { stderr: string }).stderr);
    }
  };

  const ours = permittedOnly(['192.0.2.7', '2001:db8::7'], ['localhost']);

  it.each(['IP:192.0.2.7', 'IP:2001:db8::7', 'DNS:localhost'])('let pass %s', (name) => {
    expect(judged(name, ours)).toBe('leaf.pem: OK');
  });

  it.each(['IP:192.0.2.8', 'IP:2001:db8::8', 'DNS:example.org', 'DNS:bank.example'])(
    'keep out %s',
    (name) => {
      expect(judged(name, ours)).toContain('permitted subtree violation');
    },
  );

  it('stand in the authority that is made, and are critical', async () => {
    const { file } = await ownCertificate(['192.0.2.7'], join(scratch(), 'certificate'));
    const text = openssl('x509', '-in', file, '-noout', '-text');
    expect(text).toMatch(
      /Name Constraints: critical\s+Permitted:\s+DNS:localhost\s+IP:192\.0\.2\.7\/255\.255\.255\.255/,
    );
    expect(text).toMatch(/CA:TRUE, pathlen:0/);
  });
});

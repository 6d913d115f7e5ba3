import { webcrypto } from 'node:crypto';
import { NAME_CONSTRAINTS, permittedOnly } from './name-constraints.js';

const DAYS = 365;
/** Clocks of phones run late. */
const BEFORE_MS = 3_600_000;
const KEYS = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' };
const HOST = 'localhost';

/** What the server shows, with its key, and the authority behind it, which a device may trust. PEM. */
export interface MadeCertificate {
  cert: string;
  key: string;
  authority: string;
}

/**
 * A certificate for these addresses and `localhost`, and an authority that may vouch for them and for
 * nothing else (name constraints, marked critical). The key of the authority is not kept: it signs this
 * one certificate.
 */
export async function makeCertificate(addresses: readonly string[]): Promise<MadeCertificate> {
  const x509 = await import('@peculiar/x509');
  // Its types are those of browsers.
  x509.cryptoProvider.set(webcrypto as never);
  const { subtle } = webcrypto;
  const { KeyUsageFlags: use } = x509;
  const authorityKeys = await subtle.generateKey(KEYS, true, ['sign', 'verify']);
  const ownKeys = await subtle.generateKey(KEYS, true, ['sign', 'verify']);
  const now = Date.now();
  const dates = {
    notBefore: new Date(now - BEFORE_MS),
    notAfter: new Date(now + DAYS * 86_400_000),
  };
  const authority = await x509.X509CertificateGenerator.createSelfSigned({
    ...dates,
    name: 'CN=arc-transfer on this machine',
    signingAlgorithm: KEYS,
    keys: authorityKeys,
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(use.keyCertSign, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.Extension(NAME_CONSTRAINTS, true, permittedOnly(addresses, [HOST])),
      await x509.SubjectKeyIdentifierExtension.create(authorityKeys.publicKey),
    ],
  });
  const own = await x509.X509CertificateGenerator.create({
    ...dates,
    subject: 'CN=arc-transfer serve',
    issuer: authority.subject,
    signingAlgorithm: KEYS,
    publicKey: ownKeys.publicKey,
    signingKey: authorityKeys.privateKey,
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(use.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension([
        { type: 'dns', value: HOST },
        ...addresses.map((value) => ({ type: 'ip' as const, value })),
      ]),
      await x509.AuthorityKeyIdentifierExtension.create(authorityKeys.publicKey),
    ],
  });
  const key = await subtle.exportKey('pkcs8', ownKeys.privateKey);
  return {
    cert: `${own.toString('pem')}\n`,
    key: `${x509.PemConverter.encode(key, 'PRIVATE KEY')}\n`,
    authority: `${authority.toString('pem')}\n`,
  };
}

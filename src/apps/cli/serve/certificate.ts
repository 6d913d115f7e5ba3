import { X509Certificate } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';

/** A certificate with its key, as PEM texts. */
export interface Certificate {
  cert: string;
  key: string;
  /** SHA-256 of the certificate, to be compared with what a browser shows. */
  fingerprint: string;
  /** Where the certificate lies, for installing it on a phone. */
  file: string;
  made: boolean;
}

const DAYS = 365;

/**
 * The certificate of this machine for the given addresses: the one of an earlier start while it still
 * holds for all of them, else a new one. The key is readable by its owner only and never leaves the folder.
 */
export async function ownCertificate(
  addresses: readonly string[],
  folder = defaultFolder(),
): Promise<Certificate> {
  const file = join(folder, 'serve-certificate.pem');
  const keyFile = join(folder, 'serve-key.pem');
  const kept = await read(file, keyFile);
  if (kept && holds(kept.cert, addresses)) return { ...describe(kept), file, made: false };
  const made = await make(addresses);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  await writeFile(keyFile, made.key, { mode: 0o600 });
  await writeFile(file, made.cert);
  return { ...describe(made), file, made: true };
}

/** `$XDG_CONFIG_HOME/arc-transfer`, else `~/.config/arc-transfer`. */
function defaultFolder(): string {
  const base = process.env['XDG_CONFIG_HOME'] || join(homedir(), '.config');
  return join(base, 'arc-transfer');
}

async function read(file: string, keyFile: string) {
  try {
    return { cert: await readFile(file, 'utf8'), key: await readFile(keyFile, 'utf8') };
  } catch {
    return null;
  }
}

/** True while it has a day left and names every address. */
function holds(pem: string, addresses: readonly string[]): boolean {
  try {
    const cert = new X509Certificate(pem);
    const left = new Date(cert.validTo).getTime() - Date.now();
    return left > 86_400_000 && addresses.every((one) => cert.checkIP(one) !== undefined);
  } catch {
    return false;
  }
}

async function make(addresses: readonly string[]): Promise<{ cert: string; key: string }> {
  const { generate } = await import('selfsigned');
  const now = new Date();
  const pems = await generate([{ name: 'commonName', value: 'arc-transfer on this machine' }], {
    keyType: 'ec',
    curve: 'P-256',
    algorithm: 'sha256',
    notBeforeDate: now,
    notAfterDate: new Date(now.getTime() + DAYS * 86_400_000),
    extensions: [
      // Phones take it into their store of trusted ones only as an authority.
      { name: 'basicConstraints', cA: true, critical: true },
      { name: 'keyUsage', digitalSignature: true, keyCertSign: true, critical: true },
      { name: 'extKeyUsage', serverAuth: true },
      {
        name: 'subjectAltName',
        altNames: [
          { type: 2, value: 'localhost' },
          ...addresses.map((ip) => ({ type: 7 as const, ip })),
        ],
      },
    ],
  });
  return { cert: pems.cert, key: pems.private };
}

function describe({ cert, key }: { cert: string; key: string }) {
  return { cert, key, fingerprint: new X509Certificate(cert).fingerprint256 };
}

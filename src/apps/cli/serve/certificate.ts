import { X509Certificate } from 'node:crypto';
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { type MadeCertificate, makeCertificate } from './make-certificate.js';

/** A certificate with its key, as PEM texts. */
export interface Certificate {
  /** The certificate of the server, then its authority. */
  cert: string;
  key: string;
  /** SHA-256 of the certificate of the server, to be compared with what a browser shows. */
  fingerprint: string;
  /** The authority alone, for installing it on a phone. */
  file: string;
  authority: string;
  made: boolean;
}

/**
 * The certificate of this machine for the given addresses: the one of an earlier start while it still
 * holds for all of them, else a new one. The key is readable by its owner only and never leaves the folder.
 */
export async function ownCertificate(
  addresses: readonly string[],
  folder = defaultFolder(),
): Promise<Certificate> {
  const files = {
    cert: join(folder, 'serve-certificate.pem'),
    key: join(folder, 'serve-key.pem'),
    authority: join(folder, 'serve-authority.pem'),
  };
  const kept = await read(files);
  if (kept && holds(kept, addresses)) return describe(kept, files.authority, false);
  const made = await makeCertificate(addresses);
  await mkdir(folder, { recursive: true, mode: 0o700 });
  await writeFile(files.key, made.key, { mode: 0o600 });
  await writeFile(files.cert, made.cert);
  await writeFile(files.authority, made.authority);
  return describe(made, files.authority, true);
}

/** `$XDG_CONFIG_HOME/arc-transfer`, else `~/.config/arc-transfer`. */
function defaultFolder(): string {
  const base = process.env['XDG_CONFIG_HOME'] || join(homedir(), '.config');
  return join(base, 'arc-transfer');
}

async function read(files: Record<keyof MadeCertificate, string>): Promise<MadeCertificate | null> {
  try {
    const [cert, key, authority] = await Promise.all(
      [files.cert, files.key, files.authority].map((one) => readFile(one, 'utf8')),
    );
    return { cert: cert!, key: key!, authority: authority! };
  } catch {
    return null;
  }
}

/** True while it has a day left, names every address, and is one that can sign nothing itself. */
function holds(made: MadeCertificate, addresses: readonly string[]): boolean {
  try {
    const cert = new X509Certificate(made.cert);
    const authority = new X509Certificate(made.authority);
    const left = new Date(cert.validTo).getTime() - Date.now();
    return (
      left > 86_400_000 &&
      !cert.ca &&
      cert.verify(authority.publicKey) &&
      addresses.every((one) => cert.checkIP(one) !== undefined)
    );
  } catch {
    return false;
  }
}

function describe(
  { cert, key, authority }: MadeCertificate,
  file: string,
  made: boolean,
): Certificate {
  const { fingerprint256: fingerprint } = new X509Certificate(cert);
  return { cert: cert + authority, key, authority, fingerprint, file, made };
}

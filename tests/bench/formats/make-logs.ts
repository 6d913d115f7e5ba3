import { execFileSync, spawnSync } from 'node:child_process';
import { closeSync, openSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';

export const LOG_RATE_HZ = 20_000;
const PYTHON = '/usr/bin/python3';

/** Voltage and current of sample `i`: made by formula, with all 53 bits in use. */
export const VOLTAGE = (i: number): number => 20 + ((i * 7919) % 10_007) / 512 / 10;
export const CURRENT = (i: number): number => 150 + ((i * 104_729) % 10_009) / 3;
const TIME = (i: number): number => i / LOG_RATE_HZ;
const COLUMNS = { time: TIME, voltage: VOLTAGE, current: CURRENT };

/** Makes the log of that name; false where the program that writes it is missing. */
export async function makeLog(folder: string, file: string, rows: number): Promise<boolean> {
  const path = join(folder, file);
  if (file.endsWith('.csv')) writeCsv(path, rows, file.startsWith('short'));
  else if (file === 'trace.f64') writeFileSync(path, interleaved(rows, [VOLTAGE, CURRENT]));
  else if (file === 'trace.parquet') await writeParquet(path, rows);
  else if (file === 'trace.h5' || file === 'v73.mat') await writeHdf5(path, rows);
  else return writeByPython(folder, path, rows);
  return true;
}

function writeCsv(path: string, rows: number, short: boolean): void {
  const show = short ? (value: number) => value.toFixed(4) : String;
  const out = openSync(path, 'w');
  writeSync(out, 'time_s,voltage_V,current_A\n');
  for (let from = 0; from < rows; from += 10_000) {
    let text = '';
    for (let i = from; i < Math.min(rows, from + 10_000); i++)
      text += `${short ? TIME(i).toFixed(5) : TIME(i)},${show(VOLTAGE(i))},${show(CURRENT(i))}\n`;
    writeSync(out, text);
  }
  closeSync(out);
}

function interleaved(rows: number, columns: ((i: number) => number)[]): Uint8Array {
  const out = new Float64Array(rows * columns.length);
  for (let i = 0; i < rows; i++)
    for (const [c, column] of columns.entries()) out[i * columns.length + c] = column(i);
  return new Uint8Array(out.buffer);
}

const whole = (rows: number, column: (i: number) => number): Float64Array =>
  Float64Array.from({ length: rows }, (_, i) => column(i));

async function writeParquet(path: string, rows: number): Promise<void> {
  const { parquetWriteBuffer } = await import('hyparquet-writer');
  const columnData = Object.entries(COLUMNS).map(([name, column]) => ({
    name,
    data: whole(rows, column),
    type: 'DOUBLE' as const,
  }));
  writeFileSync(path, new Uint8Array(parquetWriteBuffer({ columnData, rowGroupSize: 100_000 })));
}

async function writeHdf5(path: string, rows: number): Promise<void> {
  // Loaded here alone: it must not weigh on the processes that only read.
  const { File: HdfFile, ready } = await import('h5wasm');
  const { FS } = (await ready) as unknown as { FS: { readFile(path: string): Uint8Array } };
  const matlab = path.endsWith('.mat');
  const file = new HdfFile('/made.h5', 'w');
  for (const [name, column] of Object.entries(COLUMNS)) {
    const shape = matlab ? [1, rows] : [rows];
    const chunks = matlab ? [1, 10_000] : [10_000];
    file.create_dataset({ name, data: whole(rows, column), shape, chunks, compression: 'gzip' });
  }
  file.close();
  const body = FS.readFile('/made.h5');
  const preamble = new Uint8Array(matlab ? 512 : 0);
  if (matlab) preamble.set(new TextEncoder().encode('MATLAB 7.3 MAT-file, Platform: invented'));
  writeFileSync(path, Buffer.concat([preamble, body]));
}

const SCRIPT = `
import sys, numpy as np
source, path = sys.argv[1:]
t, u, i = np.fromfile(source).reshape(-1, 3).T
if path.endswith('.npy'): np.save(path, np.column_stack([t, u, i]))
elif path.endswith('.npz'): np.savez_compressed(path, t=t, voltage=u, current=i)
else:
    from scipy.io import savemat
    savemat(path, {'t': t, 'voltage': u, 'current': i}, do_compression=True)
`;

function writeByPython(folder: string, path: string, rows: number): boolean {
  if (spawnSync(PYTHON, ['-c', 'import numpy, scipy.io']).status !== 0) return false;
  const source = join(folder, 'three.f64');
  writeFileSync(source, interleaved(rows, Object.values(COLUMNS)));
  execFileSync(PYTHON, ['-c', SCRIPT, source, path]);
  return true;
}

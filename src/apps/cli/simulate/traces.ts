import type { ArcRun } from '../../../lab/simulate/index.js';
import { writeWav } from '../../../recording/index.js';

/** Volts and amperes at full scale of a trace WAV: what `--scale` must be told when reading it. */
export const TRACE_FULL_SCALE = { voltage: 100, current: 1000 } as const;

/** Time, voltage and current as CSV; digits as fine as the logger's steps need. */
export function tracesCsv(run: ArcRun): string {
  const { voltageV, currentA, electricalRateHz } = run;
  const digits = Math.ceil(Math.log10(electricalRateHz)) + 1;
  const lines = ['time_s,voltage_v,current_a'];
  for (let i = 0; i < voltageV.length; i++) {
    const time = (i / electricalRateHz).toFixed(digits);
    lines.push(`${time},${voltageV[i]!.toFixed(2)},${currentA[i]!.toFixed(1)}`);
  }
  return `${lines.join('\n')}\n`;
}

/** Voltage and current as a two-channel 16-bit WAV. */
export function tracesWav(run: ArcRun): Promise<Uint8Array> {
  const scaled = [
    run.voltageV.map((v) => v / TRACE_FULL_SCALE.voltage),
    run.currentA.map((a) => a / TRACE_FULL_SCALE.current),
  ];
  const held = scaled.map((x) => x.map((v) => Math.max(-1, Math.min(1, v))));
  return writeWav(held, run.electricalRateHz);
}

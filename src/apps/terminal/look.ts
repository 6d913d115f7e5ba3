import pico from 'picocolors';
import { type Look, NO_PAINT, type Paint } from '../view/index.js';

const WIDEST = 100;

/** Width and colours of an output stream: plain and 80 wide for files and pipes, and with `NO_COLOR`. */
export function lookOf(stream: NodeJS.WriteStream | undefined): Look {
  if (!stream?.isTTY) return { width: 80, paint: NO_PAINT };
  const width = Math.min(WIDEST, Math.max(40, stream.columns || 80));
  return { width, paint: pico.isColorSupported ? colourful() : NO_PAINT };
}

function colourful(): Paint {
  const c = pico.createColors(true);
  const modes: Record<string, (text: string) => string> = {
    'short-circuit': c.cyan,
    globular: c.yellow,
    spray: c.magenta,
    'pulsed-spray': c.green,
  };
  return {
    bold: c.bold,
    dim: c.dim,
    good: c.green,
    warn: c.yellow,
    bad: c.red,
    mode: (mode, text) => modes[mode]?.(text) ?? text,
  };
}

import type { Result } from '../../analysis/result/index.js';

/** A result as one line of JSON (for NDJSON), or indented for a person; ends with a line end. */
export function jsonText(result: Result, layout: 'line' | 'indented' = 'line'): string {
  return `${JSON.stringify(result, null, layout === 'line' ? undefined : 2)}\n`;
}

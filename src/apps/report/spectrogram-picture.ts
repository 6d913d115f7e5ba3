import { encode } from 'fast-png';
import type { Spectrogram } from '../view/evidence/index.js';
import { toBase64 } from './base64.js';

/** The spectrogram as a picture (PNG as a data address): black ink, the more opaque the louder. */
export function spectrogramPicture({ cells, rows }: Spectrogram): string {
  const columns = cells.length / rows;
  const data = new Uint8Array(2 * cells.length);
  for (let column = 0; column < columns; column++)
    for (let row = 0; row < rows; row++) {
      const y = rows - 1 - row;
      data[2 * (y * columns + column) + 1] = cells[column * rows + row]!;
    }
  const png = encode({ width: columns, height: rows, data, channels: 2, depth: 8 });
  return `data:image/png;base64,${toBase64(png)}`;
}

import type { FluctuationSpectrum } from '../../view/evidence/index.js';
import type { PictureWords } from '../../view/index.js';
import { frame } from './frame.js';
import { SHAPE, SHAPE_BOX } from './shape-charts.js';
import { el, picture, short, text } from './svg.js';

const FROM_HZ = 8;
const TO_HZ = 1000;
/** Rates at which mains and rectifiers hum: 50 and 60 Hz, and what six-pulse rectifiers make of them. */
const MAINS_HZ = [50, 60, 100, 120, 150, 180, 300, 360];

/** Where the fluctuation of sound or voltage has its rhythm; both axes logarithmic. */
export function spectrumChart(
  spectrum: FluctuationSpectrum,
  fundamentalHz: number | null,
  id: string,
  words: PictureWords,
  shared?: [number, number],
): string {
  const [low, high] = shared ?? spectrumSpan(spectrum);
  const { svg, x, y } = frame(
    SHAPE_BOX,
    { from: FROM_HZ, to: TO_HZ, log: true, label: words.shape.rhythmAxis },
    { from: low, to: high, log: true, label: words.shape.rhythmPower(words.name(spectrum.unit)) },
    words.numbers,
  );
  const path = bands(spectrum)
    .map(({ hz, power }, k) => {
      const value = Math.min(high, Math.max(low, power));
      return `${k === 0 ? 'M' : 'L'}${short(x(hz))} ${short(y(value))}`;
    })
    .join('');
  const mains = MAINS_HZ.map((hz) =>
    el('line', { class: 'mains', x1: x(hz), x2: x(hz), y1: SHAPE_BOX.top, y2: SHAPE_BOX.bottom }),
  ).join('');
  const found = fundamentalHz ? words.numbers.figure(fundamentalHz) : null;
  return picture(
    SHAPE,
    {
      id,
      title: words.shape.rhythmTitle(spectrum.of),
      description: words.shape.rhythmDescription(found),
    },
    [
      svg,
      mains,
      text(SHAPE_BOX.right, 20, words.shape.mains, { class: 'label', 'text-anchor': 'end' }),
      el('path', { class: 'curve', d: path }),
      fundamentalHz ? marker(fundamentalHz, `${found} Hz`, x) : '',
    ].join(''),
  );
}

/** Smallest and largest power in the span shown, within five decades. */
export function spectrumSpan(spectrum: FluctuationSpectrum): [number, number] {
  const shown = bands(spectrum).map((one) => one.power);
  const high = 2 * shown.reduce((a, b) => Math.max(a, b), 1e-12);
  const low = shown.reduce((a, b) => (b > 0 ? Math.min(a, b) : a), high);
  return [Math.max(high * 1e-5, low / 2), high];
}

/** Mean power in bands of 2 %, which a line of a steady rhythm fills and noise does not ruffle. */
function bands({ power, binHz }: FluctuationSpectrum): { hz: number; power: number }[] {
  const out: { hz: number; power: number }[] = [];
  for (let k = Math.ceil(FROM_HZ / binHz); k < power.length && k * binHz <= TO_HZ; ) {
    const end = Math.min(power.length, Math.max(k + 1, Math.floor(k * 1.02)));
    const sum = power.subarray(k, end).reduce((a, b) => a + b, 0);
    out.push({ hz: ((k + end - 1) / 2) * binHz, power: sum / (end - k) });
    k = end;
  }
  return out;
}

function marker(hz: number, said: string, x: (hz: number) => number): string {
  if (hz < FROM_HZ || hz > TO_HZ) return '';
  const at = x(hz);
  const end = at > SHAPE_BOX.right - 110;
  return (
    el('line', { class: 'fundamental', x1: at, x2: at, y1: SHAPE_BOX.top, y2: SHAPE_BOX.bottom }) +
    el('path', { class: 'fundamental-head', d: `M${short(at - 5)} ${SHAPE_BOX.top}h10l-5 8Z` }) +
    text(at + (end ? -7 : 7), SHAPE_BOX.top + 12, said, {
      class: 'value',
      'text-anchor': end ? 'end' : 'start',
    })
  );
}

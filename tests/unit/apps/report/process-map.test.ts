import { describe, expect, it } from 'vitest';
import { mapChart } from '../../../../src/apps/report/process-map/svg-map.js';
import { ENGLISH, NO_PAINT } from '../../../../src/apps/view/index.js';
import { mapInLetters } from '../../../../src/apps/view/process-map/terminal-map.js';
import { ENGLISH_MAP } from '../../../../src/apps/view/process-map/words.js';
import { parseSetup, processMaps } from '../../../../src/setup/index.js';

const { mapPicture, mapPoint, processMap } = processMaps;
const setup = parseSetup({
  wire: '1.2mm',
  wireMaterial: 'carbon-steel',
  gas: 'Ar+8CO2',
  feederVolts: 23.5,
  measuredCurrent: 300,
});
const wire = {
  material: 'carbon-steel',
  diameterMm: 1.2,
  stickOutMm: null,
  polarity: null,
} as const;
const map = processMap({ material: 'carbon-steel', diameterMm: 1.2, gas: setup.gas });
const draw = (columns: number, rows: number) =>
  mapPicture(map, {
    wire,
    point: mapPoint(setup),
    measured: { voltageV: 24, currentA: 290 },
    wanted: 'spray',
    columns,
    rows,
  });
const METRIC = { unit: 'm/min', factor: 1, digits: 1 };

describe('the map in letters', () => {
  const lines = mapInLetters(draw(22, 15), { width: 80, paint: NO_PAINT }, METRIC, ENGLISH_MAP);

  it('fits the width and needs no colour', () => {
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.join('')).not.toContain('\u001b');
  });

  it('marks the point, the measured place and the wanted region, and says what each means', () => {
    const text = lines.join('\n');
    expect(text).toMatch(/\[.\]/u);
    expect(text).toMatch(/\(.\)/u);
    expect(text).toMatch(/·S·/u);
    for (const said of Object.values(ENGLISH_MAP.marks)) {
      expect(text.replaceAll(/\s+/gu, ' ')).toContain(said);
    }
  });

  it('stubs at the bottom right and burns back at the top left', () => {
    expect(lines.find((line) => line.trim().startsWith('39'))).toMatch(/^\s+39\s+!/u);
    expect(lines.find((line) => line.trim().startsWith('11'))).toMatch(/_$/u);
  });
});

describe('the map as a picture', () => {
  const svg = mapChart(draw(40, 40), 'x', ENGLISH.numbers, METRIC, ENGLISH_MAP);

  it('is one image with a name, whose every opened element is closed', () => {
    const open = [...svg.matchAll(/<([a-zA-Z]+)(?:\s[^>]*[^/])?>/gu)].map((one) => one[1]);
    const closed = [...svg.matchAll(/<\/([a-zA-Z]+)>/gu)].map((one) => one[1]);
    expect(open.sort()).toEqual(closed.sort());
    expect(svg).toContain('role="img"');
    expect(svg).not.toMatch(/NaN|undefined/u);
  });

  it('names every field that is large enough, and draws point, ellipse, measured and wanted', () => {
    for (const name of [
      'short-circuit',
      'globular',
      'spray',
      'stubbing',
      'long arc',
      'burn-back',
    ]) {
      expect(svg).toContain(`>${name}<`);
    }
    for (const part of ['map-ellipse', 'map-measured', 'map-wanted', 'map-guide', 'run-cross']) {
      expect(svg).toContain(part);
    }
    expect(svg).toContain(ENGLISH_MAP.feedAxis('m/min'));
  });
});

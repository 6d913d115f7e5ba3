import { CHART_STYLE, palette } from './chart-style.js';
import { patternDefinitions } from './charts/mode-marks.js';

/** A picture that stands alone, as an SVG file on white paper: carries its own colours and patterns. */
export function figureFile(svg: string): string {
  const size = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  const [width, height] = [size?.[1] ?? '900', size?.[2] ?? '400'];
  const style = `<style>${palette('light')}${CHART_STYLE}.chart{width:auto}</style>`;
  const ground = `<rect width="${width}" height="${height}" fill="#fff"/>`;
  const open = svg.indexOf('>') + 1;
  const head = svg.slice(0, open).replace('<svg ', `<svg width="${width}" height="${height}" `);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${head}${style}${patternDefinitions()}${ground}${svg.slice(open)}\n`;
}

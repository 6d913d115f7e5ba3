/** Colours of light and dark; four hues that colour-blind people tell apart, always beside place, pattern or letter. */
const LIGHT = `
--paper:#faf9f5;--card:#ffffff;--ink:#1c2126;--soft:#555d66;--line:#d9d7cf;--grid:#e8e6df;
--gap:#efede6;--arc:#f4f1e4;--link:#0b5a8a;
--short-circuit:#17639c;--globular:#9a5b00;--spray:#a3246b;--pulsed-spray:#0f7a5c;--none:#6a6f75;
--strip-short-circuit:#0b4f8a;--strip-globular:#844600;--strip-spray:#8f1c5c;--strip-pulsed-spray:#0a5c45;
--strip-not-clear:#54595f;--strip-left-out:#a9a69a;--strip-no-arc:#d9d7cf;--on-strip:#ffffff;--on-pale:#1c2126;
--good:#15603a;--bad:#a01c1c;--doubt:#855400;--volt:#17639c;--amp:#a3246b;--sound:#3a4a56`;
const DARK = `
--paper:#14181c;--card:#1b2025;--ink:#e9e7e1;--soft:#a9b0b7;--line:#3a4148;--grid:#2a3036;
--gap:#20262b;--arc:#23261f;--link:#7cc0ec;
--short-circuit:#6cb4ea;--globular:#e2a548;--spray:#ee86bb;--pulsed-spray:#5fcfa8;--none:#9aa1a8;
--strip-short-circuit:#6cb4ea;--strip-globular:#e2a548;--strip-spray:#ee86bb;--strip-pulsed-spray:#5fcfa8;
--strip-not-clear:#a9b0b7;--strip-left-out:#59616a;--strip-no-arc:#3a4148;--on-strip:#14181c;--on-pale:#e9e7e1;
--good:#6fcf9a;--bad:#ff9488;--doubt:#e6b45c;--volt:#6cb4ea;--amp:#ee86bb;--sound:#b9c6cf`;

/** Custom properties: `light` alone for single figures, which stand on white paper. */
export function palette(kind: 'light' | 'both'): string {
  const light = `:root{color-scheme:light;${LIGHT}}`;
  if (kind === 'light') return light;
  return `${light}@media screen and (prefers-color-scheme:dark){:root{color-scheme:dark;${DARK}}}`;
}

/** How pictures look, in a page and standing alone. */
export const CHART_STYLE = `
.chart{display:block;width:100%;height:auto;font-family:system-ui,-apple-system,"Segoe UI",Roboto,"DejaVu Sans",sans-serif;font-size:11px}
.chart text{fill:var(--ink)}
.chart .tick,.chart .label,.chart .row-name,.chart .lane-name,.chart .zone-name{fill:var(--soft)}
.chart .tick{font-variant-numeric:tabular-nums}
.chart .row-name,.chart .lane-name,.chart .zone-name,.chart .band-letter{paint-order:stroke;stroke:var(--card);stroke-width:3px;stroke-linejoin:round}
.chart .lane-letter,.chart .band-letter,.chart .run-name{font-weight:700}
.chart .lane-letter{font-size:13px}
.chart .value{font-size:12px;paint-order:stroke;stroke:var(--card);stroke-width:3px;stroke-linejoin:round}
.grid{stroke:var(--grid);stroke-width:1}
.axis{stroke:var(--soft);stroke-width:1}
.no-arc{fill:var(--gap)}
.arc-on{fill:var(--arc)}
.plate{fill:var(--card)}
.mode-short-circuit{--hue:var(--short-circuit)}
.mode-globular{--hue:var(--globular)}
.mode-spray{--hue:var(--spray)}
.mode-pulsed-spray{--hue:var(--pulsed-spray)}
.mode-none{--hue:var(--none)}
pattern .ink{fill:var(--hue)}
pattern .ink-line{stroke:var(--hue);stroke-width:1.8;fill:none}
pattern .ground{fill:var(--hue);fill-opacity:.22}
pattern.mode-none .ground{fill-opacity:.08}
pattern.mode-none .ink-line{stroke-width:1;stroke-opacity:.55}
.block{stroke:var(--hue);stroke-width:1.2}
.belief-ground{fill:none;stroke:var(--card);stroke-width:3}
.belief{fill:none;stroke:var(--ink);stroke-width:1;stroke-opacity:.85}
.trace{fill:none;stroke-width:1;stroke-linejoin:round;vector-effect:non-scaling-stroke}
.trace.dim{stroke-opacity:.3}
.trace-voltage{stroke:var(--volt)}
.trace-current{stroke:var(--amp)}
.trace-sound{stroke:var(--sound)}
.rate{fill:none;stroke:var(--ink);stroke-width:2}
.mark-short{fill:var(--ink)}
.sweep-step{fill:var(--hue);stroke:var(--card);stroke-width:1.4}
.chart .sweep-letter{fill:var(--card);font-weight:700;font-size:12px}
.sweep-best{fill:none;stroke:var(--ink);stroke-width:2.2}
.progress-line{fill:none;stroke:var(--soft);stroke-width:1.6}
.chart .progress-sign{font-size:15px}
.mark-fault{fill:var(--bad);stroke:var(--ink);stroke-width:.6}
.mark-drop{fill:var(--globular);stroke:var(--ink);stroke-width:.6}
.mark-density{stroke:var(--ink);stroke-width:1.6;fill:none}
.bar{stroke:var(--ink);stroke-width:.6}
.bar-arc{fill:var(--soft);fill-opacity:.38}
.bar-short{fill:var(--ink)}
.spread{fill:var(--soft);fill-opacity:.25}
.curve{fill:none;stroke:var(--ink);stroke-width:1.6;stroke-linejoin:round}
.curve.trace-voltage{stroke:var(--volt)}
.curve.trace-current{stroke:var(--amp)}
.reference{stroke:var(--soft);stroke-dasharray:2 3}
.mains{stroke:var(--soft);stroke-dasharray:1 4}
.fundamental{stroke:var(--spray);stroke-width:1.4}
.fundamental-head{fill:var(--spray)}
.phase-arc{fill:none;stroke:var(--volt);stroke-width:1}
.phase-short-circuit{fill:var(--ink)}
.phase-just-after{fill:var(--globular)}
.band-box{stroke:var(--hue);stroke-width:1.4;fill-opacity:.16}
.band-letter{fill:var(--hue)!important}
.zone{fill-opacity:.8}
.run-box{fill:var(--ink);fill-opacity:.1;stroke:var(--ink);stroke-width:2;stroke-dasharray:5 3}
.run-cross{stroke:var(--ink);stroke-width:3;fill:none}
.map-ground{fill:var(--hue)}
.map-guide{fill:none;stroke:var(--soft);stroke-width:1.4;stroke-dasharray:6 4}
.map-wanted{fill:none;stroke:var(--ink);stroke-width:2.4}
.map-ellipse{fill:var(--card);fill-opacity:.45;stroke:var(--ink);stroke-width:1.8;stroke-dasharray:5 3}
.map-measured{fill:var(--ink);stroke:var(--card);stroke-width:2}
.map-transition{stroke:var(--ink);stroke-width:1;stroke-dasharray:2 3}
.chart .map-name{fill:var(--ink);font-weight:600}
`;

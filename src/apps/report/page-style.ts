import { CHART_STYLE, palette } from './chart-style.js';

/** Layout of the pages: wide screens, phones, paper. */
export const PAGE_STYLE = `${palette('both')}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:16px/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"DejaVu Sans",sans-serif}
main,.top,.foot{max-width:1060px;margin:0 auto;padding:0 20px}
a{color:var(--link)}
.skip{position:absolute;left:-99em}
.skip:focus{left:8px;top:8px;background:var(--card);padding:8px;z-index:9}
:focus-visible{outline:3px solid var(--link);outline-offset:2px}
.top{padding-top:22px}
.top p{margin:0;color:var(--soft)}
.file{font-weight:600;overflow-wrap:anywhere;color:var(--ink)}
h1{font-size:2.1rem;line-height:1.15;margin:0 0 4px;letter-spacing:-.01em}
h2{font-size:1.25rem;margin:0 0 10px}
h3{font-size:1rem;margin:14px 0 4px}
p{margin:0 0 8px;max-width:72ch}
section{margin:26px 0;scroll-margin-top:12px}
.verdict{display:grid;grid-template-columns:auto 1fr;gap:20px;background:var(--card);border:1px solid var(--line);border-left:10px solid var(--hue,var(--none));padding:20px;margin-top:14px}
.plate-letter{width:92px;height:92px}
.plate-letter .plate-ground{stroke:var(--hue);stroke-width:3}
.plate-letter text{font-size:44px;font-weight:700;fill:var(--ink);paint-order:stroke;stroke:var(--card);stroke-width:9px;stroke-linejoin:round}
.sure{font-size:1.15rem}
.chances{list-style:none;margin:10px 0 0;padding:0;display:grid;grid-template-columns:max-content 1fr max-content;gap:2px 10px;align-items:center;max-width:560px}
.chances li{display:contents}
.chances svg{width:100%;height:12px}
.chances .ground{fill:var(--grid)}
.chances .number{text-align:right;font-variant-numeric:tabular-nums}
.questions{display:grid;grid-template-columns:repeat(auto-fit,minmax(250px,1fr));gap:14px;margin:14px 0}
.questions>div{background:var(--card);border:1px solid var(--line);padding:14px 16px}
.questions h2{font-size:1rem;color:var(--soft);font-weight:600;margin-bottom:4px}
.answer{font-weight:700;font-size:1.05rem}
.good{color:var(--good)}.bad{color:var(--bad)}.doubt{color:var(--doubt)}
.checks{padding-left:1.4em;margin:0}
.checks li{margin-bottom:10px}
.checks .because{color:var(--soft)}
.cautions{border:2px solid var(--doubt);padding:12px 16px;background:var(--card)}
.cautions ul{margin:0;padding-left:1.2em}
nav ul{display:flex;flex-wrap:wrap;gap:4px 18px;list-style:none;padding:0;margin:0}
.card{background:var(--card);border:1px solid var(--line);padding:14px}
figure{margin:0}
figcaption{color:var(--soft);font-size:.9rem;margin-top:4px}
.shapes{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,380px),1fr));gap:16px}
.shapes .chart{max-width:600px}
.wide{overflow-x:auto}
.wide .chart{min-width:640px}
.controls{display:none;flex-wrap:wrap;gap:6px;margin-bottom:10px;align-items:center}
.live .controls{display:flex}
button,select{font:inherit;font-size:.95rem;color:var(--ink);background:var(--paper);border:1px solid var(--soft);border-radius:3px;padding:5px 11px;min-height:36px;max-width:100%}
button:hover{background:var(--gap)}
audio{width:min(340px,100%);height:38px}
.stage{position:relative;touch-action:pan-y;cursor:crosshair}
.cursor,.player,.range{position:absolute;top:0;bottom:38px;pointer-events:none;display:none}
.cursor{border-left:1px solid var(--ink)}
.player{border-left:3px solid var(--spray)}
.range{background:var(--link);opacity:.22}
.readout{min-height:3em;font-variant-numeric:tabular-nums;margin:8px 0 0;display:none}
.live .readout{display:block}
.help{color:var(--soft);font-size:.9rem;display:none}
.live .help{display:block}
.scroll{overflow-x:auto}
table{border-collapse:collapse;font-variant-numeric:tabular-nums;font-size:.92rem}
caption{text-align:left;color:var(--soft);padding-bottom:4px}
th,td{border-bottom:1px solid var(--line);padding:4px 14px 4px 0;text-align:left;vertical-align:top}
td.n,th.n{text-align:right}
details{margin:8px 0}
.card+p{margin-top:10px}
summary{cursor:pointer;color:var(--link);padding:4px 0}
dl{display:grid;grid-template-columns:max-content 1fr;gap:2px 18px;margin:0}
dt{color:var(--soft)}
dd{margin:0;overflow-wrap:anywhere}
.multiples{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,330px),1fr));gap:16px;list-style:none;padding:0;margin:0}
.multiples h3{margin-top:0;overflow-wrap:anywhere}
.pair{display:grid;grid-template-columns:1fr 1fr;gap:16px}
.pair>*{min-width:0}
.pair h3{overflow-wrap:anywhere}
.foot{color:var(--soft);padding-bottom:40px;font-size:.9rem}
.hidden-defs{position:absolute;width:0;height:0}
@media screen and (prefers-color-scheme:dark){.spectrogram{filter:invert(1)}}
@media (max-width:640px){
main,.top,.foot{padding:0 12px}
.top{padding-top:12px}
h1{font-size:1.6rem}
.verdict{grid-template-columns:1fr;gap:10px;padding:14px}
.plate-letter{width:64px;height:64px}
.card{padding:8px}
.pair{grid-template-columns:1fr}
.chart{font-size:13px}
.reason-picture{display:none}
dl{grid-template-columns:1fr}
dt{margin-top:6px}
}
@media print{
@page{size:A4;margin:14mm}
body{background:#fff;font-size:10.5pt}
main,.top,.foot{max-width:none;padding:0}
.controls,.readout,.help,nav,.skip,audio,.cursor,.player{display:none!important}
.card,.questions>div{border-color:#999}
section{margin:14px 0}
section,figure,.questions>div,.checks li,.cautions,tr{break-inside:avoid}
section.long{break-inside:auto}
h2,h3{break-after:avoid}
.shapes{grid-template-columns:1fr 1fr;gap:8px}
.questions{grid-template-columns:repeat(3,1fr)}
.wide{overflow:visible}.wide .chart{min-width:0}
details:not([open]){display:none}
*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
${CHART_STYLE}`;

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
.verdict{margin-top:14px}
.verdict-head{display:flex;flex-wrap:wrap;gap:10px 24px;align-items:center;justify-content:space-between;margin-bottom:12px}
.wanted{border:3px solid var(--doubt);border-radius:10px;background:var(--card);padding:8px 16px;margin:0}
.wanted strong{font-size:1.35rem;margin-left:4px}
.wanted-said{display:block;color:var(--soft);font-size:.9rem}
.wanted-right{border-color:var(--good)}.wanted-right strong{color:var(--good)}
.wanted-wrong{border-color:var(--bad)}.wanted-wrong strong{color:var(--bad)}
.wanted-open{border-style:dashed}
.where{color:var(--soft);margin-top:10px}
.strip{display:block;border-radius:8px;overflow:hidden}
.strip-short-circuit{--strip:var(--strip-short-circuit)}
.strip-globular{--strip:var(--strip-globular)}
.strip-spray{--strip:var(--strip-spray)}
.strip-pulsed-spray{--strip:var(--strip-pulsed-spray)}
.strip-not-clear{--strip:var(--strip-not-clear)}
.strip-left-out{--strip:var(--strip-left-out)}
.strip-no-arc{--strip:var(--strip-no-arc)}
.strip-part{fill:var(--strip)}
.strip-ink{fill:var(--on-strip);fill-opacity:.2}
.strip-line{stroke:var(--on-strip);stroke-opacity:.25;stroke-width:1.4}
.strip-name{fill:var(--on-strip);font-size:14px;font-weight:700;paint-order:stroke;stroke:var(--strip);stroke-width:4px;stroke-linejoin:round}
.strip-name.strip-no-arc,.strip-name.strip-left-out{fill:var(--on-pale)}
.strip-ends{display:flex;gap:12px;justify-content:space-between;color:var(--soft);font-size:.9rem;margin-top:4px}
.strip-ends span:not(.strip-said){white-space:nowrap}
.strip-said{text-align:center}
.strip-key{display:flex;flex-wrap:wrap;gap:2px 16px;list-style:none;margin:6px 0 0;padding:0;font-size:.9rem}
.swatch{margin-right:6px;vertical-align:-2px}
.phone-only{display:none}
.chances{list-style:none;margin:10px 0 0;padding:0;display:grid;grid-template-columns:minmax(0,max-content) minmax(40px,1fr) max-content;gap:2px 10px;align-items:center;max-width:560px;overflow-wrap:anywhere}
.chances li{display:contents}
.chances svg{width:100%;height:12px}
.chances .ground{fill:var(--grid)}
.chances .number{text-align:right;font-variant-numeric:tabular-nums}
.answers{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,235px),1fr));gap:14px;margin:14px 0}
.answers>div{background:var(--card);border:1px solid var(--line);border-radius:10px;padding:16px 20px}
.answers h2{font-size:1.1rem;margin-bottom:8px}
.answers h3{margin:8px 0 2px}
.answers ul{margin:0 0 8px;padding-left:1.2em}
.todo{font-size:1.3rem;line-height:1.3;font-weight:700}
.answer{font-weight:700;font-size:1.05rem}
.good{color:var(--good)}.bad{color:var(--bad)}.doubt{color:var(--doubt)}
.checks{padding-left:1.4em;margin:0}
.checks li{margin-bottom:10px}
.checks .because{color:var(--soft)}
.cautions{border:2px solid var(--doubt);padding:12px 16px;background:var(--card)}
.cautions ul{margin:0;padding-left:1.2em}
nav a{display:inline-block;padding:10px 0;min-height:44px}
nav ul{display:flex;flex-wrap:wrap;gap:4px 18px;list-style:none;padding:0;margin:0}
.card{background:var(--card);border:1px solid var(--line);padding:14px}
figure{margin:0}
figcaption{color:var(--soft);font-size:.9rem;margin-top:4px}
.shapes{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,300px),1fr));gap:16px}
.shapes .chart,.maps .chart{max-width:460px;margin:0 auto}
.shapes .chart,.maps .chart,.pair .chart{font-size:13px}
.maps{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(100%,380px),1fr));gap:16px}
.controls{display:none;flex-wrap:wrap;gap:6px;margin-bottom:10px;align-items:center}
.live .controls{display:flex}
button,select{font:inherit;font-size:.95rem;color:var(--ink);background:var(--paper);border:1px solid var(--soft);border-radius:3px;padding:5px 11px;min-height:44px;max-width:100%}
button:hover{background:var(--gap)}
audio{width:min(340px,100%);height:44px}
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
summary{cursor:pointer;color:var(--link);padding:10px 0;min-height:44px}
dl{display:grid;grid-template-columns:max-content 1fr;gap:2px 18px;margin:0}
dt{color:var(--soft)}
dd{margin:0;overflow-wrap:anywhere}
.multiples{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(100%,330px),1fr));gap:16px;list-style:none;padding:0;margin:0}
@media (pointer:coarse){#time-help{display:none!important}}
.multiples h3 a{display:inline-block;padding:10px 0;min-height:44px}
.multiples h3{margin:0;overflow-wrap:anywhere}
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
.wide-only{display:none}
.phone-only{display:list-item}
.todo{font-size:1.2rem}
.card{padding:8px}
.pair{grid-template-columns:1fr}
.reason-picture{display:none}
#answers .card{border:0;padding:0;background:none}
table.cards td:nth-child(2)::before{display:none}
table.cards td:nth-child(2){font-weight:600}
table.cards thead{position:absolute;left:-99em}
table.cards,table.cards tbody,table.cards tr,table.cards th,table.cards td{display:block;text-align:left}
table.cards tr{border:1px solid var(--line);border-radius:10px;padding:10px 14px;margin-bottom:10px;background:var(--card)}
table.cards th,table.cards td{border:0;padding:2px 0;overflow-wrap:anywhere}
table.cards th a{display:inline-block;min-height:44px;padding:10px 0}
table.cards td[data-head]::before{content:attr(data-head) ": ";color:var(--soft)}
dl{grid-template-columns:1fr}
dt{margin-top:6px}
}
@media print{
@page{size:A4;margin:14mm}
body{background:#fff;font-size:10.5pt}
main,.top,.foot{max-width:none;padding:0}
.controls,.readout,.help,nav,.skip,audio,.cursor,.player{display:none!important}
.card,.answers>div{border-color:#999}
section{margin:14px 0}
section,figure,.answers>div,.checks li,.cautions,tr{break-inside:avoid}
section.long{break-inside:auto}
h2,h3{break-after:avoid}
.shapes{grid-template-columns:1fr 1fr;gap:8px}
.answers{grid-template-columns:repeat(2,1fr)}
details:not([open]){display:none}
*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
${CHART_STYLE}`;

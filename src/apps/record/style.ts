import { CHART_STYLE, palette } from '../report/index.js';

/** Layout of a record: one sheet of A4 or Letter, black on white. */
export const RECORD_STYLE = `${palette('light')}
*{box-sizing:border-box}
body{margin:0;background:#fff;color:var(--ink);font:13px/1.35 system-ui,-apple-system,"Segoe UI",Roboto,"DejaVu Sans",sans-serif}
main{max-width:800px;margin:0 auto;padding:18px}
.wide{max-width:1100px}
h1{font-size:1.5em;margin:0;line-height:1.1}
h2{font-size:.95em;margin:10px 0 3px;border-bottom:1px solid var(--ink)}
p{margin:3px 0}
.statement{font-size:.85em}
th[scope=row]{font-weight:600}
.head{display:flex;justify-content:space-between;gap:16px;align-items:flex-start;border-bottom:2px solid var(--ink);padding-bottom:6px}
.outcome{border:2px solid var(--ink);padding:4px 10px;font-weight:700;max-width:20em;text-align:center}
.outside{color:var(--bad);border-color:var(--bad)}
.inside{color:var(--good);border-color:var(--good)}
.open{color:var(--doubt);border-color:var(--doubt)}
dl{display:grid;grid-template-columns:max-content 1fr max-content 1fr;gap:1px 10px;margin:6px 0}
dt{color:var(--soft)}
dd{margin:0;overflow-wrap:anywhere}
.first{grid-column:1}
.long{grid-column:2/5}
table{border-collapse:collapse;width:100%;font-variant-numeric:tabular-nums;font-size:.92em}
th,td{border-bottom:1px solid var(--line);padding:2px 8px 2px 0;text-align:left;vertical-align:top}
td.why{color:var(--soft);font-size:.9em}
tr.more td.why{padding-left:14px}
tr.told td,tr.told th{border-bottom:0}
.wide th,.wide td{white-space:nowrap}
.wide td:last-child{white-space:normal}
td.mark{white-space:nowrap;font-weight:700;border-color:var(--line)}
tr.told td.mark{border-bottom:0}
.n{text-align:right}
.emarks{font-size:.85em;color:var(--soft)}
.sign{display:grid;grid-template-columns:2fr 1fr 2fr;gap:18px;margin-top:26px}
.sign span{border-top:1px solid var(--ink);padding-top:2px;color:var(--soft);font-size:.85em}
.strip .chart{font-size:11px}
.foot{color:var(--soft);font-size:.8em;overflow-wrap:anywhere}
.hidden-defs{position:absolute;width:0;height:0}
a{color:var(--link)}
@page{margin:12mm}
@media print{
body{font-size:8.2pt}
h2{margin-top:7px}
main{max-width:none;padding:0}
tr,.sign{break-inside:avoid}
*{print-color-adjust:exact;-webkit-print-color-adjust:exact}
}
${CHART_STYLE}`;

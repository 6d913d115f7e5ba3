import { MODE_LETTERS } from '../../../setup/index.js';
import type { Words } from '../../view/index.js';
import { escapeHtml } from '../escape.js';
import { drawFigure } from '../figures.js';
import type { RunView } from '../run-view.js';

/** The run over time: picture, controls for the script, and the same as a table. */
export function timeSection(run: RunView, words: Words): string {
  const svg = drawFigure('time', run, 'time', words);
  if (!svg || !run.evidence) return '';
  const { time } = words;
  return `<section id="when" class="long"><h2>${time.heading}</h2>
<div class="card" id="time-card">
${controls(run, words)}
${playback(run, words)}
<div class="stage" id="stage" tabindex="0" role="group" aria-roledescription="${time.zoomable}" aria-label="${words.titles.time}" aria-describedby="time-help"><div id="time-picture">${svg}</div><div class="range"></div><div class="cursor"></div><div class="player"></div></div>
<p class="readout" id="readout" aria-live="polite">${time.readHint}</p>
<p class="help" id="time-help">${time.help}</p>
</div>
<p>${time.tracks}${closeUpNote(run, words)}</p>
${segmentTable(run, words)}</section>`;
}

function controls(run: RunView, words: Words): string {
  const { time } = words;
  return `<div class="controls" role="toolbar" aria-label="${time.toolbar}">
<button type="button" data-do="in">${time.zoomIn}</button>
<button type="button" data-do="out">${time.zoomOut}</button>
<button type="button" data-do="earlier">${time.earlier}</button>
<button type="button" data-do="later">${time.later}</button>
<button type="button" data-do="whole">${time.whole}</button>
<label>${time.goTo} <select id="go-to"><option value="">${time.choose}</option>${goTo(run, words)}</select></label>
</div>`;
}

/** Lengths that a press brings into view: each judged part, and each place with every sample. */
function goTo({ result, evidence }: RunView, words: Words): string {
  const { time, numbers } = words;
  const parts = result.segments.slice(0, 200).map((one) => {
    const name = one.mode ? words.mode(one.mode) : words.notClear;
    return option(one.startS, one.endS, time.partFrom(name, numbers.time(one.startS)));
  });
  const closeUps = evidence!.closeUps.map((one) => {
    const toS = one.startS + one.traces[0]!.length * one.binS;
    return option(one.startS, toS, time.closeUpAt(numbers.time(one.startS)));
  });
  const group = (label: string, options: string[]) =>
    options.length === 0 ? '' : `<optgroup label="${label}">${options.join('')}</optgroup>`;
  return group(time.parts, parts) + group(time.closeUps, closeUps);
}

function option(fromS: number, toS: number, words: string): string {
  return `<option value="${fromS.toFixed(5)} ${toS.toFixed(5)}">${escapeHtml(words)}</option>`;
}

function playback({ evidence }: RunView, { time, numbers }: Words): string {
  const sound = evidence!.playback;
  if (!sound) return '';
  const lengthS = sound.samples.length / sound.rateHz;
  const part = sound.whole ? '' : time.onlyFirst(numbers.time(lengthS));
  return `<div class="controls"><audio id="sound" controls preload="metadata" aria-label="${time.playback}"></audio><span class="help">${part}${time.playFrom}</span></div>`;
}

function closeUpNote({ evidence }: RunView, { time, numbers }: Words): string {
  if (evidence!.closeUps.length === 0) return '';
  const binMs = (1000 * evidence!.traces[0]!.binS).toPrecision(2);
  return time.closeUpNote(numbers.decimal(binMs), evidence!.closeUps.length);
}

function segmentTable({ result }: RunView, words: Words): string {
  if (result.segments.length === 0) return '';
  const { time, numbers } = words;
  const shown = result.segments.slice(0, 400);
  const rows = shown.map(
    (one) =>
      `<tr><td class="n">${numbers.time(one.startS)}</td><td class="n">${numbers.time(one.endS)}</td><td>${one.mode ? `${MODE_LETTERS[one.mode]} ${words.mode(one.mode)}` : `? ${words.notClear}`}</td><td class="n">${numbers.percent(one.confidence)}</td></tr>`,
  );
  const more = shown.length < result.segments.length ? time.tableFirst(shown.length) : '';
  return `<details${rows.length <= 12 ? ' open' : ''}><summary>${time.tableTitle(result.segments.length)}</summary><div class="scroll"><table><caption>${time.tableCaption}${more}</caption><thead><tr><th class="n" scope="col">${time.from}</th><th class="n" scope="col">${time.to}</th><th scope="col">${time.mode}</th><th class="n" scope="col">${time.confidence}</th></tr></thead><tbody>${rows.join('')}</tbody></table></div></details>`;
}

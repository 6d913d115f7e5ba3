import { MODES } from '../../../core/index.js';
import { MODE_LETTERS } from '../../../setup/index.js';
import { rankReasons, tell, viewReason, viewVerdict, type Words } from '../../view/index.js';
import { escapeHtml } from '../escape.js';
import { drawFigure } from '../figures.js';
import { localizedHtml } from '../localized.js';
import type { RunView } from '../run-view.js';
import { chancesList } from './verdict.js';

/** The map of published windows with this run. Absent where neither voltage nor current is known. */
export function placeSection(run: RunView, words: Words): string {
  const { placement } = run;
  const svg = drawFigure('place', run, 'place', words);
  if (!svg || !placement) return '';
  const { place } = words;
  const map = drawFigure('map', run, 'map', words);
  const mapped = map ? `<figure class="card">${map}</figure>\n` : '';
  const { voltageFrom, voltageFromMessage, currentFrom, currentFromMessage } = placement.run;
  const from = [
    voltageFrom === null ? null : tell(voltageFrom, voltageFromMessage, words).text,
    currentFrom === null ? null : tell(currentFrom, currentFromMessage, words).text,
  ].filter((one) => one !== null);
  const rows = windowRows(placement, words);
  const [mode, about, source] = place.heads;
  const intro = place.intro(tell(placement.scope, placement.scopeMessage, words).text);
  return `<section id="place"><h2>${place.heading}</h2>
<p>${escapeHtml(intro)}${from.length > 0 ? escapeHtml(place.taken(from)) : ''}</p>
<div class="maps">${mapped}<figure class="card">${svg}<figcaption>${letters(placement, words)}</figcaption></figure></div>
<details><summary>${place.tableTitle(rows.length)}</summary><div class="scroll"><table><thead><tr><th scope="col">${mode}</th><th class="n" scope="col">V</th><th class="n" scope="col">A</th><th scope="col">${about}</th><th scope="col">${source}</th></tr></thead><tbody>${rows.join('')}</tbody></table></div></details></section>`;
}

/** What the letters of the windows stand for. */
function letters({ bands }: NonNullable<RunView['placement']>, words: Words): string {
  const drawn = MODES.filter((mode) => bands.some((band) => band.mode === mode));
  return drawn.map((mode) => `${MODE_LETTERS[mode]} ${words.mode(mode)}`).join(' · ');
}

function windowRows({ bands }: NonNullable<RunView['placement']>, words: Words): string[] {
  const { figure } = words.numbers;
  const span = ({ min, max }: { min: number; max: number }) => `${figure(min)}–${figure(max)}`;
  return MODES.flatMap((mode) =>
    bands
      .filter((band) => band.mode === mode)
      .map(
        (band) =>
          `<tr><td>${MODE_LETTERS[mode]} ${words.mode(mode)}</td><td class="n">${span(band.voltageV)}</td><td class="n">${span(band.currentA)}</td><td>${localizedHtml(tell(band.about, band.aboutMessage, words), words)}</td><td>${localizedHtml(tell(band.authority, band.authorityMessage, words), words)}</td></tr>`,
      ),
  );
}

/** Reasons as a ranked chart and as a list. */
export function reasonSection(run: RunView, words: Words): string {
  const svg = drawFigure('reasons', run, 'reasons', words);
  if (!svg) return '';
  const list = rankReasons(run.result.reasons)
    .map((one) => viewReason(one, words))
    .map(({ side, text }) => `<li>${escapeHtml(side)}: ${localizedHtml(text, words)}</li>`)
    .join('');
  return `<section id="why"><h2>${words.reasons.heading}</h2>
<figure class="card reason-picture">${svg}</figure>
${chancesList(viewVerdict(run.result, words), words)}
<details open><summary>${words.reasons.asList}</summary><ol>${list}</ol></details></section>`;
}

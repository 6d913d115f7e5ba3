import type { LimitRow, WeldRecord } from '../../record/index.js';
import { escapeHtml as html, htmlDocument } from '../report/index.js';
import { ENGLISH, tell, type Words } from '../view/index.js';
import { foundText, timeText } from './figures.js';
import { OUTCOME_CLASS, seenName, weldName } from './page.js';
import { RECORD_STYLE } from './style.js';
import { type RecordWords, recordWords } from './words/index.js';

/** What the index of a folder of records needs of each. */
export interface RecordEntry {
  href: string;
  name: string;
  weldedAt: WeldRecord['weldedAt'];
  outcome: WeldRecord['outcome'];
  mode: WeldRecord['mode'];
  /** Limits that are outside or could not be judged. */
  open: LimitRow[];
}

export function recordEntry(record: WeldRecord, href: string): RecordEntry {
  const { weldedAt, outcome, mode, limits } = record;
  const open = limits.filter((one) => one.outcome !== 'inside');
  return { href, name: weldName(record), weldedAt, outcome, mode, open };
}

/** All records of a folder in one table, those outside marked. */
export function recordIndex(
  entries: readonly RecordEntry[],
  procedure: { name: string; note: string | null },
  words: Words = ENGLISH,
): string {
  const own = recordWords(words.lang);
  const { heads } = own.index;
  const counts = Object.entries(own.outcomes)
    .map(([outcome, name]) => ({
      name,
      count: entries.filter((one) => one.outcome === outcome).length,
    }))
    .filter(({ count }) => count > 0)
    .map(({ name, count }) => `<dt>${html(name)}</dt><dd>${count}</dd>`);
  const names = [heads.weld, heads.time, heads.outcome, heads.mode, heads.share, heads.outside];
  const statement = tell(
    words.sentences.write.say({ code: 'record-no-qualification', params: {} }),
    null,
    words,
  );
  const body = `<main class="wide"><div class="head"><div><h1>${html(own.index.title)}</h1><p>${html(own.facts.procedure)} ${html(procedure.name)} · ${html(own.index.count(entries.length))}</p>${procedure.note === null ? '' : `<p>${html(procedure.note)}</p>`}</div></div>
<p class="statement">${html(statement.text)}</p>
<dl>${counts.join('')}</dl>
<table aria-label="${html(own.index.table)}"><thead><tr>${names.map((one) => `<th scope="col">${html(one)}</th>`).join('')}</tr></thead><tbody>${entries.map((one) => entryRow(one, words, own)).join('')}</tbody></table></main>`;
  return htmlDocument(`${own.index.title}: ${procedure.name}`, body, '', words.lang, RECORD_STYLE);
}

function entryRow(entry: RecordEntry, words: Words, own: RecordWords): string {
  const { mode, outcome, open } = entry;
  const outside = open.filter((one) => one.outcome === 'outside');
  const notJudged = open.filter((one) => one.outcome === 'cannot-judge');
  const said = [
    ...outside.map((one) => `${own.limits[one.limit]} ${foundText(one, words, own)}`),
    ...notJudged.map((one) => `? ${own.limits[one.limit]}`),
  ];
  const share = mode.wantedShare === null ? '–' : words.numbers.percent(mode.wantedShare);
  return `<tr><th scope="row"><a href="${html(entry.href)}">${html(entry.name)}</a></th><td>${html(timeText(entry.weldedAt))}</td><td class="mark ${OUTCOME_CLASS[outcome]}">${html(own.outcomes[outcome])}</td><td>${html(seenName(mode, words, own))}</td><td>${html(share)}</td><td>${html(said.join('; '))}</td></tr>`;
}

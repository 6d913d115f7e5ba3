import type { LimitRow, WeldRecord } from '../../record/index.js';
import { escapeHtml as html, htmlDocument } from '../report/index.js';
import { type Coded, ENGLISH, tell, tellAll, type Words } from '../view/index.js';
import { allowedText, figureText, foundText, knownText, massText, timeText } from './figures.js';
import { modeStrip, seconds } from './strip.js';
import { RECORD_STYLE } from './style.js';
import { type RecordWords, recordWords } from './words/index.js';

/** Identifiers that every record has a place for, in the order of the sheet. */
const ID_NAMES = ['part', 'seam', 'job', 'robot', 'welder', 'recorder', 'meters'] as const;

/** How an outcome is coloured; its words say the same. */
export const OUTCOME_CLASS: Readonly<Record<WeldRecord['outcome'], string>> = {
  inside: 'inside',
  'inside-as-far-as-judged': 'open',
  outside: 'outside',
  'cannot-judge': 'open',
};

/** A record on one sheet of A4 or Letter, to be read and signed. */
export function recordPage(record: WeldRecord, words: Words = ENGLISH): string {
  const own = recordWords(words.lang);
  const title = `${own.title}: ${weldName(record)}`;
  const body = `<main>
<div class="head"><div><h1>${html(own.title)}</h1><p class="statement">${sentence(record.statement, record.statementMessage, words)}</p></div>
<p class="outcome ${OUTCOME_CLASS[record.outcome]}">${html(own.outcomes[record.outcome])}</p></div>
${factsList(record, words, own)}
<h2>${html(own.facts.procedure)} ${html(procedureName(record, own))}</h2>
${limitTable(record, words, own)}
<h2>${html(own.modes)}</h2>
${modePart(record, words, own)}
<h2>${html(own.energy.heading)}</h2>
${energyPart(record, words, own)}
<h2>${html(own.signature.heading)}</h2>
<p class="statement">${html(own.signature.says)}</p>
<div class="sign"><span>${html(own.signature.name)}</span><span>${html(own.signature.date)}</span><span>${html(own.signature.sign)}</span></div>
<p class="foot">${html(own.facts.tool)} ${html(`${record.tool.name} ${record.tool.version}`)}${record.model === null ? '' : `, ${html(record.model)}`}${record.run.sha256 === null ? '' : `, SHA-256 ${record.run.sha256}`}</p>
</main>`;
  return htmlDocument(title, body, '', words.lang, RECORD_STYLE);
}

/** Part and seam where they are known, else the name of the file. */
export function weldName({ ids, run }: WeldRecord): string {
  const known = [ids['part'], ids['seam'], ids['weld']].filter((one) => one);
  return known.length > 0 ? known.join(' / ') : run.path;
}

/** The mode of a weld, or that it is mixed or was not named. */
export function seenName({ seen }: WeldRecord['mode'], words: Words, own: RecordWords): string {
  if (seen === null) return own.notNamed;
  return seen === 'mixed' ? own.mixed : words.mode(seen);
}

function sentence(text: string, coded: Coded, words: Words): string {
  const said = tell(text, coded, words);
  return said.lang === words.lang
    ? html(said.text)
    : `<span lang="${said.lang}">${html(said.text)}</span>`;
}

function procedureName({ procedure }: WeldRecord, own: RecordWords): string {
  const { name, revision } = procedure;
  return revision === null ? name : `${name}, ${own.facts.revision(revision)}`;
}

function factsList(record: WeldRecord, words: Words, own: RecordWords): string {
  const { ids, run, weldedAt, procedure } = record;
  const more = Object.keys(ids).filter((key) => !(ID_NAMES as readonly string[]).includes(key));
  const facts: [string, string | null][] = [
    ...[...ID_NAMES, ...more].map((key): [string, string | null] => [
      own.ids[key] ?? key,
      ids[key] ?? own.notGiven,
    ]),
    [
      own.facts.weldedAt,
      weldedAt === null ? own.notGiven : `${timeText(weldedAt)} (${own.timeFrom[weldedAt.from]})`,
    ],
    [own.facts.file, run.path],
    [own.facts.recording, recording(record, words, own)],
    [own.facts.joint, procedure.joint],
    [own.facts.pass, procedure.pass],
    [own.facts.note, procedure.note],
  ];
  const rows = facts.flatMap(([name, value]) =>
    value === null
      ? []
      : [
          name === own.facts.note
            ? `<dt class="first">${html(name)}</dt><dd class="long">${html(value)}</dd>`
            : `<dt>${html(name)}</dt><dd>${html(value)}</dd>`,
        ],
  );
  return `<dl>${rows.join('')}</dl>`;
}

function recording({ run }: WeldRecord, { numbers }: Words, own: RecordWords): string {
  return [
    run.kind && own.kinds[run.kind],
    run.sampleRateHz === null ? null : numbers.rate(run.sampleRateHz),
    run.durationS === null ? null : numbers.time(run.durationS),
  ]
    .filter((one) => one !== null)
    .join(', ');
}

function limitTable({ limits }: WeldRecord, words: Words, own: RecordWords): string {
  const { limit, allowed, found, spread, known, outcome } = own.heads;
  const heads = [limit, allowed, found, spread, known, outcome];
  return `<table><thead><tr>${heads.map((one) => `<th scope="col">${html(one)}</th>`).join('')}</tr></thead><tbody>${limits.map((one) => limitRow(one, words, own)).join('')}</tbody></table><p class="remarks">${html(own.spreadNote)}</p>`;
}

function limitRow(row: LimitRow, words: Words, own: RecordWords): string {
  const mark = { inside: 'inside', outside: 'outside', 'cannot-judge': 'open' }[row.outcome];
  const why = row.why === null ? '' : sentence(row.why, row.whyMessage, words);
  const cell = (text: string): string => `<td>${html(text)}</td>`;
  const spread = row.spread ? figureText(row.limit, row.spread, words) : '–';
  const found =
    row.figure === null
      ? `<td class="why" colspan="3">${why}</td>`
      : [foundText(row, words, own), spread, knownText(row, own)].map(cell).join('');
  const told = why !== '' && row.figure !== null;
  const first = `<tr${told ? ' class="told"' : ''}><th scope="row">${html(own.limits[row.limit])}</th>${cell(allowedText(row, words, own))}${found}<td class="mark ${mark}">${html(own.judged[row.outcome])}</td></tr>`;
  return told ? `${first}<tr class="more"><td class="why" colspan="6">${why}</td></tr>` : first;
}

function modePart(record: WeldRecord, words: Words, own: RecordWords): string {
  const { mode, procedure, run } = record;
  const { confidence, longestDeparture: out } = mode;
  const sure = confidence === null ? '' : words.numbers.percent(confidence);
  const parts = [
    own.wanted(procedure.modes.map((one) => words.mode(one)).join(', ')),
    own.seen(seenName(mode, words, own), sure),
    run.arcTimeS === null ? '' : own.arcTime(words.numbers.time(run.arcTimeS)),
    out
      ? own.longest(
          words.mode(out.mode),
          seconds(out.endS - out.startS, words),
          seconds(out.startS, words),
        )
      : own.noDeparture,
  ].filter((one) => one !== '');
  const reason =
    run.status === 'ok'
      ? ''
      : `<p>${sentence(run.statusReason, run.statusReasonMessage, words)}</p>`;
  return `<p>${html(parts.join(' · '))}</p>${reason}<div class="strip">${modeStrip(record, words, own)}</div>`;
}

function energyPart({ power, deposit }: WeldRecord, words: Words, own: RecordWords): string {
  const { write } = words.sentences;
  const { energy } = own;
  const watts = (value: number | null): string =>
    value === null ? energy.unknown : `${write.fixed(value / 1000, 2)} kW`;
  const along = (value: number | null): string =>
    value === null ? energy.unknown : write.inUnits(value, 'energy');
  const mass = (kg: Parameters<typeof massText>[0] | null): string =>
    kg === null ? energy.unknown : massText(kg, words);
  const facts = [
    [energy.power, watts(power.meanPowerW)],
    [energy.arcEnergy, along(power.arcEnergyKjPerMm)],
    [energy.byMeans, watts(power.byMeansW)],
    [energy.byMeansAlong, along(power.byMeansKjPerMm)],
    [
      energy.energy,
      power.energyKj === null ? energy.unknown : `${write.fixed(power.energyKj, 1)} kJ`,
    ],
    [energy.heatInput, along(power.heatInputKjPerMm)],
    [energy.melted, mass(deposit.meltedKg)],
    [energy.deposited, mass(deposit.depositedKg)],
  ];
  const remarks = tellAll(power.remarks, power.remarkMessages, words).map((one) => html(one.text));
  if (deposit.why !== null) remarks.push(sentence(deposit.why, deposit.whyMessage, words));
  return `<dl>${facts.map(([name, value]) => `<dt>${html(name!)}</dt><dd>${html(value!)}</dd>`).join('')}</dl><p class="remarks">${remarks.join(' ')}</p>`;
}

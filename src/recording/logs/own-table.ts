import { ArcError } from '../../core/index.js';

/** Names that stand together in tables of results and in no log. */
const TELLING = [
  ['settings_fingerprint', 'schema_version'],
  ['probability_short_circuit', 'probability_pulsed_spray'],
  ['segment', 'confidence'],
];

/** Refuses a table of results that this tool wrote, by the names of its columns. @throws ArcError `results-table` */
export function refuseOwnTable(fileName: string, names: readonly string[]): void {
  if (TELLING.some((group) => group.every((name) => names.includes(name))))
    throw resultsTable(fileName);
}

/** The same by the beginning of a text: the journal of a batch, a table, a line or a document of results. */
export function refuseOwnText(fileName: string, text: string): void {
  const first = /^[^\r\n]*/.exec(text)?.[0] ?? '';
  const journal = first.startsWith('{"journal":"arc-transfer');
  const document =
    /^\s*\{\s*"(schemaVersion|file)":/.test(text) && /"schema_?[vV]ersion":/.test(text);
  if (journal || document) throw resultsTable(fileName);
  refuseOwnTable(fileName, first.replace('\uFEFF', '').split(/[,;\t]/));
}

function resultsTable(fileName: string): ArcError {
  return new ArcError({
    code: 'results-table',
    what: `${fileName} holds results of this tool, no recording.`,
    expected: 'a recording',
    todo: 'Name the recordings that it speaks of.',
  });
}

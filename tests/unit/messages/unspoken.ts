import { ENGLISH, retell } from '../../../src/messages/index.js';

/** Fields that hold sentences as strings or lists of strings, and the field beside them, which of a list ends in `s`. */
const BESIDE: Record<string, string> = {
  statusReason: 'statusReasonMessage',
  cautions: 'cautionMessage',
  qualification: 'qualificationMessage',
  evidenceFor: 'evidenceForMessage',
  evidenceAgainst: 'evidenceAgainstMessage',
  check: 'checkMessage',
  comparedVoltage: 'comparedVoltageMessage',
  comparedCurrent: 'comparedCurrentMessage',
  voltageFrom: 'voltageFromMessage',
  currentFrom: 'currentFromMessage',
  boundary: 'boundaryMessage',
  authority: 'authorityMessage',
  about: 'aboutMessage',
  scope: 'scopeMessage',
  label: 'labelMessage',
  how: 'howMessage',
  reason: 'reasonMessage',
  notes: 'noteMessage',
};

type Fields = Record<string, unknown>;

/** Sentences of a document that their code and params do not give back, and how many there are. */
export function unspoken(document: unknown): { left: string[]; count: number } {
  const left: string[] = [];
  let count = 0;
  const hold = (text: unknown, entry: unknown): void => {
    count++;
    if (retell((entry ?? {}) as Fields, ENGLISH) !== text) left.push(String(text));
  };
  const beside = (texts: unknown, messages: unknown): void => {
    if (typeof texts === 'string') hold(texts, messages);
    if (!Array.isArray(texts) || !texts.every((text) => typeof text === 'string')) return;
    const list = Array.isArray(messages) ? messages : [];
    if (list.length > texts.length) left.push(`${list.length} codes for ${texts.length} texts`);
    for (const [i, text] of texts.entries()) hold(text, list[i]);
  };
  const walk = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) walk(one);
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return;
    const fields = value as Fields;
    const own = fields['text'] ?? fields['message'] ?? fields['detail'];
    if (own !== undefined && !('expected' in fields)) hold(own, fields);
    for (const [name, inner] of Object.entries(fields)) {
      const other = BESIDE[name];
      if (other !== undefined) beside(inner, fields[Array.isArray(inner) ? `${other}s` : other]);
      // Rows of tables hold names of sources and gases, which every language has, not sentences.
      if (!['params', 'values', 'rows'].includes(name)) walk(inner);
    }
  };
  walk(document);
  return { left, count };
}

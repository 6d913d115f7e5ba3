import type { Result } from '../../analysis/result/index.js';
import { ENGLISH, inUnitsIn, type Language } from '../../messages/index.js';
import { type Look, wrap } from './layout.js';
import { MODE_WORDS, percent, plain } from './words.js';

/** What spoke for which mode, the `most` strongest first. */
export function reasonLines(result: Result, look: Look, most: number): string[] {
  if (result.reasons.length === 0) return [];
  const ranked = [...result.reasons].sort((a, b) => Math.abs(b.weight) - Math.abs(a.weight));
  const shown = ranked.slice(0, most);
  const lines = shown.flatMap((reason) => {
    const side = reason.speaksFor ? `for ${MODE_WORDS[reason.speaksFor].name}: ` : '';
    return wrap(`${side}${plain(reason.text)}`, look.width, 2, 2);
  });
  const left = ranked.length - shown.length;
  if (left > 0) lines.push(look.paint.dim(`  ${left} more with --explain`));
  return [look.paint.bold('Why'), ...lines];
}

/** What makes the evidence weaker. */
export function qualityLines(result: Result, look: Look): string[] {
  if (result.quality.length === 0) return [];
  return [
    look.paint.bold('Doubts about the recording'),
    ...result.quality.flatMap((flag) =>
      wrap(`${plain(flag.message)} (${percent(flag.share)} of it)`, look.width, 2, 2),
    ),
  ];
}

/** What was assumed while reading. */
export function noteLines(result: Result, look: Look): string[] {
  if (result.source.notes.length === 0) return [];
  return [
    look.paint.bold('Assumed while reading'),
    ...result.source.notes.flatMap((note) => wrap(plain(note.message), look.width, 2, 2)),
  ];
}

/** A look with the language of sentences and the way heat input is counted. */
export interface SaidLook extends Look {
  language?: Language;
  heatWith?: 'efficiency' | 'no-efficiency' | 'both';
}

/** The stated set-up against the verdict, and what to check next, the `most` likely first. */
export function crossCheckLines(result: Result, look: SaidLook, most: number): string[] {
  const { crossCheck } = result;
  if (!crossCheck) return [];
  const lines = [
    look.paint.bold('Against the set-up'),
    ...judged('Settings', crossCheck.settings, look),
    ...(crossCheck.intended ? judged('Wanted mode', crossCheck.intended, look) : []),
  ];
  for (const text of crossCheck.qualification ?? []) {
    lines.push(...wrap(plain(text), look.width, 4));
  }
  if (crossCheck.plateNote !== undefined)
    lines.push(...wrap(plain(crossCheck.plateNote), look.width, 4));
  lines.push(...heatLines(crossCheck, look));
  if (crossCheck.heatNote !== undefined)
    lines.push(...wrap(plain(crossCheck.heatNote), look.width, 4));
  const advice = crossCheck.advice ?? [];
  if (advice.length > 0) {
    lines.push('', look.paint.bold('What to change'));
    for (const text of advice) lines.push(...wrap(plain(text), look.width, 2, 2));
  }
  if (crossCheck.explanations.length === 0) return lines;
  const ranked = [...crossCheck.explanations].sort((a, b) => a.rank - b.rank);
  lines.push('', look.paint.bold('Check next'));
  for (const [index, one] of ranked.slice(0, most).entries()) {
    lines.push(...wrap(`${index + 1}. ${plain(one.check)}`, look.width, 2, 3));
    lines.push(...wrap(plain(one.text), look.width, 5).map((line) => look.paint.dim(line)));
  }
  return lines;
}

/** Energy along the seam, as the code that was named counts it, else both ways. */
function heatLines(
  { heatInput }: NonNullable<Result['crossCheck']>,
  { language = ENGLISH, heatWith = 'both', width }: SaidLook,
): string[] {
  if (heatInput === undefined) return [];
  const shown = inUnitsIn(language);
  const { arcEnergyKjPerMm: without, heatInputKjPerMm: within } = heatInput;
  const said = [
    heatWith === 'efficiency'
      ? null
      : `${shown(without, 'energy')} without thermal efficiency (AWS, ASME)`,
    heatWith === 'no-efficiency'
      ? null
      : `${shown(within, 'energy')} with thermal efficiency 0.8 (EN 1011-1)`,
  ].filter((one) => one !== null);
  return wrap(`Heat input: ${said.join('; ')}.`, width, 4);
}

function judged(
  title: string,
  part: { answer: 'agrees' | 'disagrees' | 'cannot-tell'; text: string },
  look: Look,
): string[] {
  const { paint } = look;
  const marks = {
    agrees: paint.good('✓ agrees'),
    disagrees: paint.bad('✗ DISAGREES'),
    'cannot-tell': paint.warn('? cannot tell'),
  };
  return [`  ${title}: ${marks[part.answer]}`, ...wrap(plain(part.text), look.width, 4)];
}

/** Settings in force, model and steps. */
export function explainLines(result: Result, look: Look): string[] {
  const { settings, model, tool } = result;
  const values = Object.entries(settings.values).map(([key, value]) => `${key} ${String(value)}`);
  return [
    look.paint.bold('How it was done'),
    ...wrap(`${tool.name} ${tool.version}`, look.width, 2, 2),
    ...(model
      ? wrap(`Model ${model.id} ${model.version} (${model.fingerprint})`, look.width, 2)
      : []),
    ...wrap(`Settings ${settings.fingerprint}: ${values.join(', ')}`, look.width, 2, 2),
    ...result.steps.flatMap((one) => wrap(`${one.step}: ${plain(one.detail)}`, look.width, 2, 2)),
  ];
}

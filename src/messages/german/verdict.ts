import type { VerdictParams } from '../rooms/verdict.js';
import type { CatalogueOf } from '../writer.js';

export const VERDICT: CatalogueOf<VerdictParams> = {
  'no-arc-shown': () => 'Nichts in der Aufnahme zeigt einen brennenden Lichtbogen.',
  'plainly-no-arc': ({ heard }) =>
    heard === 'nothing-recorded'
      ? 'Aufgenommen wurde nichts, was lauter ist als das Aufnahmegerät selbst: Das Mikrofon kann aus, abgedeckt oder viel zu leise sein.'
      : `Kein Lichtbogen: Zu hören ist nur ${heard === 'tone' ? 'ein gleichbleibender Ton' : 'ein Brummen'}.`,
  'may-be-an-arc': ({ probability }, write) =>
    `Es kann ein Lichtbogen sein (${write.percent(probability)}), aber Regen, Feuer, Motoren oder Werkzeuge können so klingen; es wird keine Lichtbogenart genannt.`,
  'arc-too-short': () => 'Der Lichtbogen ist zu kurz, um beurteilt zu werden.',
  'arc-unlike-model': () =>
    'Der Lichtbogen gleicht nichts von dem, woran das Modell angepasst wurde; es wird keine Lichtbogenart genannt.',
  'modes-mixed': ({ modes }, write) =>
    `Im Versuch kommen mehrere Lichtbogenarten vor: ${write.and(modes.map(({ mode, shareOfTime }) => `${write.mode(mode)} (${write.percent(shareOfTime)})`))}.`,
  'mode-not-sure': ({ mode, probability }, write) =>
    `Die wahrscheinlichste Lichtbogenart, ${write.mode(mode)}, erreicht nur ${write.percent(probability)}.`,
  'one-of-modes': ({ modes, probability, not }, write) => {
    const out = not.length === 0 ? '' : `; nicht ${write.or(not.map((mode) => write.mode(mode)))}`;
    return `${write.or(modes.map((mode) => write.mode(mode)))} (zusammen ${write.percent(probability)})${out}.`;
  },
  'drop-size-not-audible': ({ probability }, write) =>
    `Freier Tropfenübergang, Tropfengröße nicht hörbar: ${write.or([write.mode('globular'), write.mode('spray')])} (zusammen ${write.percent(probability)}).`,
  'would-settle': ({ tooLoud }) =>
    `Klarheit bringt: ${tooLoud ? 'leiser aussteuern' : 'das Mikrofon näher am Lichtbogen'}, ohne automatische Aussteuerung und Rauschunterdrückung aufnehmen oder die Spannung aufzeichnen.`,
  'run-against-moments': ({ run, moments }, write) =>
    `Der Versuch als Ganzes sieht nach ${write.mode(run)} aus, die meisten Augenblicke aber nach ${write.mode(moments)}.`,
  'mode-held': ({ mode, shareOfTime }, write) =>
    `${write.mode(mode)} über ${write.percent(shareOfTime)} der beurteilten Lichtbogenzeit.`,
  'mode-implausible': ({ why }, write) => `Es wird keine Lichtbogenart genannt. ${write.say(why)}`,
  'input-failed': ({ text }) =>
    `Die Datei ließ sich nicht auswerten. Meldung des Programms auf Englisch: „${text}“`,
};

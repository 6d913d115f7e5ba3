import type { BrowserStep, DoubtParams, LiveParams } from '../rooms/live.js';
import type { CatalogueOf } from '../writer.js';

const STEPS: Readonly<Record<BrowserStep, string>> = {
  autoGainControl: 'Pegelregelung',
  noiseSuppression: 'Rauschunterdrückung',
  echoCancellation: 'Echounterdrückung',
};

function microphone({ off, stillOn, notTold }: LiveParams['microphone-as-asked']): string {
  const list = (head: string, steps: readonly BrowserStep[]): string[] =>
    steps.length === 0 ? [] : [`${head}: ${steps.map((step) => STEPS[step]).join(', ')}`];
  const parts = [
    ...list('aus', off),
    ...list('NOCH AN', stillOn),
    ...list('nicht gesagt', notTold),
  ];
  return `Roher Ton wurde verlangt; der Browser meldet ${parts.join('; ')}.`;
}

export const LIVE: CatalogueOf<LiveParams> = {
  'microphone-as-asked': microphone,
  'microphone-processed': microphone,
  'browser-resampled': ({ deviceHz, usedHz }, write) =>
    `Das Mikrofon läuft mit ${write.plain(deviceHz)} Hz, der Browser gibt den Ton aber mit ${write.plain(usedHz)} Hz weiter.`,
  'tone-in-recording': ({ toneHz, atS }, write) =>
    `Bei ${write.fixed(atS, 1)} s erklangen zwei Töne von ${write.plain(toneHz)} Hz, unter dem beurteilten Frequenzbereich.`,
  'recording-interrupted': (params, write) => {
    if (params.by === 'too-long')
      return `Die Aufnahme wurde nach ${write.plain(params.longestS)} s beendet.`;
    return params.by === 'call'
      ? 'Ein Anruf oder die Bildschirmsperre hat die Aufnahme beendet; was vorher kam, ist behalten und beurteilt.'
      : 'Das Mikrofon wurde während der Aufnahme entzogen; was vorher kam, ist behalten und beurteilt.';
  },
  'live-weld': ({ weld, startedAt }, write) =>
    `Schweißnaht ${write.plain(weld)} eines laufenden Signals; Zeiten zählen ab ihrem ersten Wert, gehört um ${startedAt}.`,
  'live-lost-samples': ({ samples }, write) =>
    `${write.plain(samples)} Werte gingen seit der Schweißnaht davor auf der Leitung verloren.`,
  'live-rows': ({ rateHz, by }, write) =>
    `Zeilen mit ${write.plain(rateHz)} Hz, ${by === 'stated' ? 'wie angegeben' : 'nach den Zeiten der ersten Zeilen'}.`,
};

export const DOUBTS: CatalogueOf<DoubtParams> = {
  'no-mode-stands-out': () => 'In diesem Stück tritt keine Lichtbogenart hervor.',
  'mode-in-doubt': ({ mode, confidence }, write) =>
    `Die Lichtbogenart dieses Stücks ist zweifelhaft: ${write.mode(mode)} mit ${write.fixed(confidence, 2)}.`,
};

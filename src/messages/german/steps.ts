import type { StepParams } from '../rooms/steps.js';
import type { CatalogueOf } from '../writer.js';
import { GERMAN_QUANTITIES } from './glossary.js';

export const STEPS: CatalogueOf<StepParams> = {
  'step-read': ({ quantities, sampleRateHz }, write) =>
    `${quantities.map((one) => GERMAN_QUANTITIES[one]).join(', ')} mit ${write.plain(sampleRateHz)} Hz`,
  'step-features': ({ featureSet, version, of }, write) => {
    const band =
      of === 'sound'
        ? '1,5 kHz bis 12 kHz oder das 0,45-Fache der Abtastrate, Hüllkurve mit 4000 Werten je Sekunde'
        : 'die Messreihe wie abgetastet';
    return `${featureSet} Fassung ${write.plain(version)}, ${band}`;
  },
  'step-arc': ({ arcIntervals }, write) =>
    `${write.plain(arcIntervals)} ${arcIntervals === 1 ? 'Stück' : 'Stücke'} als Lichtbogen genommen`,
  'step-classify': ({ windows, model, version }, write) =>
    `${write.plain(windows)} ruhige Fenster, beurteilt von ${model} ${version}`,
  'step-align': ({ delayS, peakOverRms, nextBest }, write) => {
    const peak = `Spitze beim ${write.fixed(peakOverRms, 1)}-Fachen des Effektivwerts aller Verschiebungen, die nächste bei ${write.percent(nextBest)} davon`;
    return delayS === null
      ? `nicht gefunden; ${peak}`
      : `Ton ${write.fixed(delayS, 4)} s nach der Messreihe; ${peak}`;
  },
  'step-pool': ({ soundWeight, traceWeight, featureSet }, write) =>
    `Gewichte: Ton ${write.plain(soundWeight)}, Messreihe (${featureSet}) ${write.plain(traceWeight)}`,
};

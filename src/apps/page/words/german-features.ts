import { comma } from './german-numbers.js';
import { TRACE_MEANINGS } from './german-trace-features.js';

/** What each feature of a sound means, by its identity in the result. */
const SOUND_MEANINGS: Readonly<Record<string, string>> = {
  lineRate: 'Takt des stärksten Schlagens der Lautheit',
  lineProminence: 'Deutlichkeit des stärksten Takts',
  lineSharpness: 'wie uhrwerkhaft das stärkste Schlagen ist',
  lineShare: 'Anteil des stärksten Schlagens an der Schwankung',
  lineHarmonics: 'Obertöne des stärksten Schlagens',
  fastLineProminence: 'Deutlichkeit des stärksten Schlagens über 60 Hz',
  fastLineRate: 'Takt des stärksten Schlagens über 60 Hz',
  slowLineProminence: 'Deutlichkeit des stärksten Schlagens unter 60 Hz',
  steadyLineRate: 'Takt des Schlagens, das über Sekunden steht',
  steadyLineProminence: 'Deutlichkeit des Schlagens, das über Sekunden steht',
  onsetRate: 'plötzliche Anstiege der Lautheit je Sekunde',
  onsetIntervalCv: 'Unregelmäßigkeit der Zeit zwischen plötzlichen Anstiegen',
  onsetDispersion: 'Ungleichmäßigkeit der Zahl plötzlicher Anstiege',
  onsetStrength: 'Plötzlichkeit der schärfsten Anstiege',
  strongOnsetRate: 'Knacken und Knallen weit über dem Zischen, je Sekunde',
  commonRise: 'Plötzlichkeit gewöhnlicher Anstiege',
  rateDisagreement: 'Abstand zweier Zählungen der Ereignisse',
  kurtosis: 'Impulshaltigkeit des Tons',
  envelopeCv: 'Streuung der Lautheit über ihrem Mittel',
  loudOverMiddle: 'laute Momente (95. Perzentil) über dem Median',
  middleOverQuiet: 'mittlere Lautheit über leisen Momenten (5. Perzentil)',
  onsetRise: 'wie weit ein Ereignis über dem Moment davor steht',
  onsetDecaySoon: 'Anteil eines Ereignisses, der nach 1 bis 2 ms vorbei ist',
  onsetDecayLate: 'Anteil eines Ereignisses, der nach 3 bis 5 ms vorbei ist',
  gapBeforeOnset: 'wie viel leiser es kurz vor einem Ereignis ist als davor',
  riseSkew: 'wie viel schneller die Lautheit hochspringt als abfällt',
  flatness: 'Ebenheit des Spektrums im Frequenzbereich',
  centroid: 'Schwerpunkt des Spektrums über 300 Hz',
  spread: 'Breite des Spektrums über 300 Hz',
  spectralCrest: 'wie weit ein einzelner Ton aus dem Frequenzbereich ragt',
  rumbleRatio: '0,3–1 kHz gegen 1,5–6 kHz',
  midRatio: '1–2 kHz gegen 1,5–6 kHz',
  brightRatio: '6–12 kHz gegen 1,5–6 kHz',
  airRatio: '12–18 kHz gegen 1,5–6 kHz',
};

const BANDED = /^(modulation|coherence)([\d.]+)to([\d.]+)$/;

/** A reason in German, or null where the feature is not known here. The value is that of the result. */
export function germanReason(feature: string, text: string): string | null {
  const meaning = SOUND_MEANINGS[feature] ?? TRACE_MEANINGS[feature] ?? banded(feature);
  const value = /: ([^:]*)$/.exec(text)?.[1];
  if (meaning === undefined || value === undefined) return null;
  const said = value
    .replace('not shown here', 'hier nicht zu sehen')
    .replace('(ratio)', '(Verhältnis)')
    .replace('octaves', 'Oktaven');
  return `${meaning}: ${comma(said)}`;
}

function banded(feature: string): string | undefined {
  const found = BANDED.exec(feature);
  if (!found) return undefined;
  const [, kind, low, high] = found;
  return kind === 'modulation'
    ? `wie stark die Lautheit bei ${comma(low ?? '')} bis ${high} Hz schwankt`
    : `wie weit untere und obere Hälfte des Bandes bei ${comma(low ?? '')} bis ${high} Hz gemeinsam schwanken`;
}

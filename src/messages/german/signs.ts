import type { SignParams, SoundFeature, SoundSign, TraceFeature } from '../rooms/signs.js';
import type { CatalogueOf, Writer } from '../writer.js';

const SOUND: Readonly<Record<SoundFeature, string>> = {
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

const TRACE: Readonly<Record<TraceFeature, string>> = {
  shortRateHz: 'Kurzschlüsse mit Werkstoffübergang je Sekunde',
  allShortsRateHz: 'alle Kurzschlüsse je Sekunde, Berührungen mitgezählt',
  incipientShare: 'Anteil der Kurzschlüsse, die nur Berührungen sind',
  shortShare: 'Anteil der Zeit im Kurzschluss',
  shortDurationS: 'mittlere Dauer eines Kurzschlusses (Median)',
  shortDurationCv: 'Ungleichmäßigkeit der Dauern',
  shortIntervalCv: 'Ungleichmäßigkeit der Zeit von Kurzschluss zu Kurzschluss',
  arcTimeS: 'mittlere Brennzeit zwischen Kurzschlüssen (Median)',
  shortDepthV: 'wie weit die Spannung im Kurzschluss fällt',
  arcSdV: 'Streuung der Spannung außerhalb von Kurzschlüssen',
  arcSpreadV: 'Spannung außerhalb von Kurzschlüssen: 95. minus 5. Perzentil',
  arcSkewness: 'Neigung der Lichtbogenspannung zu hohen (+) oder niedrigen (−) Werten',
  arcKurtosis: 'Wölbung der Lichtbogenspannung: 0 wie eine Glocke, hoch bei seltenen Sprüngen',
  slowFluctuationV: 'Wandern der Lichtbogenspannung unter etwa 45 Hz',
  midFluctuationV: 'Schwankung von 60 bis 1200 Hz ohne Netzlinien',
  highFluctuationV: 'Schwankung von 1200 bis 2400 Hz',
  stepNoiseV: 'Rauschen der Lichtbogenspannung in Millisekundenschritten',
  stepTilt: 'scharfe Anstiege gegen langsames Fallen; über 1 lösen sich Tropfen',
  dropStepRateHz: 'Stufen der Lichtbogenspannung nach oben je Sekunde',
  dropStepV: 'mittlere Höhe dieser Stufen (Median)',
  dropStepCv: 'Ungleichmäßigkeit der Zeit zwischen diesen Stufen',
  lineRateHz: 'stärkster Takt der Lichtbogenspannung neben Netz und Impulsen',
  lineProminence: 'Deutlichkeit dieses Takts',
  lineTonalShare: 'Anteil dieses Takts, der genau eine Frequenz ist',
  mainsRippleV: 'Welligkeit bei Vielfachen der Netzfrequenz',
  pulseRateHz: 'Impulse der Stromquelle je Sekunde, 0 ohne Impulse',
  pulseSwingV: 'oberer minus unterer Pegel der Lichtbogenspannung',
  pulseSeparation: 'wie sauber die Lichtbogenspannung zwei Pegel hält',
  pulseDutyShare: 'Anteil der Zeit im oberen Pegel',
  pulseClockCv: 'Ungleichmäßigkeit der Zeit von Anstieg zu Anstieg',
  currentCv: 'Streuung des Stroms über seinem Mittel',
  currentSkewness: 'Neigung des Stroms zu hohen Werten',
  currentHighRatio: '95. Perzentil des Stroms über seinem Mittel',
  currentLowRatio: '5. Perzentil des Stroms über seinem Mittel',
  currentSlowShare: 'Wandern des Stroms unter etwa 45 Hz über seinem Mittel',
  currentLineHz: 'stärkster Takt des Stroms',
  currentLineProminence: 'Deutlichkeit dieses Takts',
  currentLineTonalShare: 'Anteil dieses Takts, der genau eine Frequenz ist',
  currentPulseRateHz: 'Impulse des Stroms je Sekunde, 0 ohne Impulse',
  currentSwingShare: 'oberer minus unterer Pegel des Stroms über seinem Mittel',
  currentSeparation: 'wie sauber der Strom zwei Pegel hält',
  currentDutyShare: 'Anteil der Zeit im oberen Pegel des Stroms',
  currentClockCv: 'Ungleichmäßigkeit der Zeit von Anstieg zu Anstieg des Stroms',
  arcCurrentCv: 'Streuung des Stroms außerhalb von Kurzschlüssen über seinem Mittel',
  shortOverArcCurrent: 'Strom im Kurzschluss gegen Strom im Lichtbogen',
  breakOverArcCurrent: 'Strom am Ende des Kurzschlusses gegen Strom im Lichtbogen',
  leastOverStartCurrent:
    'kleinster Strom im Kurzschluss gegen den bei Berührung; unter 1, wo die Stromquelle ihn senkt',
  currentRisePerS: 'Anstieg des Stroms im Kurzschluss gegen den Strom im Lichtbogen',
  arcSlopeOhm: 'Steigung der Spannung über dem Strom im Lichtbogen',
  arcCorrelation: 'Gleichlauf von Spannung und Strom im Lichtbogen',
};

/** A sign in words, with its value. */
const USUAL: Readonly<
  Record<SoundSign, (value: string, spacing: 'even' | 'uneven' | null) => string>
> = {
  crackRateHz: (value, spacing) => {
    const how =
      spacing === null ? '' : `, in ${spacing === 'even' ? 'gleichen' : 'ungleichen'} Abständen`;
    return `${value} scharfe Knacker je Sekunde${how}`;
  },
  crackSpacingCv: (value) => `Zeit von Knacker zu Knacker schwankt um ${value}`,
  beatRateHz: (value) => `gleichmäßiges Schlagen, ${value} je Sekunde`,
  beatClearness: (value) => `deutlichstes Schlagen steht ${value}-fach über dem Übrigen`,
  quietMomentsDb: (value) => `leise Augenblicke ${value} dB unter der Mitte`,
  loudMomentsDb: (value) => `laute Augenblicke ${value} dB über der Mitte`,
  slowSwingShare: (value) => `Lautheit schwankt langsam, 4- bis 25-mal je Sekunde, um ${value}`,
  fastSwingShare: (value) => `Lautheit schwankt schnell, 60- bis 400-mal je Sekunde, um ${value}`,
};

export const SIGNS: CatalogueOf<SignParams> = {
  'sound-feature': ({ feature }) => SOUND[feature],
  'band-modulation': ({ lowHz, highHz }, write) =>
    `wie stark die Lautheit bei ${write.plain(lowHz)} bis ${write.plain(highHz)} Hz schwankt`,
  'band-coherence': ({ lowHz, highHz }, write) =>
    `wie weit untere und obere Hälfte des Frequenzbereichs bei ${write.plain(lowHz)} bis ${write.plain(highHz)} Hz gemeinsam schwanken`,
  'trace-feature': ({ feature }) => TRACE[feature],
  'usual-sign': ({ sign, value, spacing, mode, low, high, fits, others }, write) => {
    const said = USUAL[sign](usualValue(sign, value, write), spacing);
    const range = `${usualValue(sign, low, write)} bis ${usualValue(sign, high, write)}`;
    const named = write.or(others.map((one) => write.mode(one)));
    return fits
      ? `${said}: üblich bei ${write.mode(mode)} (${range}), nicht bei ${named}`
      : `${said}: unüblich bei ${write.mode(mode)} (${range}), eher bei ${named}; es zählt der ganze Ton`;
  },
  sign: ({ feature, value, unit }, write) =>
    `${write.say(feature)}: ${valueText(value, unit, write)}`,
};

function usualValue(sign: SoundSign, value: number, write: Writer): string {
  return sign.endsWith('Share') || sign.endsWith('Cv')
    ? write.percent(value)
    : write.figures(value, 2);
}

function valueText(value: number | null, unit: string, write: Writer): string {
  if (value === null) return 'hier nicht zu sehen';
  if (unit === 'log10') return `${write.figures(10 ** value, 3)} (Verhältnis)`;
  if (unit === 'log2 Hz') return `${write.figures(2 ** value, 3)} Hz`;
  if (unit === 'octaves') return `${write.figures(value, 3)} Oktaven`;
  return unit === '1' ? write.figures(value, 3) : `${write.figures(value, 3)} ${unit}`;
}

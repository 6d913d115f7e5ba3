import type { EvidenceParams } from '../rooms/evidence.js';
import type { CatalogueOf, Writer } from '../writer.js';
import { AT_FEEDER } from './glossary.js';
import { PLACES, STATUS } from './names.js';

const whole = (value: number, write: Writer): string => write.plain(Math.round(value));

const PROGRAMMES = {
  pulsed: 'Die Aufnahme zeigt ein Impulsprogramm.',
  steady: 'Die Aufnahme zeigt eine ungepulste Stromquelle.',
  'controlled-dip': 'Die Aufnahme zeigt ein Programm mit geregeltem Kurzschluss.',
} as const;

const POLARITY = {
  dcep: 'Drahtelektrode am Pluspol',
  dcen: 'Drahtelektrode am Minuspol',
  ac: 'Wechselstrom',
} as const;

export const EVIDENCE: CatalogueOf<EvidenceParams> = {
  'other-wire-draws': ({ diameterMm }, write) =>
    `Draht von ${write.inUnits(diameterMm, 'diameter')} zöge bei diesem Vorschub diesen Strom.`,
  'spray-and-shorts': ({ sprayShare, shortShare }, write) =>
    `${write.percent(sprayShare)} der Zeit Sprühlichtbogen, ${write.percent(shortShare)} Kurzschlüsse.`,
  'voltage-lacking': ({ lackingV }, write) =>
    `Die Spannung liegt ${write.fixed(lackingV, 1)} V unter der genormten Lastlinie bei diesem Strom.`,
  'result-is': ({ status }) => `Das Ergebnis lautet: ${STATUS[status]}.`,
  'confidence-is': ({ confidence }, write) => `Die Sicherheit ist ${write.percent(confidence)}.`,
  'doubt-about-recording': ({ doubt, shareOfRecording }, write) =>
    `${write.say(doubt)} (${write.percent(shareOfRecording)} der Aufnahme)`,
  'mode-named-all-the-same': () => 'Die Lichtbogenart wurde trotzdem mit guter Sicherheit genannt.',
  'named-with-confidence': ({ confidence }, write) =>
    `Die Lichtbogenart wurde mit ${write.percent(confidence)} Sicherheit genannt.`,
  'mode-was-seen': ({ mode }, write) => `${write.mode(mode)} wurde erkannt.`,
  'programme-shown': ({ programme }) => PROGRAMMES[programme],
  'programme-not-told': ({ whose }) =>
    whose === 'source'
      ? 'Das Programm der Stromquelle selbst war nicht zu erkennen.'
      : 'Das Programm der Stromquelle war aus dieser Aufnahme nicht zu erkennen.',
  'pulses-a-second': ({ rateHz }, write) => `Impulse: ${write.fixed(rateHz, 1)} je Sekunde.`,
  'slope-stated': ({ slopeVPer100A, usualVPer100A }, write) =>
    `Angegeben ist eine Neigung der Kennlinie von ${write.short(slopeVPer100A, 1)} V je 100 A; bis ${write.short(usualVPer100A, 1)} V sind für dieses Verfahren übliche Praxis.`,
  'slope-not-known': () => 'Die Neigung der Kennlinie der Stromquelle ist nicht bekannt.',
  'voltage-loss': ({ from, to, fromV, toV, lostV, usualV }, write) => {
    const usual = `üblich sind ${write.fixed(usualV.min, 1)}–${write.fixed(usualV.max, 1)} V`;
    return `${write.fixed(fromV, 1)} V ${PLACES[from]}, ${write.fixed(toV, 1)} V ${PLACES[to]}: ${write.fixed(lostV, 1)} V verloren, ${usual}`;
  },
  'terminal-volts-unknown': () =>
    'Die Spannung an den Klemmen der Stromquelle ist nicht bekannt: Sie kann einbrechen.',
  'terminal-volts-not-measured': () =>
    'Die Spannung an den Klemmen der Stromquelle wurde nicht gemessen.',
  'cable-length-taken': ({ lengthM }, write) =>
    `Die Leitungslänge ist nicht angegeben; angenommen wurden ${write.inUnits(lengthM, 'cable')}.`,
  'cable-length-not-known': () => 'Die Länge der Leitungen ist nicht bekannt.',
  'voltage-span': ({ feederV }, write) => `Die Spanne reicht über ${write.span(feederV)} V.`,
  'point-voltage': ({ feederV }, write) => `${write.span(feederV)} V ${AT_FEEDER}`,
  'point-current': ({ currentA }, write) => `${write.span(currentA, 0)} A`,
  'no-measured-backing': () => 'Keine gemessene Spannung stützt das.',
  'no-measured-confirming': () => 'Keine gemessene Spannung bestätigt die eingestellte.',
  'measured-above-set': () => 'Die gemessene Spannung liegt über der eingestellten.',
  'measured-fits-set': () => 'Die gemessene Spannung passt zur eingestellten.',
  'volts-above-limit': ({ volts, aboveV, limitV }, write) =>
    `${write.fixed(volts, 1)} V liegen ${write.fixed(aboveV, 1)} V über ${write.short(limitV, 1)} V, wo die Lichtbogenart endet.`,
  'volts-below-limit': ({ volts, belowV, limitV }, write) =>
    `${write.fixed(volts, 1)} V liegen ${write.fixed(belowV, 1)} V unter ${write.short(limitV, 1)} V, wo die Lichtbogenart beginnt.`,
  'voltage-surplus': ({ surplusV }, write) =>
    `Die Spannung liegt ${write.fixed(surplusV, 1)} V über dem, was bei diesem Strom üblich ist.`,
  'voltage-not-low': () => 'Die Spannung ist für den Strom nicht niedrig.',
  'current-for-feed': ({ measuredA, expectedA }, write) =>
    `${whole(measuredA, write)} A gemessen, ${write.span(expectedA, 0)} A für den Drahtvorschub erwartet`,
  'current-estimated': () => 'Der Strom ist aus dem Drahtvorschub geschätzt, nicht gemessen.',
  'current-below-transition': ({ currentA, missingA }, write) =>
    `${whole(currentA, write)} A liegen mindestens ${whole(missingA, write)} A unter der kritischen Stromstärke.`,
  'no-measured-current': () => 'Kein gemessener Strom zeigt es.',
  'stick-out-would-explain': ({ stickOutMm }, write) =>
    `Ein freies Drahtende von etwa ${write.inUnits(stickOutMm, 'length')} würde es erklären.`,
  'stick-out-too-long': ({ stickOutMm }, write) =>
    `Dazu wären ${write.inUnits(stickOutMm, 'length')} nötig, länger, als jemand schweißt.`,
  'stick-out-stated': ({ stickOutMm, usualMm }, write) =>
    `Angegeben sind ${write.inUnits(stickOutMm, 'length')}; üblich sind ${write.inUnits(usualMm, 'length')}.`,
  'stick-out-explains-too': () => 'Auch ein längeres freies Drahtende erklärt den Strom.',
  'no-stick-out-explains': () => 'Kein übliches freies Drahtende erklärt einen so niedrigen Strom.',
  'feed-draws': ({ nowA, usualA, usualMm, sprayA }, write) =>
    `Der Drahtvorschub zieht so etwa ${whole(nowA, write)} A, bei ${write.inUnits(usualMm, 'length')} wären es ${whole(usualA, write)} A; der Sprühlichtbogen beginnt bei etwa ${whole(sprayA, write)} A.`,
  'feed-and-wire-unknown': () =>
    'Ohne Drahtvorschub und Draht bleibt offen, wie viel Strom das kostet.',
  'polarity-stated': ({ polarity }) => `Angegebene Polung: ${POLARITY[polarity]}.`,
  'positive-stated': () => 'Angegeben ist die Drahtelektrode am Pluspol.',
  'some-report-spray': () =>
    'Einige Quellen berichten in einem solchen Gas durchaus von einem Sprühlichtbogen.',
  'taught-highest-mode': () =>
    'Gelehrt wird „der höchste Bereich“ von Draht 0,045 in (1,14 mm) in CO2 bei 28–30 V (übliche Praxis, ohne Quelle); Veröffentlichungen nennen das keinen axialen Sprühlichtbogen.',
  'measured-in-spray': () =>
    'Gemessene Spannung und gemessener Strom liegen beide im Bereich des Sprühlichtbogens.',
  'point-estimated': () => 'Spannung oder Strom sind geschätzt, nicht gemessen.',
  'shorts-last': ({ meanS }, write) =>
    `Kurzschlüsse dauern im Mittel ${write.fixed(meanS * 1000, 1)} ms; üblich sind wenige Millisekunden.`,
  'shorts-a-second': ({ rateHz }, write) => `${whole(rateHz, write)} Kurzschlüsse je Sekunde.`,
  'shorts-missing': () => 'Kurzschlüsse waren gewünscht und fehlen.',
  'short-rate-wanders': ({ cv }, write) =>
    `Die Zahl der Kurzschlüsse schwankt von Sekunde zu Sekunde (Variationskoeffizient ${write.fixed(cv, 2)}).`,
  'short-rate-steady': ({ cv }, write) =>
    `Die Zahl der Kurzschlüsse ist von Sekunde zu Sekunde gleichmäßig (${write.fixed(cv, 2)}).`,
  'shorts-uneven': ({ cv }, write) =>
    `Die Kurzschlüsse kommen ungleichmäßig (Variationskoeffizient ${write.fixed(cv, 2)}).`,
  'mode-changes': ({ changes }, write) =>
    `Die Lichtbogenart wechselte ${write.plain(changes)}-mal.`,
  'nothing-wanders': () => 'Nichts schwankt: Zumindest der Drahtvorschub ist gleichmäßig.',
  'lasting-change': ({ atS }, write) => `Ein Wechsel auf Dauer bei ${write.fixed(atS, 1)} s.`,
  'setup-forbids-mode': ({ mode }, write) => `Die Einstellung lässt keinen ${write.mode(mode)} zu.`,
  'possible-with-good-gas': ({ mode }, write) =>
    `Die Einstellung liegt so, dass ein ${write.mode(mode)} auch mit gutem Schutzgas möglich ist.`,
  'torch-or-feed-alike': () =>
    'Ein geänderter Brennerabstand oder Drahtvorschub in diesem Augenblick sähe genauso aus.',
  'run-changes-modes': () => 'Die Lichtbogenart wechselt im Versuch selbst.',
  'run-keeps-mode': () => 'Der Versuch bleibt bei einer Lichtbogenart.',
};

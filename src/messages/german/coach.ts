import type { MessageParams } from '../params.js';
import type { CoachParams, ProcessOutcome } from '../rooms/coach.js';
import type { Span } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const OUTCOMES: Readonly<Record<ProcessOutcome, string>> = {
  stubbing: 'stoßender Draht',
  dip: 'Kurzlichtbogen',
  globular: 'Übergangslichtbogen',
  'spray-with-shorts': 'Sprühen mit Kurzschlüssen',
  spray: 'Sprühlichtbogen',
  'long-arc': 'langer Lichtbogen',
  'burn-back': 'zurückbrennender Draht',
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function steps({ min, max }: Span, write: Writer): string {
  const [low, high] = [write.short(min, 1), write.short(max, 1)];
  return low === high ? `${low} V` : `${low} bis ${high} V`;
}

/** `2 bis 4,5 V höher`. */
function move({ min, max }: Span, write: Writer): string {
  if (min >= 0) return `${steps({ min, max }, write)} höher`;
  if (max <= 0) return `${steps({ min: -max, max: -min }, write)} tiefer`;
  return `bis zu ${write.short(Math.max(max, -min), 1)} V ${max > -min ? 'höher' : 'tiefer'}`;
}

function feed(mPerMin: Span | null, currentA: Span, write: Writer): string {
  const amps = `${write.span(currentA, 0)} A`;
  return mPerMin === null ? amps : `${write.inUnits(mPerMin, 'feed')} (${amps})`;
}

/** What is to be expected of a set-up, and what to change. */
export const COACH: CatalogueOf<CoachParams> = {
  'most-likely': ({ outcome, inTen, next, dialV }, write) => {
    const head = `Am ehesten ${OUTCOMES[outcome]} (${write.plain(inTen)} von 10)`;
    if (next === null) return `${head}.`;
    const other = OUTCOMES[next.outcome];
    if (dialV !== null && dialV > next.atV) {
      const loss = `${write.short(dialV - next.atV, 1)} V`;
      const more = next.side === 'below' ? 'mehr' : 'weniger';
      return `${head}; ${other}, wenn zwischen Drehknopf und Vorschubgerät ${more} als ${loss} verloren gehen.`;
    }
    const side = next.side === 'below' ? 'unter' : 'über';
    return `${head}; ${other} ${side} ${write.fixed(next.atV, 1)} V am Vorschubgerät.`;
  },
  'outcome-chance': ({ outcome, chance, inTen, flipsAtV, likeliest }, write) => {
    const words = {
      permitted: 'möglich',
      unlikely: 'unwahrscheinlich',
      'not-possible': 'hier nicht möglich',
    };
    const share = chance === 'not-possible' ? '' : ` (${write.plain(inTen)} von 10)`;
    const at = flipsAtV === null ? '' : `${write.fixed(flipsAtV, 1)} V`;
    const flip = at === '' ? '' : likeliest ? `, bis ${at}` : `; ab ${at} am wahrscheinlichsten`;
    return `${capital(OUTCOMES[outcome])}: ${words[chance]}${share}${flip}.`;
  },
  'expected-losses': ({ lossV }, write) =>
    `Zwischen Drehknopf und Vorschubgerät sind bei diesem Strom ${write.span(lossV)} V zu erwarten.`,
  'move-volts': ({ wanted, trouble, byV, targetV }, write) =>
    `Zu ${trouble === 'too-cold' ? 'kalt' : 'heiß'} für ${write.mode(wanted)}: bei diesem Vorschub ${move(byV, write)} (${write.span(targetV)} V am Vorschubgerät).`,
  'move-feed': ({ up, feedMPerMin, currentA, instead }, write) =>
    `${instead ? 'Oder den' : 'Den'} Drahtvorschub bei dieser Spannung auf ${feed(feedMPerMin, currentA, write)} ${up ? 'erhöhen' : 'senken'}.`,
  'move-both': ({ up, feedMPerMin, currentA, targetV }, write) =>
    `Den Drahtvorschub auf ${feed(feedMPerMin, currentA, write)} ${up ? 'erhöhen' : 'senken'}, mit ${write.span(targetV)} V am Vorschubgerät: Eines allein genügt nicht.`,
  'settings-suit': ({ wanted, inTen, targetV }, write) =>
    `Die Einstellung passt zu ${write.mode(wanted)} (${write.plain(inTen)} von 10); bei diesem Strom liegt er bei ${write.span(targetV)} V am Vorschubgerät.`,
  'look-before-moving': ({ wanted }, write) =>
    `Die Einstellung passt zu ${write.mode(wanted)}, gekommen ist anderes: erst die Ursache finden, dann verstellen.`,
  'measure-first': ({ wanted, targetV }, write) =>
    `Zuerst während des Schweißens die Spannung am Vorschubgerät messen: ${write.mode(wanted)} liegt dort bei ${write.span(targetV)} V.`,
  'gas-carries-spray': ({ gas }, write) => `Das Gas trägt den Sprühlichtbogen: ${write.gas(gas)}.`,
  'gas-never-carries': ({ wanted, gas, nearestGas }, write) =>
    `Keine Einstellung gibt ${write.mode(wanted)} in ${write.gas(gas)}.${nearestGas === null ? '' : ` Am nächsten liegt ${nearestGas}.`} In diesem Gas gehen Kurz- und Übergangslichtbogen.`,
  'gas-without-source': ({ wanted, gas, nearestGas }, write) =>
    `Keine Quelle, die hier gelesen wurde, gibt ${write.mode(wanted)} in ${write.gas(gas)}: Er ist nicht zu erwarten.${nearestGas === null ? '' : ` Am nächsten liegt ${nearestGas}.`}`,
  'wire-without-rows': ({ wanted, sizesMm }, write) =>
    `Für ${write.mode(wanted)} ist mit diesem Draht kein Strom hinterlegt; hinterlegt sind ${write.inUnits(sizesMm, 'diameter')}.`,
  'source-cannot-pulse': () =>
    'Eine Stromquelle ohne Impulse gibt keinen Impulslichtbogen; am nächsten liegt der Sprühlichtbogen oberhalb des Übergangsstroms.',
  'polarity-first': () =>
    'Alles hier gilt für den Draht am Pluspol: erst nach der Polung sehen, dann nach der Einstellung.',
  'pulse-by-programme': () =>
    'Der Impulslichtbogen ist Sache des Programms der Stromquelle für Draht und Gas, nicht eines Platzes in Spannung und Vorschub.',
  'no-settings-held': ({ wanted }, write) =>
    `Für ${write.mode(wanted)} sind mit diesem Draht und Gas weder Spannung noch Vorschub hinterlegt.`,
  'set-like-this': ({ feedMPerMin, currentA, feederV, inTen }, write) =>
    `${feedMPerMin === null ? '' : `${write.inUnits(feedMPerMin, 'feed')}, `}etwa ${write.fixed(currentA, 0)} A, ${write.span(feederV)} V am Vorschubgerät (${write.plain(inTen)} von 10).`,
  'keep-stick-out': ({ stickOutMm }, write) =>
    `Freies Drahtende ${write.inUnits(stickOutMm, 'length')}.`,
  'windows-published': ({ published }) =>
    published
      ? 'Die Ströme liegen in veröffentlichten Bereichen für diesen Draht und dieses Gas.'
      : 'Für genau diesen Draht und dieses Gas ist kein veröffentlichter Bereich hinterlegt: Die Ströme sind errechnet.',
  'heat-input-lacks': ({ volts, amps }, write) =>
    `Eine Schweißgeschwindigkeit ist angegeben; für die Wärmeeinbringung fehlen ${write.and([volts ? 'Spannung' : '', amps ? 'Strom' : ''].filter((one) => one !== ''))}.`,
  'plate-changes-nothing': () =>
    'Eine Blechdicke ist angegeben; sie ändert hier nichts, denn sie zählt nur beim Kurzlichtbogen auf dickem Blech.',
  'map-only-wire': () =>
    'Von diesem Draht sind wenige veröffentlichte Zeilen hinterlegt, und keine Aufnahme von ihm wird beurteilt; bei Metallpulver-Fülldraht liegen sie 5 V auseinander.',
  'state-wire-and-gas': () =>
    'Drahtdurchmesser und Gas angeben: Ohne sie lassen sich keine Einstellungen nennen.',
  'inside-procedure': () => 'Nur so weit, wie es die qualifizierte Schweißanweisung erlaubt.',
};

const BY_WHOM = 'feste Messgeräte oder isolierte Leitungen, eine Fachkraft, keine Abdeckung öffnen';
const PROCEDURE = 'mit der qualifizierten Schweißanweisung vergleichen';

type Elsewhere =
  | 'measured-above-dial'
  | 'even-dip-like-pulses'
  | 'cold-spray'
  | 'hot-dip'
  | 'wrong-wire'
  | 'voltage-lacking'
  | 'spray-and-shorts'
  | 'other-wire-draws'
  | 'gas-word-read-as'
  | 'check-volts-for-feed'
  | 'check-spool'
  | 'check-leads'
  | 'check-source-terminals'
  | 'check-feed'
  | 'check-feeder-voltage'
  | 'caution-procedure-first'
  | 'caution-measuring';

/** What the coach added to other rooms, or says more safely there. */
export const COACH_ELSEWHERE: CatalogueOf<Pick<MessageParams, Elsewhere>> = {
  'measured-above-dial': ({ setV, measuredV }, write) =>
    `Gemessen sind ${write.fixed(measuredV, 1)} V, eingestellt ${write.short(setV, 1)} V: Kein Verlust erhöht eine Spannung.`,
  'even-dip-like-pulses': () =>
    'Spannung und Strom sind die eines Kurzlichtbogens: Eine Stromquelle, die jeden Kurzschluss steuert, schlägt so gleichmäßig wie Impulse.',
  'cold-spray': ({ shorts }) =>
    shorts
      ? 'Etwas zu kalt für den Sprühlichtbogen: Die Tropfen berühren das Schmelzbad, ehe sie sich vom Draht lösen.'
      : 'Zu kalt für den Sprühlichtbogen: Der Strom reichte, die Spannung nicht.',
  'hot-dip': () =>
    'Zu heiß für den Kurzlichtbogen bei diesem Vorschub: Der Draht erreicht das Schmelzbad nicht mehr.',
  'wrong-wire': ({ thicker }) =>
    `Der Vorschub zieht ${thicker ? 'mehr' : 'weniger'} Strom, als der angegebene Draht zöge, wie es ein ${thicker ? 'dickerer' : 'dünnerer'} tut.`,
  'voltage-lacking': ({ lackingV }, write) =>
    `Die Spannung liegt ${write.fixed(lackingV, 1)} V unter der genormten Lastlinie bei diesem Strom.`,
  'spray-and-shorts': ({ sprayShare, shortShare }, write) =>
    `${write.percent(sprayShare)} der Zeit Sprühlichtbogen, ${write.percent(shortShare)} Kurzschlüsse.`,
  'other-wire-draws': ({ diameterMm }, write) =>
    `Draht von ${write.inUnits(diameterMm, 'diameter')} zöge bei diesem Vorschub diesen Strom.`,
  'gas-word-read-as': ({ stated, gas }, write) =>
    `„${stated}“ wurde als ${write.gas(gas)} gelesen, wie es meist gemeint ist; das Flaschenschild lesen.`,
  'check-volts-for-feed': ({ voltsGiven }) =>
    voltsGiven
      ? `Den Drahtvorschub über eine gemessene Länge mit der Uhr messen und mit der gemessenen Spannung zusammen ${PROCEDURE}.`
      : `Während des Schweißens die Spannung am Vorschubgerät ablesen (${BY_WHOM}), den Drahtvorschub mit der Uhr messen und beides ${PROCEDURE}.`,
  'check-spool': () =>
    'Bei ausgeschalteter Stromquelle den Draht selbst mit dem Messschieber messen und das Schild der Spule lesen.',
  'check-leads': () =>
    `Während des Schweißens die Spannung an der Stromquelle und am Vorschubgerät ablesen lassen (${BY_WHOM}). Bei ausgeschalteter Stromquelle Werkstückklemme, Leitungsanschlüsse, Schlauchpaket und Kontaktrohr ansehen.`,
  'check-source-terminals': () =>
    `Während des Schweißens die Spannung am Ausgang der Stromquelle ablesen lassen (${BY_WHOM}) und nachsehen, ob sie mit Konstantspannung läuft und alle Netzphasen anliegen.`,
  'check-feed': () =>
    'Zehn Sekunden Draht einfädeln, den Brenner weg von Werkstück und Menschen (der Taster legt Spannung an den Draht), messen oder wiegen und mit dem angegebenen Drahtvorschub vergleichen; Vorschubrollen, Drahtführungsseele, Kontaktrohr und Spulenbremse ansehen.',
  'check-feeder-voltage': () =>
    `Während des Schweißens die Spannung am Vorschubgerät ablesen (${BY_WHOM}) und zusammen mit der Messstelle angeben.`,
  'caution-procedure-first': () =>
    'Der qualifizierten Schweißanweisung folgen: keine Einstellung außerhalb.',
  'caution-measuring': () =>
    'Schutz tragen, lüften; auf Strahlung, Strom und Lärm achten. Vorschriften zuerst.',
};

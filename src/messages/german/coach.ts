import { capital } from '../../core/index.js';
import type { CoachParams, ProcessOutcome } from '../rooms/coach.js';
import type { Span } from '../terms.js';
import type { CatalogueOf, Writer } from '../writer.js';

const MODE_OF = { dip: 'short-circuit', globular: 'globular', spray: 'spray' } as const;

/** Outcomes that are no mode of their own. */
const OUTCOMES: Readonly<Record<Exclude<ProcessOutcome, keyof typeof MODE_OF>, string>> = {
  stubbing: 'stoßender Draht',
  'spray-with-shorts': 'Sprühen mit Kurzschlüssen',
  'long-arc': 'langer Lichtbogen',
  'burn-back': 'zurückbrennender Draht',
};

/** An outcome by the reader's name of the mode, where it is one. */
const named = (outcome: ProcessOutcome, write: Writer): string =>
  outcome === 'dip' || outcome === 'globular' || outcome === 'spray'
    ? write.mode(MODE_OF[outcome])
    : OUTCOMES[outcome];

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
  'most-likely': ({ outcome, inTen, alike = null, next, dialV }, write) => {
    const one = named(outcome, write);
    const head =
      alike === null
        ? `Am ehesten ${one} (${write.plain(inTen)} von 10)`
        : `Entweder ${one} oder ${named(alike, write)}, beides gleich wahrscheinlich (je ${write.plain(inTen)} von 10)`;
    if (next === null) return `${head}.`;
    const other = named(next.outcome, write);
    if (dialV !== null && dialV > next.atV) {
      const loss = `${write.short(dialV - next.atV, 1)} V`;
      const more = next.side === 'below' ? 'mehr' : 'weniger';
      return `${head}; ${other}, wenn zwischen Drehknopf und Drahtvorschubgerät ${more} als ${loss} verloren gehen.`;
    }
    const side = next.side === 'below' ? 'unter' : 'über';
    const at = `${side} ${write.fixed(next.atV, 1)} V am Drahtvorschubgerät`;
    return next.outcome === alike
      ? `${head}: ${at} ${other}, sonst ${one}.`
      : `${head}; ${other} ${at}.`;
  },
  'outcome-chance': ({ outcome, chance, inTen, flipsAtV, likeliest, alike }, write) => {
    const words = {
      permitted: 'zu erwarten',
      unlikely: 'unwahrscheinlich',
      'not-possible': 'hier nicht möglich',
    };
    const share = chance === 'not-possible' ? '' : ` (${write.plain(inTen)} von 10)`;
    if (alike) return `${capital(named(outcome, write))}: gleich wahrscheinlich${share}.`;
    const at = flipsAtV === null ? '' : `${write.fixed(flipsAtV, 1)} V`;
    const flip = at === '' ? '' : likeliest ? `, bis ${at}` : `; ab ${at} am wahrscheinlichsten`;
    return `${capital(named(outcome, write))}: ${words[chance]}${share}${flip}.`;
  },
  'expected-losses': ({ lossV }, write) =>
    `Zwischen Drehknopf und Drahtvorschubgerät sind bei diesem Strom ${write.span(lossV)} V zu erwarten.`,
  'move-volts': ({ wanted, trouble, byV, targetV }, write) =>
    `Zu ${trouble === 'too-cold' ? 'kalt' : 'heiß'} für ${write.mode(wanted)}: bei diesem Vorschub ${move(byV, write)} (${write.span(targetV)} V am Drahtvorschubgerät).`,
  'move-feed': ({ up, feedMPerMin, currentA, instead }, write) =>
    `${instead ? 'Oder den' : 'Den'} Drahtvorschub bei dieser Spannung auf ${feed(feedMPerMin, currentA, write)} ${up ? 'erhöhen' : 'senken'}.`,
  'move-both': ({ up, feedMPerMin, currentA, targetV }, write) =>
    `Den Drahtvorschub auf ${feed(feedMPerMin, currentA, write)} ${up ? 'erhöhen' : 'senken'}, mit ${write.span(targetV)} V am Drahtvorschubgerät: Eines allein genügt nicht.`,
  'settings-suit': ({ wanted, inTen, targetV }, write) =>
    `Die Einstellung passt zu ${write.mode(wanted)} (${write.plain(inTen)} von 10); bei diesem Strom liegt er bei ${write.span(targetV)} V am Drahtvorschubgerät.`,
  'look-before-moving': ({ wanted }, write) =>
    `Die Einstellung passt zu ${write.mode(wanted)}, gekommen ist anderes: erst die Ursache finden, dann verstellen.`,
  'measure-first': ({ wanted, targetV }, write) =>
    `Zuerst während des Schweißens die Spannung am Drahtvorschubgerät messen: ${write.mode(wanted)} liegt dort bei ${write.span(targetV)} V.`,
  'gas-carries-spray': ({ gas }, write) => `Das Gas trägt den Sprühlichtbogen: ${write.gas(gas)}.`,
  'gas-never-carries': ({ wanted, gas, nearestGas }, write) =>
    `Keine Einstellung gibt ${write.mode(wanted)} in ${write.gas(gas)}.${nearestGas === null ? '' : ` Am nächsten liegt ${nearestGas}.`} In diesem Gas gehen Kurz- und Übergangslichtbogen.`,
  'gas-without-source': ({ wanted, gas, nearestGas }, write) =>
    `Keine Quelle, die hier gelesen wurde, gibt ${write.mode(wanted)} in ${write.gas(gas)}: Er ist nicht zu erwarten.${nearestGas === null ? '' : ` Am nächsten liegt ${nearestGas}.`}`,
  'wire-without-rows': ({ wanted, sizesMm }, write) =>
    `Für ${write.mode(wanted)} ist mit diesem Draht kein Strom hinterlegt; hinterlegt sind ${write.inUnits(sizesMm, 'diameter')}.`,
  'source-cannot-pulse': () =>
    'Eine Stromquelle ohne Impulse gibt keinen Impulslichtbogen; am nächsten liegt der Sprühlichtbogen oberhalb der kritischen Stromstärke.',
  'polarity-first': () =>
    'Alles hier gilt für den Draht am Pluspol: erst nach der Polung sehen, dann nach der Einstellung.',
  'pulse-by-programme': () =>
    'Der Impulslichtbogen ist Sache des Programms der Stromquelle für Draht und Gas, nicht eines Platzes in Spannung und Vorschub.',
  'no-settings-held': ({ wanted }, write) =>
    `Für ${write.mode(wanted)} sind mit diesem Draht und Gas weder Spannung noch Vorschub hinterlegt.`,
  'mixture-decides': ({ wanted, symbol }, write) =>
    `${symbol} umfasst viele Gemische, und an ihnen hängt, ob ein ${write.mode(wanted)} möglich ist: das Gemisch angeben, das auf dem Flaschenschild steht.`,
  'set-like-this': ({ feedMPerMin, currentA, feederV, inTen }, write) =>
    `${feedMPerMin === null ? '' : `${write.inUnits(feedMPerMin, 'feed')}, `}etwa ${write.fixed(currentA, 0)} A, ${write.span(feederV)} V am Drahtvorschubgerät (${write.plain(inTen)} von 10).`,
  'keep-stick-out': ({ stickOutMm }, write) =>
    `Freies Drahtende ${write.inUnits(stickOutMm, 'length')}.`,
  'windows-published': ({ published }) =>
    published
      ? 'Die Ströme liegen in veröffentlichten Bereichen für diesen Draht und dieses Gas.'
      : 'Für genau diesen Draht und dieses Gas ist kein veröffentlichter Bereich hinterlegt: Die Ströme sind errechnet.',
  'heat-input-lacks': ({ volts, amps }, write) =>
    `Eine Schweißgeschwindigkeit ist angegeben; für die Wärmeeinbringung fehlt: ${write.and([volts ? 'Spannung' : '', amps ? 'Strom' : ''].filter((one) => one !== ''))}.`,
  'plate-changes-nothing': () =>
    'Eine Blechdicke ist angegeben; sie ändert hier nichts, denn sie zählt nur beim Kurzlichtbogen auf dickem Blech.',
  'map-only-wire': () =>
    'Von diesem Draht sind wenige veröffentlichte Zeilen hinterlegt, und keine Aufnahme von ihm wird beurteilt; bei Metallpulver-Fülldraht liegen sie 5 V auseinander.',
  'state-wire-and-gas': () =>
    'Drahtdurchmesser und Gas angeben: Ohne sie lassen sich keine Einstellungen nennen.',
  'inside-procedure': () => 'Nur so weit, wie es die qualifizierte Schweißanweisung erlaubt.',
};

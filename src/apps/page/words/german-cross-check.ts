import { ADVICE_SENTENCES } from './german-advice.js';
import type { Sentence } from './german-sentences.js';

/** The set-up against what was seen, explanations, and what a code makes of a change. */
export const CROSS_CHECK_SENTENCES: readonly Sentence[] = [
  [/^The recording names no mode\.$/, 'Die Aufnahme nennt keine Art.'],
  [/^No arc was found in the recording\.$/, 'In der Aufnahme ist kein Lichtbogen.'],
  [/^The recording could not be analysed\.$/, 'Die Aufnahme ließ sich nicht auswerten.'],
  [
    /^No setting was stated to compare with\.$/,
    'Es wurde keine Einstellung zum Vergleichen angegeben.',
  ],
  [
    /^The mode is named with a confidence of only (.+)\.$/,
    'Die Art ist nur mit $1 Sicherheit genannt.',
  ],
  [
    /^The bands held here are for electrode positive; .+$/,
    'Die Bereiche hier gelten für den Draht am Pluspol; über diese Polung sagen sie nichts.',
  ],
  [/^(\S+) was wanted and seen\.$/, '$1 war gewünscht und kam vor.'],
  [
    /^(\S+) was wanted; (.+) was seen \((\S+) for (.+) of the time\)\.$/,
    '$1 war gewünscht; $2 kam vor ($3 in $4 der Zeit).',
  ],
  [/^(\S+) was wanted; (.+) was seen\.$/, '$1 war gewünscht; $2 kam vor.'],
  [/^(.+) permits (.+)\.$/, '$1 erlaubt $2.'],
  [/^(.+) does not permit (.+?): (.+)\.$/, '$1 erlaubt $2 nicht: $3.'],
  [/^(.+) may give (.+), but also (.+)\.$/, '$1 kann $2 ergeben, aber auch $3.'],
  [
    /^(\S+) instead of (\S+) may be a change of an essential variable\. .+$/,
    '$1 statt $2 kann eine wesentliche Einflussgröße ändern. In der geltenden Ausgabe des eigenen Regelwerks nachsehen.',
  ],
  [
    /^AWS D1\.1 does not prequalify short-circuit transfer: .+$/,
    'AWS D1.1 lässt den Kurzlichtbogen nicht ohne eigene Verfahrensprüfung zu; AWS D1.3 (Blech) schon. (Practical Welding Today, Frage und Antwort (2014), aus zweiter Hand.) In der geltenden Ausgabe des eigenen Regelwerks nachsehen.',
  ],
  [
    /^ASME IX QW-409\.2 counts a change .+$/,
    'ASME IX QW-409.2 zählt den Wechsel von Übergangs-, Sprüh- oder Impulslichtbogen zum Kurzlichtbogen, und umgekehrt, zu den wesentlichen Einflussgrößen. (API RP 577 §11.3, aus zweiter Hand.) In der geltenden Ausgabe des eigenen Regelwerks nachsehen.',
  ],
  [
    /^ISO 15614-1: short-circuit qualifies only short-circuit; .+$/,
    'ISO 15614-1: Kurzlichtbogen qualifiziert nur Kurzlichtbogen; Sprüh-, Impuls- oder Übergangslichtbogen qualifiziert diese drei. (ISO 15614-1:2017+A1:2019 §8.5.2.3, aus zweiter Hand.) In der geltenden Ausgabe des eigenen Regelwerks nachsehen.',
  ],
  ...ADVICE_SENTENCES,
  [/^The settings suit (\S+), not (\S+)\.$/, 'Die Einstellung passt zu $1, nicht zu $2.'],
  [
    /^(\S+) is wanted in a gas that may not carry it\.$/,
    '$1 ist gewünscht, aber das Gas trägt ihn vielleicht nicht.',
  ],
  [
    /^(\S+) is wanted in a gas that does not carry it\.$/,
    '$1 ist gewünscht, aber das Gas trägt ihn nicht.',
  ],
  [
    /^(.+) was seen, and (.+) is stated\. Both cannot be: .+$/,
    '$1 kam vor, und $2 ist angegeben. Beides geht nicht: Entweder ist das Gas nicht das angegebene, oder die Aufnahme wurde falsch gedeutet (kleine Tropfen neben der Achse klingen gleich).',
  ],
  [
    /^The gas is not stated; too much CO2 .+$/,
    'Das Gas ist nicht angegeben; zu viel CO2 hielte den Lichtbogen im Übergangsbereich.',
  ],
  [
    /^Volts and amperes permit spray, and the transfer is globular: .+$/,
    'Spannung und Strom erlauben den Sprühlichtbogen, der Übergang ist aber grobtropfig: Das Gas enthält vielleicht mehr CO2 als angegeben oder kommt nicht am Lichtbogen an.',
  ],
  [
    /^A long stick-out would lower current and arc voltage\.$/,
    'Ein langes freies Drahtende würde Strom und Lichtbogenspannung senken.',
  ],
  [
    /^The current is low for the feed, as with a long stick-out\.$/,
    'Der Strom ist niedrig für den Drahtvorschub, wie bei langem freiem Drahtende.',
  ],
  [
    /^The stick-out is long, which lowers the current the feed draws\.$/,
    'Das freie Drahtende ist lang; das senkt den Strom, den der Vorschub zieht.',
  ],
  [
    /^The current is what electrode negative would draw; .+$/,
    'Der Strom ist der, den ein Draht am Minuspol zöge; Massivdraht läuft am Pluspol.',
  ],
  [
    /^A pulsed programme seems to run where constant voltage was meant\.$/,
    'Es scheint ein Impulsprogramm zu laufen, wo konstante Spannung gemeint war.',
  ],
  [
    /^A pulsed programme was meant, and the source seems to run without it\.$/,
    'Ein Impulsprogramm war gemeint, die Stromquelle scheint aber ohne zu laufen.',
  ],
  [
    /^The source runs a programme that controls each short circuit, .+$/,
    'Die Stromquelle läuft mit einem Programm, das jeden Kurzschluss steuert; gemeint war etwas anderes.',
  ],
  [
    /^More voltage is lost between source and arc .+$/,
    'Zwischen Stromquelle und Lichtbogen geht mehr Spannung verloren, als Leitungen und Verbindungen kosten sollten.',
  ],
  [
    /^The source droops: .+$/,
    'Die Stromquelle gibt nach: Unter Last liegen ihre Klemmen weit unter der eingestellten Spannung.',
  ],
  [
    /^The set voltage would suit (\S+), but after .+$/,
    'Die eingestellte Spannung würde zu $1 passen, aber nach den üblichen Verlusten bekommt der Lichtbogen weniger.',
  ],
  [
    /^Only the set voltage is known\. What it leaves at the feeder spans (.+): get .+$/,
    'Nur die eingestellte Spannung ist bekannt. Was davon am Vorschubgerät ankommt, reicht über $1: zuerst die gemessene Spannung besorgen.',
  ],
  [
    /^The arc is long: .+$/,
    'Der Lichtbogen ist lang: Es liegt mehr Spannung an, als der Strom bei diesem Vorschub braucht.',
  ],
  [
    /^Volts and amperes are those of short-circuit: .+$/,
    'Spannung und Strom sind die eines Kurzlichtbogens: Eine Stromquelle, die jeden Kurzschluss steuert, schlägt so gleichmäßig wie Impulse.',
  ],
  [
    /^A little too cold for spray: .+$/,
    'Etwas zu kalt für den Sprühlichtbogen: Die Tropfen berühren das Schmelzbad, ehe sie sich vom Draht lösen.',
  ],
  [
    /^Too cold for spray: the current would do, .+$/,
    'Zu kalt für den Sprühlichtbogen: Der Strom reichte, die Spannung nicht.',
  ],
  [
    /^Too hot for short-circuit at this feed: .+$/,
    'Zu heiß für den Kurzlichtbogen bei diesem Vorschub: Der Draht erreicht das Schmelzbad nicht mehr.',
  ],
  [
    /^The feed draws more current than the stated wire would, .+$/,
    'Der Vorschub zieht mehr Strom, als der angegebene Draht zöge, wie es ein dickerer tut.',
  ],
  [
    /^The feed draws less current than the stated wire would, .+$/,
    'Der Vorschub zieht weniger Strom, als der angegebene Draht zöge, wie es ein dünnerer tut.',
  ],
  [
    /^(\S+ V) were measured and (\S+ V) are set: .+$/,
    'Gemessen sind $1, eingestellt $2: Kein Verlust erhöht eine Spannung.',
  ],
  [
    /^The wire stubs: .+$/,
    'Der Draht stößt: Er taucht ins Schmelzbad ein, und jeder Kurzschluss dauert zu lange.',
  ],
  [
    /^The wire may not arrive evenly, or slower than stated\.$/,
    'Der Draht kommt vielleicht ungleichmäßig an oder langsamer als angegeben.',
  ],
  [
    /^The machine may not have run at the settings stated\.$/,
    'Die Maschine lief vielleicht nicht mit der angegebenen Einstellung.',
  ],
  [
    /^The mode changed for good from (\S+) to (\S+) at (.+?) s with the settings untouched, .+$/,
    'Die Art wechselte bei $3 s auf Dauer von $1 zu $2, ohne dass etwas verstellt wurde, wie wenn das Schutzgas ausbleibt.',
  ],
  [
    /^The recording cannot carry the claim; .+$/,
    'Die Aufnahme trägt die Aussage nicht; erst die Aufnahme ansehen, dann die Maschine.',
  ],
  [
    /^The working point lies where (.+) meet and the sources disagree; .+$/,
    'Der Arbeitspunkt liegt, wo $1 aneinanderstoßen und die Quellen uneins sind; beides kann kommen, ohne dass jemand etwas verstellt.',
  ],
];

/** Words within what the sentences above hold. */
export const CROSS_CHECK_WORDS: readonly (readonly [RegExp, string])[] = [
  [/ lies not in this gas\b/g, ' gibt es in diesem Gas nicht'],
  [
    / lies at any mean current, with a pulsed programme\b/g,
    ' liegt bei jedem mittleren Strom, mit Impulsprogramm',
  ],
  [/ lies up to /g, ' liegt bis '],
  [/ lies above /g, ' liegt über '],
  [/, below /g, ', unter '],
  [/\bthe transition current \(not known\)/g, 'dem Übergangsstrom (nicht bekannt)'],
  [/ \(disputed in this gas\)/g, ' (in diesem Gas umstritten)'],
  [/\ba source said to run steady\b/g, 'eine Stromquelle, die gleichmäßig laufen soll'],
  [/\ba source said to run pulsed\b/g, 'eine Stromquelle, die pulsen soll'],
  [/\bany gas of ISO 14175 group (\S+)/g, 'irgendein Gas der Gruppe $1 nach ISO 14175'],
  [/\bpure (?=[A-Z])/g, 'reines '],
  [/^The set-up$/, 'Die Einstellung'],
  [/^others$/, 'anderes'],
  [/ and /g, ' und '],
  [/ or /g, ' oder '],
];

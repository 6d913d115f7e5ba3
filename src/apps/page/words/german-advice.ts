/** The way to the wanted mode. */
export const ADVICE_SENTENCES: readonly (readonly [RegExp, string])[] = [
  [
    /^Too cold for (\S+): (\S+) to (\S+ V) up at this feed \((.+)\)\.$/,
    'Zu kalt für $1: bei diesem Vorschub $2 bis $3 höher ($4).',
  ],
  [
    /^Too cold for (\S+): (\S+ V) up at this feed \((.+)\)\.$/,
    'Zu kalt für $1: bei diesem Vorschub $2 höher ($3).',
  ],
  [
    /^Too hot for (\S+): (\S+) to (\S+ V) down at this feed \((.+)\)\.$/,
    'Zu heiß für $1: bei diesem Vorschub $2 bis $3 tiefer ($4).',
  ],
  [
    /^Too hot for (\S+): (\S+ V) down at this feed \((.+)\)\.$/,
    'Zu heiß für $1: bei diesem Vorschub $2 tiefer ($3).',
  ],
  [
    /^Too (?:cold|hot) for (\S+): up to (\S+ V) (?:up|down) at this feed \((.+)\)\.$/,
    'Für $1 bei diesem Vorschub um höchstens $2 ändern ($3).',
  ],
  [/^The feed up to (.+) at these volts\.$/, 'Den Vorschub bei dieser Spannung auf $1 erhöhen.'],
  [/^The feed down to (.+) at these volts\.$/, 'Den Vorschub bei dieser Spannung auf $1 senken.'],
  [
    /^Or the feed up to (.+) at these volts\.$/,
    'Oder den Vorschub bei dieser Spannung auf $1 erhöhen.',
  ],
  [
    /^Or the feed down to (.+) at these volts\.$/,
    'Oder den Vorschub bei dieser Spannung auf $1 senken.',
  ],
  [
    /^The feed up to (.+), with (.+): neither alone does it\.$/,
    'Den Vorschub auf $1 erhöhen, mit $2: Eines allein genügt nicht.',
  ],
  [
    /^The feed down to (.+), with (.+): neither alone does it\.$/,
    'Den Vorschub auf $1 senken, mit $2: Eines allein genügt nicht.',
  ],
  [
    /^The settings suit (\S+) \((\d+) in 10\); at this current it lies at (.+)\.$/,
    'Die Einstellung passt zu $1 ($2 von 10); bei diesem Strom liegt er bei $3.',
  ],
  [
    /^The settings suit (\S+), and something else was seen: .+$/,
    'Die Einstellung passt zu $1, gekommen ist anderes: erst die Ursache finden, dann verstellen.',
  ],
  [
    /^Measure the volts at the feeder while welding first: (\S+) lies at (.+) there\.$/,
    'Zuerst während des Schweißens die Spannung am Vorschubgerät messen: $1 liegt dort bei $2.',
  ],
  [/^The gas carries spray: (.+)\.$/, 'Das Gas trägt den Sprühlichtbogen: $1.'],
  [
    /^No setting gives (\S+) in (.+?)\. The nearest that does: (.+?)\. In this gas .+$/,
    'Keine Einstellung gibt $1 in $2. Am nächsten liegt $3. In diesem Gas gehen Kurz- und Übergangslichtbogen.',
  ],
  [
    /^No source read here gives (\S+) in (.+): it is not to be expected\. The nearest .+: (.+)\.$/,
    'Keine Quelle, die hier gelesen wurde, gibt $1 in $2: Er ist nicht zu erwarten. Am nächsten liegt $3.',
  ],
  [
    /^For (\S+) with this wire no current is held; rows are held for (.+)\.$/,
    'Für $1 ist mit diesem Draht kein Strom hinterlegt; hinterlegt sind $2.',
  ],
  [
    /^A steady source gives no pulsed spray; .+$/,
    'Eine Stromquelle ohne Impulse gibt keinen Impulslichtbogen; am nächsten liegt der Sprühlichtbogen oberhalb des Übergangsstroms.',
  ],
  [
    /^Everything held here is for electrode positive: .+$/,
    'Alles hier gilt für den Draht am Pluspol: erst nach der Polung sehen, dann nach der Einstellung.',
  ],
  [
    /^Pulsed spray is a matter of the source’s programme .+$/,
    'Der Impulslichtbogen ist Sache des Programms der Stromquelle für Draht und Gas, nicht eines Platzes in Spannung und Vorschub.',
  ],
  [
    /^No volts and feed are held here that give (\S+) .+$/,
    'Für $1 sind mit diesem Draht und Gas weder Spannung noch Vorschub hinterlegt.',
  ],
  [
    /^Only as far as your qualified procedure allows it\.$/,
    'Nur so weit, wie es die qualifizierte Schweißanweisung erlaubt.',
  ],
];

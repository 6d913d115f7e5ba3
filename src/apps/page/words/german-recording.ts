import type { Sentence } from './german-sentences.js';

/** Doubts about a recording, and what its reader noted; what is not known here stays English. */
export const RECORDING_SENTENCES: readonly Sentence[] = [
  [
    /^(.+) % of the samples stand at the rails: .+$/,
    '$1 % der Werte stehen am Anschlag: Mikrofon weiter weg oder leiser stellen.',
  ],
  [
    /^(.+) s is little to judge by; record 5 s of steady arc or more\.$/,
    '$1 s sind wenig; 5 s ruhigen Lichtbogens oder mehr aufnehmen.',
  ],
  [
    /^At (\d+) samples a second the band above (\d+) Hz is missing; .+$/,
    'Bei $1 Werten je Sekunde fehlt alles über $2 Hz; 44 100 oder 48 000 hören den ganzen Lichtbogen.',
  ],
  [
    /^(\d+) samples of the (\w+) were not numbers .+$/,
    '$1 Werte ($2) waren keine Zahlen und wurden durch den Wert davor ersetzt.',
  ],
  [
    /^The (voltage|current) rests at the end of its range: peaks are cut off\.$/,
    'Die Messreihe ($1) steht am Ende ihres Bereichs: Spitzen sind abgeschnitten.',
  ],
  [
    /^The (voltage|current) stands still for milliseconds at a time: .+$/,
    'Die Messreihe ($1) steht millisekundenlang still: eine langsame oder hängende Anzeige.',
  ],
  [
    /^At (\d+) Hz a short circuit of 1 ms has fewer than five samples; .+ below (\d+) Hz\.$/,
    'Bei $1 Hz hat ein Kurzschluss von 1 ms weniger als fünf Werte; Zahlen zu Kurzschlüssen und Tropfen sind unter $2 Hz grob.',
  ],
  [
    /^The voltage is below −9 V for much of the time: .+$/,
    'Die Spannung liegt die meiste Zeit unter −9 V: so sieht ein Lichtbogen bei vertauschten Leitungen aus.',
  ],
  [
    /^Of (\d+) channels the first was taken as sound .+$/,
    'Von $1 Kanälen wurde der erste als Ton genommen, die anderen nicht.',
  ],
  [
    /^The first channel is silent from end to end, .+$/,
    'Der erste Kanal ist durchweg still, ein anderer nicht.',
  ],
  [
    /^The sound went through (\S+), which leaves out .+$/,
    'Der Ton ging durch $1; das lässt weg oder ersetzt durch Rauschen, was das Ohr überhört, und oft alles über einer Frequenz. Die Sicherheit ist geringer als bei WAV.',
  ],
  [/^The sound was decoded by (.+)\.$/, 'Der Ton wurde dekodiert von: $1.'],
  [
    /^The (?:MP3 )?file does not state its encoder delay; .+$/,
    'Die Datei nennt die Verzögerung ihres Kodierers nicht; Zeiten können bis zu 0,05 s zu spät liegen.',
  ],
  [
    /^The file does not state how long its sound is .+$/,
    'Die Datei nennt die Länge ihres Tons nicht; sie wurde bis zu ihrem Ende gelesen.',
  ],
  [
    /^The file declares (.+) of sound but holds (.+); it was cut off\.$/,
    'Die Datei nennt $1 Ton, enthält aber $2; sie wurde abgeschnitten.',
  ],
  [/^Time is read from (.+) \(by its .+\)\.$/, 'Die Zeit kommt aus $1.'],
  [/^Voltage is read from (.+) \(by its .+\)\.$/, 'Die Spannung kommt aus $1.'],
  [/^Current is read from (.+) \(by its .+\)\.$/, 'Der Strom kommt aus $1.'],
  [
    /^The rate of (.+) comes from the time stamps\.$/,
    'Die Abtastrate $1 kommt aus den Zeitangaben.',
  ],
  [
    /^Ripple of an inverter source .+ sampled at (\S+) Hz unless .+$/,
    'Die Welligkeit einer Inverterquelle (etwa 15 bis 100 kHz) faltet sich in eine mit $1 Hz abgetastete Messreihe, wenn vorher nicht gefiltert wurde, und kann wie ein langsamer Takt aussehen.',
  ],
  [
    /^At (\S+) Hz single short circuits, drops and pulses cannot be followed .+$/,
    'Bei $1 Hz lassen sich einzelne Kurzschlüsse, Tropfen und Impulse nicht verfolgen: Die Messreihe zeigt nur langsame Änderungen.',
  ],
  [
    /^At (\S+) Hz a short circuit of 1 ms is shown by (\S+) samples? .+: shorts under (\S+) ms are .+$/,
    'Bei $1 Hz hat ein Kurzschluss von 1 ms nur $2 Werte: Kurzschlüsse unter $3 ms werden schlecht oder nicht erfasst; Tropfenstufen und Stromanstieg lassen sich nicht messen.',
  ],
  [
    /^The rows are unevenly spaced \((.+) to (.+)\); they were resampled on straight lines to (.+), .+$/,
    'Die Zeilen haben ungleiche Abstände ($1 bis $2); sie wurden geradlinig auf $3 umgerechnet. Feineres als die längsten Abstände ist verloren.',
  ],
  [
    /^The time stamps are rounded to more than a sampling step; (.+) is the mean rate, .+$/,
    'Die Zeitangaben sind gröber als ein Abtastschritt; $1 ist die mittlere Rate, die Zeilen gelten als gleich weit auseinander.',
  ],
  [/^Numbers are read with a decimal comma\.$/, 'Die Zahlen sind mit Dezimalkomma gelesen.'],
  [/^The recording was ended after (\d+) s\.$/, 'Die Aufnahme wurde nach $1 s beendet.'],
  [
    /^The microphone runs at (\d+) Hz, but the browser hands its sound over at (\d+) Hz\.$/,
    'Das Mikrofon läuft mit $1 Hz, der Browser gibt den Ton aber mit $2 Hz weiter.',
  ],
];

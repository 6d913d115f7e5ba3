import { CHECK_SENTENCES } from './german-checks.js';
import { CROSS_CHECK_SENTENCES, CROSS_CHECK_WORDS } from './german-cross-check.js';
import { comma } from './german-numbers.js';
import { RECORDING_SENTENCES } from './german-recording.js';
import { SETUP_SENTENCES, SETUP_WORDS } from './german-setup.js';
import { WINDOW_SENTENCES, WINDOW_WORDS } from './german-windows.js';

/** `$1`, `$2` stand for what the brackets of the pattern hold; modes among them get their German name. */
export type Sentence = readonly [pattern: RegExp, german: string];

const RUN_SENTENCES: readonly Sentence[] = [
  [
    /^Nothing in the recording shows a burning arc\.$/,
    'Nichts in der Aufnahme zeigt einen brennenden Lichtbogen.',
  ],
  [
    /^It may be an arc \((.+)\), but rain, fire, engines or tools can sound like this; no mode is named\.$/,
    'Es kann ein Lichtbogen sein ($1), aber Regen, Feuer, Motoren oder Werkzeuge können so klingen; keine Art wird genannt.',
  ],
  [/^The arc is too short to be judged\.$/, 'Der Lichtbogen ist zu kurz, um beurteilt zu werden.'],
  [
    /^The arc is unlike anything the model was fitted on; no mode is named\.$/,
    'Der Lichtbogen gleicht nichts, woran das Modell angepasst wurde; keine Art wird genannt.',
  ],
  [
    /^The sound beats evenly but faintly: .+$/,
    'Der Ton schlägt gleichmäßig, aber schwach: ein gepulster Strom oder ein von der Stromquelle gesteuerter Kurzschluss; der Ton allein kann das nicht unterscheiden. Die Spannung aufzeichnen.',
  ],
  [
    /^The run mixes (\S+) \((.+?)\) and (\S+) \((.+?)\)\.$/,
    'Der Versuch mischt $1 ($2) und $3 ($4).',
  ],
  [
    /^The likeliest mode, (\S+), reaches only (.+)\.$/,
    'Die wahrscheinlichste Art, $1, kommt nur auf $2.',
  ],
  [
    /^The run as a whole looks like (\S+), but most moments like (\S+)\.$/,
    'Im Ganzen sieht es nach $1 aus, in den meisten Momenten aber nach $2.',
  ],
  [/^(\S+) over (.+) of the judged arc time\.$/, '$1 über $2 der beurteilten Zeit.'],
  [
    /^Arc welding injures eyes and skin .+$/,
    'Lichtbogenschweißen verletzt Augen und Haut (Strahlung, Verbrennung) und schadet durch Rauch, Stromschlag und Lärm: Schutz tragen, lüften und an einer Maschine unter Spannung nichts ändern, wozu man nicht befähigt ist.',
  ],
  [
    /^Local codes, the qualified welding procedure .+$/,
    'Örtliche Vorschriften, die qualifizierte Schweißanweisung und die dafür Verantwortlichen gehen vor; diese Antwort ändert nichts daran.',
  ],
  [
    /^This is an estimate from a recording\. .+$/,
    'Dies ist eine Schätzung aus einer Aufnahme. Es ist keine Prüfung und sagt nichts über die Güte der Naht.',
  ],
  [
    /^Follow the qualified welding procedure: .+$/,
    'Der qualifizierten Schweißanweisung folgen: keine Einstellung außerhalb ihrer Grenzen.',
  ],
  [
    /^Wear protection, ventilate; .+$/,
    'Schutz tragen, lüften; auf Strahlung, Stromschlag und Lärm achten. Örtliche Vorschriften gehen vor.',
  ],
  [
    /^This tool is not an inspection .+$/,
    'Dieses Werkzeug ist keine Prüfung; es lässt keine Naht zu und verwirft keine.',
  ],
  [
    /^Raw sound was asked for; the browser reports (.+)\.$/,
    'Roher Ton wurde verlangt; der Browser meldet: $1.',
  ],
  [
    /^The microphone was taken away while recording; .+$/,
    'Das Mikrofon war während der Aufnahme weg; was vorher kam, ist behalten und beurteilt.',
  ],
  [
    /^A call or a locked screen ended the recording; .+$/,
    'Ein Anruf oder die Bildschirmsperre hat die Aufnahme beendet; was vorher kam, ist behalten und beurteilt.',
  ],
  [
    /^Two tones of (\d+) Hz, below the band that is judged, were sounded at (.+) s\.$/,
    'Zwei Töne von $1 Hz, unter dem beurteilten Bereich, erklangen bei $2 s.',
  ],
];

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/\bunder (\d)/g, 'unter $1'],
  [/\bover (\d)/g, 'über $1'],
  [/\bSTILL ON\b/g, 'NOCH AN'],
  [/\boff:/g, 'aus:'],
  [/\bnot told:/g, 'nicht gesagt:'],
  [/^voltage$/, 'Spannung'],
  [/^current$/, 'Strom'],
  [/\bgain control\b/g, 'Pegelregelung'],
  [/\bnoise suppression\b/g, 'Rauschunterdrückung'],
  [/\becho cancellation\b/g, 'Echounterdrückung'],
  [
    / to be expected at the feeder from the set voltage\b/g,
    ' am Vorschubgerät, wie die Einstellung sie erwarten lässt',
  ],
  [/ \(the trace’s place is not stated\)/g, ' (wo aufgezeichnet, ist nicht angegeben)'],
  [/\bat the feeder\b/g, 'am Vorschubgerät'],
  ...WINDOW_WORDS,
  ...SETUP_WORDS,
  ...CROSS_CHECK_WORDS,
];

const SENTENCES: readonly Sentence[] = [
  ...RUN_SENTENCES,
  ...RECORDING_SENTENCES,
  ...SETUP_SENTENCES,
  ...CROSS_CHECK_SENTENCES,
  ...CHECK_SENTENCES,
  ...WINDOW_SENTENCES,
];

/** Modes as the result names them, wherever they stand. */
const MODE = /\b(?:short-circuit|pulsed-spray|globular|spray)\b/g;

/** A sentence of a result in German, or null where this file does not know it. */
export function germanSentence(text: string, modeName: (id: string) => string): string | null {
  for (const [pattern, german] of SENTENCES) {
    const found = pattern.exec(text);
    if (!found) continue;
    return german.replace(/\$(\d)/g, (_, k: string) => {
      const part = found[Number(k)] ?? '';
      // What a file or a person wrote stands in quotes.
      if (/[“"]/.test(part)) return part;
      const named = part.replace(MODE, (id) => modeName(id));
      return comma(WORDS.reduce((words, [from, to]) => words.replace(from, to), named));
    });
  }
  return null;
}

/** What a column may hold for us. */
export type LogQuantity = 'time' | 'voltage' | 'current';

/**
 * Header words, lower case and without accents. Whole-name matches only are allowed for the short
 * ones; the long ones may also stand inside a longer name such as `weld voltage 1`.
 */
const SHORT: Record<LogQuantity, readonly string[]> = {
  time: ['t', 'x', 'ts', 'tid', 'aika', 'czas', 'cas', 'ido', 'ora', 'hora', 'x-axis', 'xaxis'],
  voltage: ['u', 'v', 'uarc', 'varc', 'ua', 'va', 'ub', 'us', 'us(v)', 'uw', 'volts', 'volt'],
  current: ['i', 'a', 'iarc', 'ia', 'is', 'iw', 'amps', 'amp', 'proud', 'aram'],
};

const LONG: Record<LogQuantity, readonly string[]> = {
  time: [
    ...['time', 'timestamp', 'datetime', 'elapsed', 'seconds', 'clock', 'zeit', 'zeitstempel'],
    ...['uhrzeit', 'temps', 'heure', 'tiempo', 'tempo', 'tijd', 'zaman', 'время', '时间', '時間'],
    ...['시간'],
  ],
  voltage: [
    ...['voltage', 'spannung', 'tension', 'tensao', 'tensione', 'voltaje', 'voltaggio', 'spanning'],
    ...['spenning', 'spænding', 'jannite', 'napiecie', 'napeti', 'feszultseg', 'gerilim'],
    ...['напряжение', '电压', '電圧', '電壓', '전압'],
  ],
  current: [
    ...['current', 'amperage', 'ampere', 'strom', 'stromstarke', 'courant', 'intensite'],
    ...['corriente', 'intensidad', 'corrente', 'strøm', 'stroom', 'virta', 'prad', 'natezenie'],
    ...['akim', 'ток', '电流', '電流', '전류'],
  ],
};

/** A wish, a filter's output or a summary is not the measured trace. */
const NOT_MEASURED =
  /(^|[\s_.-])(set|soll|target|command|cmd|preset|setpoint|reference|ref|consigne|nominal|mean|avg|average|rms|max|min)([\s_.-]|$)|^soll|setpoint|设定/;

/** Measured, but not at the arc: what feeds the source, or something else in the cell. */
const ELSEWHERE =
  /(^|[\s_.-])(supply|mains|grid|line|network|netz|versorgung|reseau|secteur|alimentation|red|rete|batt(ery|erie)?|bus|dc[\s_-]?link|zwischenkreis|input|primary|primar|motor|fan|heater|control|logic|sensor|aux(iliary)?|ocv|open[\s_-]?circuit|leerlauf)([\s_.-]?(voltage|spannung|tension|current|strom|courant|corriente|corrente|tensione?|[uvi])?)([\s_.-]|\d|$)/;

/** Lower case, accents and ł folded, so that `Tensión` and `TENSION` are one word. */
export function foldName(text: string): string {
  return text
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .toLowerCase()
    .replace(/ł/g, 'l')
    .replace(/ß/g, 'ss')
    .replace(/ı/g, 'i')
    .normalize('NFC')
    .trim();
}

/** A quantity and how surely it is meant: 2 the whole name, 1 a word in it. */
export interface NameMeaning {
  quantity: LogQuantity;
  rank: 1 | 2;
}

/** True for set values, means, the mains and the like: they carry a name and a unit, but are not the trace. */
export function isNotMeasured(name: string): boolean {
  const folded = foldName(name.replace(/([a-z])([A-Z])/g, '$1 $2'));
  return NOT_MEASURED.test(folded) || ELSEWHERE.test(folded);
}

/**
 * Reads a header word in any of the known languages.
 *
 * @returns undefined for a name that means none of the three, and for set values and means.
 */
export function recogniseName(name: string): NameMeaning | undefined {
  // `data/run1/voltage` and `log.voltage`: the last part says what it is, if it says anything.
  const last = /[^/.]*$/.exec(name)?.[0].replace(/\[\d+\]$/, '') ?? '';
  return (last === name ? undefined : recogniseWhole(last)) ?? recogniseWhole(name);
}

function recogniseWhole(name: string): NameMeaning | undefined {
  const folded = foldName(name);
  if (isNotMeasured(name)) return undefined;
  const quantities = ['time', 'voltage', 'current'] as const;
  for (const quantity of quantities) {
    if (SHORT[quantity].includes(folded) || LONG[quantity].includes(folded)) {
      return { quantity, rank: 2 };
    }
  }
  const parts = splitWords(name);
  for (const quantity of ['voltage', 'current', 'time'] as const) {
    const inside = LONG[quantity].some(
      (word) =>
        parts.includes(word) || (word.length > 4 && folded.endsWith(word)) || isCjkIn(folded, word),
    );
    if (inside) return { quantity, rank: 1 };
  }
  return undefined;
}

/** `weldVoltage_1` gives weld, voltage, 1. */
function splitWords(name: string): string[] {
  return foldName(name.replace(/([a-z])([A-Z])/g, '$1 $2')).split(/[^\p{L}]+/u);
}

/** Chinese, Japanese and Korean names are written without spaces. */
function isCjkIn(name: string, word: string): boolean {
  return /[\u3040-\u9fff\uac00-\ud7af]/.test(word) && name.includes(word);
}

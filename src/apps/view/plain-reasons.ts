import type { Result } from '../../analysis/result/index.js';
import type { Mode } from '../../core/index.js';
import { hasClearLine } from '../../features/index.js';
import { rankReasons } from './result-view.js';
import { tell } from './tell.js';
import type { SignGroup } from './words/answer-words.js';
import type { LocalizedText, Words } from './words/words.js';

/** Reasons as a welder hears or sees them: what fits the answer, and what does not. */
export interface PlainReasons {
  fits: { title: string; list: LocalizedText[] } | null;
  /** With what they weigh against what fits. */
  against: { title: string; list: LocalizedText[]; weighed: string } | null;
}

/** More of each kind are left to the figures. */
const MOST = 4;

/** A sign in words; `figure` where its value says something by itself. */
interface Plain extends LocalizedText {
  group: SignGroup | null;
  figure: boolean;
}

/** `held`: the mode that the reasons are held against; null for none. */
export function viewPlainReasons(result: Result, held: Mode | null, words: Words): PlainReasons {
  if (held === null) return { fits: null, against: null };
  const fits = new Map<string, Plain>();
  const against = new Map<string, Plain>();
  let weightFor = 0;
  let weightAgainst = 0;
  for (const reason of rankReasons(result.reasons)) {
    const size = Math.abs(reason.weight);
    const sign = sayPlainly(reason, words);
    if ((reason.speaksFor === held) === reason.weight >= 0) {
      weightFor += size;
      fits.set(sign.text, sign);
      continue;
    }
    weightAgainst += size;
    const other = reason.weight >= 0 && reason.speaksFor ? `${words.mode(reason.speaksFor)}: ` : '';
    against.set(sign.text, { ...sign, text: `${other}${sign.text}` });
  }
  // What speaks both ways counts where it weighs more, which comes first in the order of weight.
  for (const text of fits.keys()) against.delete(text);
  const top = (list: ReadonlyMap<string, Plain>): LocalizedText[] => {
    const texts = new Set(list.keys());
    const implied = impliedBeats(texts, words);
    const all = [...list.values()].filter(({ text }) => !implied.includes(text));
    const told = new Set(all.filter(({ figure }) => figure).map(({ group }) => group));
    // What is told with its figure is not told again without.
    return all
      .filter(({ figure, group }) => figure || group === null || !told.has(group))
      .slice(0, MOST)
      .map(({ text, lang }) => ({ text, lang }));
  };
  return {
    fits: fits.size === 0 ? null : { title: words.answer.fits(words.mode(held)), list: top(fits) },
    against:
      against.size === 0
        ? null
        : {
            title: words.answer.against,
            list: top(against),
            weighed: weigh(weightFor / weightAgainst, words),
          },
  };
}

/** What is said of a beat by another line already: none at all, or one above or below 60 a second. */
function impliedBeats(texts: ReadonlySet<string>, { answer: { figures } }: Words): string[] {
  const fast = figures.beat('fast', true);
  const slow = figures.beat('slow', true);
  const any = texts.has(fast) || texts.has(slow) ? [figures.beat('any', true)] : [];
  return texts.has(figures.beat('any', false))
    ? [...any, figures.beat('fast', false), figures.beat('slow', false)]
    : any;
}

function weigh(times: number, { answer, numbers }: Words): string {
  if (times < 1) return answer.unlisted;
  return times < 1.5 ? answer.barely : answer.outweighs(numbers.figure(Math.round(times)));
}

function sayPlainly(reason: Result['reasons'][number], words: Words): Plain {
  const { feature, value } = (reason.params ?? {}) as {
    feature?: { code?: string; params?: { feature?: string } };
    value?: number | null;
  };
  const name = feature?.params?.feature ?? '';
  const rows = ROWS[feature?.code ?? ''];
  const group = rows?.find(([pattern]) => pattern.test(name))?.[1] ?? null;
  if (group === null) return { ...tell(reason.text, reason, words), group, figure: false };
  const sound = feature?.code === 'sound-feature';
  const figure =
    typeof value !== 'number'
      ? null
      : sound
        ? soundFigure(name, value, words)
        : traceFigure(name, value, words);
  const text = figure ?? words.answer.groups[group];
  return { text, lang: words.lang, group, figure: figure !== null };
}

/** A value that says something by itself; null for all others. */
function soundFigure(name: string, value: number, { answer, numbers }: Words): string | null {
  const { figures } = answer;
  const beat = BEATS[name];
  // Kept as logarithms to base ten.
  if (beat) return figures.beat(beat, hasClearLine({ lineProminence: 10 ** value }));
  if (name !== 'strongOnsetRate' || value < 1) return null;
  return figures.cracks(numbers.figure(Math.round(value)));
}

function traceFigure(name: string, value: number, { answer, numbers }: Words): string | null {
  const { figures } = answer;
  const whole = numbers.figure(Math.round(value));
  const rate = value < 0.5 ? null : whole;
  if (name === 'shortRateHz') return figures.shorts(rate);
  if (name === 'shortShare')
    return figures.shortTime(value < 0.0005 ? null : numbers.percent(value));
  if (name === 'dropStepRateHz' && value >= 1) return figures.dropSteps(whole);
  if (name === 'pulseRateHz' || name === 'currentPulseRateHz') return figures.pulses(rate);
  if (name === 'currentCv' && value < 0.1) return figures.currentSpread(numbers.percent(value));
  return null;
}

const BEATS: Readonly<Record<string, 'any' | 'fast' | 'slow'>> = {
  lineProminence: 'any',
  steadyLineProminence: 'any',
  fastLineProminence: 'fast',
  slowLineProminence: 'slow',
};

type Rows = readonly (readonly [RegExp, SignGroup])[];

/** Which names belong together; the first row that matches counts. */
const SOUND_GROUPS: Rows = [
  [/line/i, 'beat'],
  [/decay/i, 'decay'],
  [/^rateDisagreement$/, 'counts'],
  [/^(onsetRise|gapBeforeOnset|commonRise|riseSkew)$/, 'attack'],
  [/^(kurtosis$|onset|strongOnset)/, 'cracks'],
  [/^(envelopeCv|loudOverMiddle|middleOverQuiet)$/, 'hiss'],
  [/^(flatness|centroid|spread|spectralCrest|.*Ratio)$/, 'pitch'],
];
const TRACE_GROUPS: Rows = [
  [/^(allShorts|shortRate|shortShare|shortDuration|shortInterval|incipient|arcTime)/, 'shorts'],
  [/^(shortDepthV|shortOver|breakOver|leastOver|currentRise)/, 'short-shape'],
  [/^(dropStep|stepTilt)/, 'drops'],
  [/^(pulse|currentPulse|currentSwing|currentSeparation|currentDuty|currentClock)/, 'pulses'],
  [/^current|^arcCurrentCv$/, 'current'],
  [/^(arcSlope|arcCorrelation)/, 'slope'],
  [/^(line|mainsRipple)/, 'voltage-beat'],
  [/^(arc|slow|mid|high|stepNoise)/, 'flutter'],
];

const ROWS: Readonly<Record<string, Rows>> = {
  'sound-feature': SOUND_GROUPS,
  'trace-feature': TRACE_GROUPS,
  'band-modulation': [[/^/, 'hiss']],
  'band-coherence': [[/^/, 'hiss']],
};

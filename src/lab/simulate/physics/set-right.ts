import type { Mode } from '../../../core/index.js';
import type { ArcScenario, PulsedSpec } from '../scenario.js';
import type { Aim } from './draw-point.js';
import { inWindows, type SteadyFigures } from './figures.js';
import { tryOut } from './try-out.js';

/** Volts and amperes may use most of the leeway of a window; drops and shorts nearly all, since a moment counts few. */
const STRICTNESS = { working: 0.75, events: 0.8 } as const;
/** Least share of the metal that crosses as meant. */
const LEAST_SHARE = 0.65;
/** Own choice: nine touches in the 1.2 s of a try-out. */
const LEAST_TOUCHES_HZ = 7;
/** How often the knobs are turned before the draw is given up. */
const TUNINGS = 5;

/** What a wire feeder can do. */
export function feedable(mPerMin: number): boolean {
  return mPerMin >= 1 && mPerMin <= 24;
}

/**
 * Sets the scenario as a welder does: burn for a moment, look and listen, turn a knob. Null when the metal does not
 * cross as meant or not where the published windows have it, whatever is turned.
 */
export function setRight(
  scenario: ArcScenario,
  aim: Mode,
  aimed: Aim,
  fallV: readonly [number, number],
): ArcScenario | null {
  let { meanV } = aimed;
  for (let k = 0; k < TUNINGS; k++) {
    const figures = tryOut(scenario);
    if (figures.burningShare < 0.98) return null;
    const means = figures.mode === aim && figures.modeShare >= LEAST_SHARE;
    const turnV = turn(scenario, aim, figures);
    if (means && turnV === 0 && inWindows(scenario, figures, STRICTNESS)) return scenario;
    meanV += turnV;
    const missV = meanV - figures.meanV;
    const missShare = aimed.currentA / Math.max(10, figures.meanA);
    const { source } = scenario;
    if (source.kind === 'pulsed') {
      if (!strengthen(source, figures)) return null;
    } else if (Math.abs(missV) < 0.7 && Math.abs(missShare - 1) < 0.07) return null;
    else retune(scenario, missV, missShare, fallV);
    if (!feedable(scenario.wire.feedMPerMin)) return null;
  }
  return null;
}

/**
 * Volts to add because of what is seen and heard: less where wire ought to touch, more where it ought not; 0 where
 * nothing is left to turn. Of the touches in CO2 a moment counts few, and a lucky count hides an arc that touches too
 * seldom, so they must come clearly more often than the 5 a second where their window begins.
 */
function turn({ gas }: ArcScenario, aim: Mode, figures: SteadyFigures): number {
  const { mode, modeShare, shortRateHz } = figures;
  if (aim === 'short-circuit') return mode === aim && modeShare >= LEAST_SHARE ? 0 : -1.2;
  if (aim === 'globular' && gas.co2Percent >= 30) {
    if (mode !== aim || modeShare < LEAST_SHARE || shortRateHz > 60) return 1.2;
    return shortRateHz < LEAST_TOUCHES_HZ ? -1.2 : 0;
  }
  if (aim === 'globular') return modeShare < LEAST_SHARE || mode !== aim ? 1.2 : 0;
  return aim === 'spray' && shortRateHz > 3 ? 1.5 : 0;
}

function retune(
  { source, wire, arc }: ArcScenario,
  missV: number,
  missShare: number,
  [leastV, mostV]: readonly [number, number],
): void {
  wire.feedMPerMin *= Math.min(1.3, Math.max(0.7, missShare));
  if (source.kind === 'constant-voltage') source.setV += missV;
  else arc.fallV = Math.min(mostV, Math.max(leastV, arc.fallV + missV));
}

/**
 * Longer pulses where they let go too few drops, shorter ones where they let go too many; the base makes up for it,
 * so that the mean current stays. False where it cannot.
 */
function strengthen(source: PulsedSpec, { dropsPerPulse }: SteadyFigures): boolean {
  const factor = Math.min(1.5, Math.max(0.6, dropsPerPulse ** -0.6));
  const { frequencyHz, peakA, peakS, stepS } = source;
  const longerS = peakS * factor - peakS;
  if (peakS + longerS < 6e-4 || (peakS + longerS + stepS) * frequencyHz > 0.65) return false;
  const restShare = 1 - (peakS + longerS + stepS) * frequencyHz;
  source.peakS += longerS;
  source.baseA -= (longerS * frequencyHz * (peakA - source.baseA)) / restShare;
  return source.baseA > 12;
}

/** Draws one arc: plans and burns until the metal does what the turn asks for. */
import type { ForeignArc, ForeignMode } from '../world.js';
import { judge, type Verdict } from './judge.js';
import { type ArcPlan, drawPlan } from './plan.js';
import { Random } from './random.js';
import { RATE_HZ, type Run, simulate } from './simulate.js';
import { makeSound } from './sound.js';

const TURN: readonly ForeignMode[] = ['short-circuit', 'globular', 'spray', 'pulsed-spray'];
/** Length of the trial burn, s. */
const TRIAL_S = 1.1;
const ATTEMPTS = 300;

/** An accepted burn with its plan; for checks of the windows. */
export interface Burn {
  plan: ArcPlan;
  run: Run;
  verdict: Verdict;
  attempts: number;
}

/** Burns plan after plan until one is judged as the mode whose turn it is. */
export function burn(seed: number, durationS: number): Burn {
  const mode = TURN[((seed % 4) + 4) % 4] as ForeignMode;
  for (let k = 0; k < ATTEMPTS; k++) {
    const plan = drawPlan(mode, new Random(seed, `plan ${k}`));
    if (durationS > TRIAL_S && judge(plan, simulate(plan, seed + k, TRIAL_S), 0.35).mode !== mode)
      continue;
    const run = simulate(plan, seed + k, durationS);
    const verdict = judge(plan, run, Math.min(0.35, durationS / 4));
    if (verdict.mode === mode) return { plan, run, verdict, attempts: k + 1 };
  }
  throw new Error(`no ${mode} arc within ${ATTEMPTS} attempts for seed ${seed}`);
}

/** An arc of about `durationS` seconds; the same seed gives the same arc. */
export function drawArc(seed: number, durationS = 4): ForeignArc {
  const { plan, run, verdict } = burn(seed, durationS);
  const src = plan.source;
  const edges = src.kind === 'pulses' ? [0, src.riseS + src.peakS] : [];
  const breakS = src.kind === 'levels' ? Math.max(0.0015, src.boostS + src.tailS + 0.0004) : 0.0015;
  const dry = makeSound(run, seed, edges, breakS);
  const setup = { ...plan.setup };
  // Sources that steer the current have no open voltage to set: the mean and some loss stand for it.
  if (src.kind !== 'constant-voltage') {
    setup.setVoltageV = Math.round((verdict.meanV + 0.008 * verdict.meanA) * 2) / 2;
  }
  return {
    seed,
    truth: {
      mode: verdict.mode as ForeignMode,
      shortsPerS: verdict.shortsPerS,
      dropsPerS: verdict.dropsPerS,
      dropDiameterMm: verdict.dropDiameterMm,
      pulseHz: verdict.pulseHz,
      eventsS: {
        short: run.shorts.map((s) => s.startS),
        reignition: run.shorts.filter((s) => s.endS < run.durationS).map((s) => s.endS),
        drop: run.drops.map((d) => d.timeS),
        pulse: [...run.pulsesS],
      },
    },
    setup,
    durationS,
    trace: { sampleRateHz: RATE_HZ, voltageV: run.voltageV, currentA: run.currentA },
    dry: { sampleRateHz: RATE_HZ, ...dry },
  };
}

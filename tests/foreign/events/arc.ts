import type { ForeignArc, ForeignMode } from '../world.js';
import { drawBridging } from './bridging.js';
import { TRACE_HZ } from './current.js';
import { drawGlobular, drawSpray, medianDiameterMm } from './freeFlight.js';
import { drawPlan, type Plan } from './plan.js';
import { drawPulsing } from './pulsing.js';
import { Rng } from './rng.js';
import { drawLoad, type Load, type Schedule } from './schedule.js';
import { drawSound } from './sound.js';
import { drawTrace } from './trace.js';
import { SOUND_HZ } from './wavelet.js';

const MODES: readonly ForeignMode[] = ['short-circuit', 'globular', 'spray', 'pulsed-spray'];

function drawSchedule(rng: Rng, plan: Plan, load: Load): Schedule {
  if (plan.mode === 'short-circuit') return drawBridging(rng, plan, load);
  if (plan.mode === 'globular') return drawGlobular(rng, plan, load);
  if (plan.mode === 'spray') return drawSpray(rng, plan, load);
  return drawPulsing(rng, plan, load);
}

/** Draws an arc: plan, events, trace, sound. Modes come in turn by `seed % 4`. */
export function drawArc(seed: number, durationS = 4): ForeignArc {
  const rng = new Rng(seed, 77);
  const mode = MODES[((seed % 4) + 4) % 4] as ForeignMode;
  const plan = drawPlan(rng.fork(1), mode, durationS);
  const load = drawLoad(rng.fork(2), durationS);
  const schedule = drawSchedule(rng.fork(3), plan, load);
  schedule.shorts.sort((a, b) => a.startS - b.startS);
  const trace = drawTrace(rng.fork(4), plan, schedule, load);
  const sound = drawSound(rng.fork(5), schedule, trace, durationS);
  const { shorts, drops, pulses } = schedule;
  const pulsedS = durationS - schedule.settledS - 0.03;
  return {
    seed,
    durationS,
    setup: plan.setup,
    truth: {
      mode,
      shortsPerS: shorts.length / durationS,
      dropsPerS: drops.length / durationS,
      dropDiameterMm: medianDiameterMm(drops),
      pulseHz: pulses.length > 0 ? pulses.length / pulsedS : null,
      eventsS: {
        short: shorts.map((s) => s.startS),
        reignition: shorts.map((s) => s.endS),
        drop: drops.map((d) => d.atS),
        pulse: pulses.map((p) => p.atS),
      },
    },
    trace: { sampleRateHz: TRACE_HZ, voltageV: trace.voltageV, currentA: trace.currentA },
    dry: { sampleRateHz: SOUND_HZ, ...sound },
  };
}

import type { ForeignArc } from '../world.js';
import { Dice } from './dice.js';
import { emptyPlan, planDip, planGlobular, planSpray } from './plan.js';
import { drawPulseShape, type PulseShape, planPulsed } from './pulsing.js';
import { drawDraft, MODES } from './setup.js';
import { drawSound, SOUND_HZ } from './sound.js';
import { drawTrace, TRACE_HZ } from './trace.js';

function middle(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? null;
}

/**
 * Draws an arc with its truth.
 *
 * @param seed any whole number not below 0; `seed % 4` gives the mode
 * @param durationS about how long it burns, s
 */
export function drawArc(seed: number, durationS = 4): ForeignArc {
  const mode = MODES[((seed % 4) + 4) % 4] as (typeof MODES)[number];
  const draft = drawDraft(new Dice(seed, 'setup'), mode);
  const planDice = new Dice(seed, 'plan');
  const plan = emptyPlan(planDice, Math.max(0.3, durationS * planDice.between(0.97, 1.03)));
  let shape: PulseShape | null = null;
  if (mode === 'short-circuit') planDip(planDice, draft, plan);
  else if (mode === 'globular') planGlobular(planDice, draft, plan);
  else if (mode === 'spray') planSpray(planDice, draft, plan);
  else {
    shape = drawPulseShape(planDice, draft);
    planPulsed(planDice, draft, plan, shape);
  }

  const trace = drawTrace(new Dice(seed, 'trace'), draft, plan, shape);
  const dry = drawSound(new Dice(seed, 'sound'), new Dice(seed, 'family'), plan, shape);
  const length = plan.durationS;
  const typical = middle(plan.drops.map((d) => d.size));
  return {
    seed,
    durationS: length,
    setup: draft.setup,
    truth: {
      mode,
      shortsPerS: plan.shorts.length / length,
      dropsPerS: plan.drops.length / length,
      dropDiameterMm: typical === null ? null : typical * draft.setup.wireDiameterMm,
      pulseHz: shape ? plan.pulses.length / length : null,
      eventsS: {
        short: plan.shorts.map((s) => s.startS),
        reignition: plan.shorts.map((s) => s.endS),
        drop: plan.drops.map((d) => d.timeS),
        pulse: plan.pulses.map((p) => p.startS),
      },
    },
    trace: { sampleRateHz: TRACE_HZ, voltageV: trace.voltageV, currentA: trace.currentA },
    dry: { sampleRateHz: SOUND_HZ, events: dry.events, hiss: dry.hiss },
  };
}

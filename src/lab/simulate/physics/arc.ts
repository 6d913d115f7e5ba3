import { createRandom } from '../../../core/index.js';
import { measure } from '../probe.js';
import type { ArcRun } from '../run.js';
import type { ArcScenario } from '../scenario.js';
import { nameRun, type Observed } from './label.js';
import { ArcMachine, STEP_S } from './machine.js';

/** Burning before the recording begins, for runs that open in the middle of an arc. */
const PRE_ROLL_S = 0.4;

/**
 * Runs a scenario: traces as a logger would store them, clean power for sound, and the truth.
 * The same scenario gives the same run, bit for bit.
 */
export function simulateArc(scenario: ArcScenario): ArcRun {
  const random = createRandom(scenario.seed);
  const machine = new ArcMachine(scenario, random);
  const stepHz = Math.round(1 / STEP_S);
  const preS = scenario.openStart ? PRE_ROLL_S : 0;
  const leadS = scenario.openStart ? 0 : scenario.leadInS;
  const tailS = scenario.openEnd ? 0 : scenario.leadOutS;
  const durationS = leadS + scenario.arcS + tailS;
  const count = Math.round(durationS * stepHz);
  const voltageV = new Float32Array(count);
  const currentA = new Float32Array(count);
  const unrestW = new Float32Array(count);
  const skip = Math.round(preS * stepHz);
  const plan = schedule(scenario, preS, leadS);
  let next = 0;
  for (let i = -skip; i < count; i++) {
    while (next < plan.length && machine.timeS >= plan[next]!.timeS) plan[next++]!.act(machine);
    machine.step();
    if (i < 0) continue;
    voltageV[i] = machine.voltageV;
    currentA[i] = machine.circuit.currentA;
    unrestW[i] = machine.unrestV() * machine.circuit.currentA;
  }
  machine.stop();
  const seen = observed(machine, preS);
  const truth = nameRun(scenario, seen, changeTimes(scenario, leadS));
  const clean = { voltageV, currentA, rateHz: stepHz };
  const measured = measure(scenario.probe, clean, scenario.electricalRateHz, random.fork('probe'));
  const powerW = new Float32Array(count);
  for (let i = 0; i < count; i++) powerW[i] = voltageV[i]! * currentA[i]!;
  return {
    scenario,
    electricalRateHz: scenario.electricalRateHz,
    ...measured,
    powerRateHz: stepHz,
    powerW,
    unrestW,
    arcCurrentA: currentA,
    durationS,
    truth,
    pulsesS: seen.pulses,
    balance: machine.log.balance,
  };
}

interface Action {
  timeS: number;
  act(machine: ArcMachine): void;
}

/** What the operator and the source do, in order of time. */
function schedule(scenario: ArcScenario, preS: number, leadS: number): Action[] {
  const feed = (mPerMin: number): number => (mPerMin * 1000) / 60;
  const startS = leadS;
  const endS = preS + leadS + scenario.arcS;
  let feedNow = feed(scenario.wire.feedMPerMin);
  const plan: Action[] = [
    {
      timeS: startS,
      act(machine) {
        machine.feedMmPerS = feedNow;
        machine.start(scenario.openStart);
      },
    },
  ];
  for (const change of scenario.changes) {
    const timeS = preS + leadS + change.timeS;
    if (change.feedMPerMin !== undefined) feedNow = feed(change.feedMPerMin);
    const speed = feedNow;
    plan.push({
      timeS,
      act(machine) {
        machine.feedMmPerS = speed;
        machine.circuit.set(change.setV, 1);
      },
    });
  }
  if (!scenario.openEnd) plan.push(...closing(scenario.ends.craterS, endS, feedNow));
  return plan.sort((a, b) => a.timeS - b.timeS);
}

/** Ramp down in small steps, then off a few milliseconds later so that the current can die. */
function closing(craterS: number, endS: number, feedMmPerS: number): Action[] {
  const steps = 40;
  const plan: Action[] = [];
  for (let k = 1; k <= steps && craterS > 0; k++) {
    plan.push({
      timeS: endS - craterS * (1 - k / steps),
      act(machine) {
        machine.feedMmPerS = feedMmPerS * Math.max(0, 1 - (1.3 * k) / steps);
        machine.circuit.set(undefined, 1 - (0.6 * k) / steps);
      },
    });
  }
  plan.push({
    timeS: endS,
    act(machine) {
      machine.feedMmPerS = 0;
      machine.circuit.set(undefined, 0);
    },
  });
  plan.push({ timeS: endS + 0.006, act: (machine) => machine.stop() });
  return plan;
}

function changeTimes(scenario: ArcScenario, leadS: number): number[] {
  return scenario.changes.map((change) => leadS + change.timeS);
}

/** Events in the time of the recording, without those that ended before it. */
export function observed(machine: ArcMachine, preS: number): Observed {
  return {
    shorts: machine.log.shorts
      .filter((s) => s.endS > preS)
      .map((s) => ({ ...s, startS: Math.max(0, s.startS - preS), endS: s.endS - preS })),
    drops: machine.log.drops
      .filter((d) => d.timeS >= preS)
      .map((d) => ({ ...d, timeS: d.timeS - preS })),
    // A spark of less than a millisecond, as at a failed strike, is no arc.
    arcOn: machine.log.arcOn
      .filter((a) => a.endS > preS && a.endS - a.startS > 1e-3)
      .map((a) => ({ startS: Math.max(0, a.startS - preS), endS: a.endS - preS })),
    pulses: machine.log.pulses.filter((t) => t >= preS).map((t) => t - preS),
  };
}

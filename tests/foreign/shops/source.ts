import type { Machine } from './gear.js';
import type { Plan } from './plan.js';

/** A power source: given the volts at the torch, how the current goes on. */
export interface Source {
  currentA: number;
  /** True in the step in which a pulse begins. */
  pulseBegins: boolean;
  step(dtS: number, torchV: number, bridged: boolean, on: boolean): void;
}

/** Constant voltage behind a slope and a choke, with the rectifier's ripple. */
class SlopeSource implements Source {
  currentA = 0;
  pulseBegins = false;
  private timeS = 0;
  private readonly ohm: number;
  constructor(
    private readonly plan: Plan,
    private readonly machine: Machine,
  ) {
    this.ohm = machine.slopeOhm + machine.cableOhm;
  }

  step(dtS: number, torchV: number, _bridged: boolean, on: boolean): void {
    this.timeS += dtS;
    // The crests of a rectified sine less their mean.
    const crest = Math.abs(Math.sin(Math.PI * this.machine.rippleHz * this.timeS)) - 0.6366;
    const drive = on ? this.plan.setV * (1 + this.machine.ripple * crest) : 0;
    const push = drive - this.ohm * this.currentA - torchV;
    this.currentA = Math.max(0, this.currentA + (dtS * push) / this.machine.chokeH);
  }
}

/**
 * A program of pulses; holds the length of the arc by the rate of pulses or by the base current.
 */
class PulseSource implements Source {
  currentA = 0;
  pulseBegins = false;
  private phaseS = 0;
  private periodS: number;
  private baseA: number;
  private sumV = 0;
  private count = 0;
  private sumError = 0;
  constructor(
    private readonly pulse: { hz: number; peakA: number; peakS: number; baseA: number },
    private readonly plan: Plan,
    private readonly machine: Machine,
  ) {
    this.periodS = 1 / pulse.hz;
    this.baseA = pulse.baseA;
  }

  step(dtS: number, torchV: number, bridged: boolean, on: boolean): void {
    const { pulse, plan, machine } = this;
    this.pulseBegins = false;
    this.phaseS += dtS;
    this.sumV += torchV;
    this.count++;
    if (this.phaseS >= this.periodS) {
      // Arc too long: fewer pulses or less base; gains are own choice.
      const off = Math.max(-6, Math.min(6, plan.meanV - this.sumV / this.count));
      this.sumError = Math.max(-8, Math.min(8, this.sumError + 0.06 * off));
      const error = 0.6 * off + this.sumError;
      if (machine.holdsBy === 'rate') {
        this.periodS = 1 / (pulse.hz * Math.max(0.6, Math.min(1.8, 1 + 0.06 * error)));
      } else this.baseA = pulse.baseA * Math.max(0.4, Math.min(3, 1 + 0.14 * error));
      this.phaseS = 0;
      this.sumV = 0;
      this.count = 0;
      this.pulseBegins = on;
    }
    let wanted = this.phaseS < pulse.peakS ? pulse.peakA : this.baseA;
    if (bridged) wanted = Math.max(wanted, 1.3 * plan.meanA); // burns a bridge away; own choice
    if (!on) wanted = 0;
    const most = machine.rampAPerS * dtS;
    this.currentA += Math.max(-most, Math.min(most, wanted - this.currentA));
  }
}

export function drawSource(plan: Plan, machine: Machine): Source {
  return plan.pulse === null
    ? new SlopeSource(plan, machine)
    : new PulseSource(plan.pulse, plan, machine);
}

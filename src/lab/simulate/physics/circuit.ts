import type { Random } from '../../../core/index.js';
import type { SourceSpec } from '../scenario.js';
import type { EventLog } from './event-log.js';
import { createSource, type PowerSource, type SourceView } from './source.js';

/** The power source against its load, with the energy written into the event log. */
export class Circuit {
  currentA = 0;
  private readonly source: PowerSource;
  private level = 1;
  private readonly view: SourceView = { timeS: 0, currentA: 0, loadV: 0, shorted: false, neck: 0 };

  constructor(
    private readonly spec: SourceSpec,
    private readonly log: EventLog,
    random: Random,
  ) {
    this.source = createSource(spec, random);
  }

  /** Voltage at the open terminals. */
  openV(): number {
    return this.spec.openV * this.level;
  }

  /** New set voltage and level of the closing ramp. */
  set(setV: number | undefined, level: number): void {
    this.level = level;
    this.source.set(setV, level);
  }

  /** One step at the load voltage `loadV`; `neck` is how far the bridge has gone. */
  step(timeS: number, loadV: number, shorted: boolean, neck: number, dt: number): void {
    const view = this.view;
    view.timeS = timeS;
    view.currentA = this.currentA;
    view.loadV = loadV;
    view.shorted = shorted;
    view.neck = neck;
    const next = this.source.step(view, dt);
    if (this.source.pulseStarted()) this.log.pulses.push(timeS);
    this.log.addEnergy(this.spec, this.source.driveV(), loadV, this.currentA, next, dt);
    this.currentA = next;
  }

  /** Pull-back of the wire by the source, mm/s. */
  retractMmPerS(): number {
    return this.source.retractMmPerS();
  }
}

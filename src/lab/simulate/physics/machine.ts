import type { Random } from '../../../core/index.js';
import type { ArcScenario } from '../scenario.js';
import { ArcColumn } from './arc-column.js';
import { Circuit } from './circuit.js';
import { Contact } from './contact.js';
import { EventLog } from './event-log.js';
import { createHand, createPool, type Motion } from './motion.js';
import { PendantDrop } from './pendant-drop.js';
import { WireEnd } from './wire-end.js';

/** Electrical step, s. Slow parts (pool, drop, hand) move every {@link SLOW_STEPS} steps. */
export const STEP_S = 2e-5;
const SLOW_STEPS = 3;
const SLOW_S = STEP_S * SLOW_STEPS;

type Phase = 'idle' | 'waiting' | 'shorted' | 'arcing';

/** Wire, drop, pool and source, advanced step by step. The arc is what drop and pool leave of the gap. */
export class ArcMachine {
  readonly log: EventLog;
  readonly circuit: Circuit;
  timeS = 0;
  voltageV = 0;
  feedMmPerS = 0;
  private phase: Phase = 'idle';
  private poolMm = 0;
  private struck = false;
  private stopped = false;
  private tick = 0;
  private readonly drop: PendantDrop;
  private readonly column: ArcColumn;
  private readonly contact: Contact;
  private readonly pool: Motion;
  private readonly hand: Motion;
  private readonly random: Random;
  private readonly wire: WireEnd;

  constructor(
    private readonly scenario: ArcScenario,
    random: Random,
  ) {
    this.random = random.fork('machine');
    this.wire = new WireEnd(scenario, this.random.uniform(1, 4));
    this.drop = new PendantDrop(scenario, random.fork('neck'));
    this.column = new ArcColumn(scenario, STEP_S);
    this.contact = new Contact(scenario, random.fork('bridge'));
    this.pool = createPool(scenario.pool, random.fork('pool'));
    this.hand = createHand(scenario.hand, random.fork('hand'));
    this.log = new EventLog(this.drop.volumeMm3);
    this.circuit = new Circuit(scenario.source, this.log, random.fork('source'));
  }

  /** Trigger pressed: open-circuit voltage on, wire creeps. `burning` starts in the middle of an arc. */
  start(burning: boolean): void {
    this.phase = burning ? 'arcing' : 'waiting';
    this.struck = burning;
    if (!burning) return;
    this.circuit.currentA = 120;
    this.wire.gapMm = 1 + this.scenario.wire.diameterMm / 2;
    this.log.openArc(this.timeS);
  }

  /** Everything off; closes what is open. */
  stop(): void {
    if (this.stopped) return;
    this.stopped = true;
    if (this.phase === 'shorted') this.endShort(0, true);
    if (this.phase !== 'idle' && this.struck) this.log.closeArc(this.timeS);
    this.phase = 'idle';
    this.voltageV = 0;
    this.circuit.currentA = 0;
    this.log.balance.hangingLiquidMm3 += this.drop.volumeMm3;
  }

  /** One electrical step of {@link STEP_S}. */
  step(): void {
    this.timeS += STEP_S;
    if (this.phase === 'idle') return;
    if (++this.tick % SLOW_STEPS === 0) this.slowStep();
    this.column.flicker(this.random);
    if (this.phase === 'waiting') this.voltageV = this.circuit.openV();
    else {
      this.voltageV = this.loadVoltage();
      const shorted = this.phase === 'shorted';
      this.circuit.step(this.timeS, this.voltageV, shorted, this.contact.progress, STEP_S);
    }
    this.feed();
    if (this.phase === 'shorted') this.shortStep();
    else this.contactOrDeath();
  }

  /** What the wandering root of a burning arc adds to the voltage, V. */
  unrestV(): number {
    return this.phase === 'arcing' ? this.column.unrestV : 0;
  }

  /** Length of the arc column, mm; at or below 0 metal touches metal. */
  private arcMm(): number {
    return this.wire.gapMm - this.drop.extentMm - this.poolMm;
  }

  private loadVoltage(): number {
    const { arc } = this.scenario;
    const pathOhm = arc.wireOhmPerMm * this.wire.extensionMm() + this.column.strayPathOhm();
    const extensionV = pathOhm * this.circuit.currentA;
    if (this.phase === 'shorted') return this.contact.volts(this.circuit.currentA) + extensionV;
    return this.column.volts(this.circuit.currentA, this.arcMm(), this.drop.bumpV()) + extensionV;
  }

  /** Wire in, melt off, gap and drop follow. */
  private feed(): void {
    const waiting = this.phase === 'waiting';
    const melt = waiting ? 0 : this.wire.melting(this.circuit.currentA, this.phase === 'arcing');
    const speed = this.wire.speed(this.feedMmPerS, this.struck) - this.circuit.retractMmPerS();
    this.wire.gapMm += (melt - speed) * STEP_S;
    const melted = melt * this.wire.areaMm2 * STEP_S;
    this.drop.volumeMm3 += this.wire.liquid(melted);
    this.log.addFeed(speed * this.wire.areaMm2 * STEP_S, melted);
  }

  /** Pool, hand, slow voltage and feed wander, swinging of the drop, and the neck. */
  private slowStep(): void {
    this.poolMm = this.pool.step(SLOW_S);
    this.wire.follow(this.hand.step(SLOW_S));
    this.column.drift(SLOW_S, this.random);
    this.wire.wander(SLOW_S, this.random);
    this.drop.swing(SLOW_S, this.random);
    if (this.phase !== 'arcing') return;
    const gone = this.drop.detach(this.circuit.currentA, SLOW_S, this.random);
    if (gone === 0) return;
    this.log.addDrop(this.timeS, gone, this.drop.released);
    this.pool.push(this.scenario.pool.impactMm * gone);
  }

  private contactOrDeath(): void {
    const reach = this.phase === 'waiting' ? this.wire.gapMm - this.drop.extentMm : this.arcMm();
    if (reach <= 0) this.beginShort();
    if (this.phase !== 'arcing') return;
    const dead = this.circuit.currentA < 2 && this.column.sinceIgnitionS > 1e-3;
    if (!dead && reach <= 25) return;
    this.phase = 'waiting';
    this.circuit.currentA = 0;
    this.log.closeArc(this.timeS);
  }

  private beginShort(): void {
    this.contact.begin(this.timeS, this.drop.radiusMm, this.phase === 'waiting', this.random);
    this.phase = 'shorted';
  }

  private shortStep(): void {
    const { bridging, pool } = this.scenario;
    const state = this.contact.step(this.circuit.currentA, this.wire.gapMm - this.poolMm, STEP_S);
    if (state === 'closed') return;
    if (state === 'fused') {
      this.endShort(0, false);
      this.burnOff(0.2 + this.random.uniform(0, 0.8));
      this.reignite(0.2);
    } else if (state === 'parted') {
      this.endShort((1 - bridging.leave) * this.drop.volumeMm3, false);
      this.pool.push(pool.kickMm);
      this.reignite(bridging.ruptureGapMm);
    } else if (this.recoils()) {
      this.endShort(0, true);
      this.pool.push(0.6 * pool.kickMm);
      this.reignite(0);
    } else this.contact.stays(this.drop.radiusMm);
  }

  /** A repelled drop springs up; false when that does not part it from the pool. */
  private recoils(): boolean {
    this.drop.recoil(this.scenario.bridging.ruptureGapMm - this.arcMm());
    return this.arcMm() > 0.05;
  }

  private endShort(transferredMm3: number, incipient: boolean): void {
    this.drop.volumeMm3 -= transferredMm3;
    const { startS } = this.contact;
    this.log.addShort({ startS, endS: this.timeS, transferredMm3, incipient });
  }

  /** The burst throws back pool and drop; where that leaves less than `leastMm`, wire burns off too. */
  private reignite(leastMm: number): void {
    this.column.ignite(this.voltageV);
    this.phase = 'arcing';
    this.drop.neck.reset();
    this.drop.measure();
    if (leastMm > 0 && this.arcMm() < leastMm) this.burnOff(leastMm - this.arcMm());
    this.log.openArc(this.timeS);
    this.struck = true;
  }

  private burnOff(mm: number): void {
    const solid = mm * this.wire.areaMm2;
    this.wire.gapMm += mm;
    this.log.addBurnOff(this.timeS, solid, this.wire.liquid(solid));
  }
}

/** Draws how an arc is set up: wire, gas, feed, source, hand. The mode it asks for is only an aim. */
import type { ForeignMode, ForeignSetup } from '../world.js';
import type { BridgeSetting } from './bridge.js';
import type { DropSetting } from './drop.js';
import {
  arcConstants,
  type Gas,
  gas,
  type Material,
  meltConstants,
  metals,
  repulsion,
  transitionCurrent,
} from './metals.js';
import type { Random } from './random.js';
import type { SourcePlan } from './source.js';
import { planLevels, planPulses } from './waves.js';
import { type Window, windowFor } from './windows.js';

/** Everything the run needs. Lengths in m, speeds in m/s. */
export interface ArcPlan {
  mode: ForeignMode;
  setup: ForeignSetup;
  gas: Gas;
  targetA: number;
  targetV: number;
  source: SourcePlan;
  feedMS: number;
  /** Melting speed: arc in m/(s A), resistance in 1/(s A2). */
  meltArc: number;
  meltOhm: number;
  swell: number;
  tipToPoolM: number;
  wireRadiusM: number;
  wireOhmPerM: number;
  leadOhm: number;
  fallV: number;
  arcOhm: number;
  fieldVPerM: number;
  drop: DropSetting;
  bridge: BridgeSetting;
  incipientShare: number;
  /** Share of the hanging metal that stays on the wire after a drop and after a bridge. */
  stayDrop: number;
  stayBridge: number;
  /** Slow wander: hand in m, feed as a share; fuzz of the arc in V (fast and slow). */
  handM: number;
  handHz: number;
  feedShare: number;
  fuzzV: number;
  fuzzHz: number;
  flutterV: number;
  rootTimeS: number;
  poolHz: number;
  poolDamping: number;
  /** Swing of the pool after one break, and its own unrest (standard deviation), m. */
  poolKickM: number;
  poolNoiseM: number;
  /** Rise time of the arc voltage, s, and overshoot after a break, V. */
  riseS: number;
  overshootV: number;
}

function drawMetal(mode: ForeignMode, r: Random): { m: Material; d: number; g: Gas } {
  if (mode === 'short-circuit') {
    const m = r.weighted<Material>([
      ['steel', 0.76],
      ['stainless', 0.16],
      ['aluminium', 0.08],
    ]);
    if (m === 'aluminium') return { m, d: r.pick([0.8, 1, 1.2]), g: gas(0) };
    const d = r.pick([0.8, 0.9, 1, 1, 1.2, 1.2]);
    if (m === 'stainless') return { m, d, g: r.pick([gas(2), gas(3), gas(0, 2)]) };
    return {
      m,
      d,
      g: gas(
        r.weighted([
          [100, 0.3],
          [18, 0.22],
          [20, 0.14],
          [25, 0.18],
          [8, 0.06],
          [15, 0.1],
        ]),
      ),
    };
  }
  if (mode === 'globular') {
    const kind = r.weighted([
      ['co2', 0.5],
      ['mix', 0.3],
      ['argon', 0.2],
    ] as const);
    const d = r.pick([0.9, 1, 1.2, 1.2, 1.6]);
    if (kind === 'co2')
      return {
        m: 'steel',
        d,
        g: gas(
          r.weighted([
            [100, 0.8],
            [50, 0.2],
          ]),
        ),
      };
    if (kind === 'mix') return { m: 'steel', d, g: gas(r.pick([12, 15, 18, 20, 25, 30])) };
    const m = r.pick<Material>(['steel', 'stainless', 'aluminium']);
    const g = m === 'aluminium' ? gas(0) : r.pick([gas(0, 2), gas(2), gas(5), gas(8)]);
    return { m, d, g };
  }
  const m = r.weighted<Material>([
    ['steel', 0.58],
    ['stainless', 0.2],
    ['aluminium', 0.22],
  ]);
  const d = r.pick([0.8, 0.9, 0.9, 1, 1, 1.2, 1.2, 1.2, 1.6]);
  if (m === 'aluminium') return { m, d: d === 0.9 ? 1 : d, g: gas(0) };
  if (m === 'stainless') return { m, d, g: r.pick([gas(2), gas(0, 1), gas(0, 2), gas(3)]) };
  const g = r.pick([gas(0, 2), gas(0, 5), gas(5), gas(8), gas(10), gas(12), gas(15), gas(18)]);
  return { m, d, g };
}

/** Where the student sets the machine: inside the window eight times in ten, a little outside else. */
function drawTarget(mode: ForeignMode, w: Window, it: number, r: Random): { a: number; v: number } {
  let [low, high] = w.a;
  if (mode === 'spray') {
    low = Math.max(low, 1.03 * it);
    high = Math.max(high, 1.12 * low);
  }
  let a = low + (high - low) * (mode === 'spray' ? r.next() ** 1.5 : r.next());
  const part = (a - w.a[0]) / (w.a[1] - w.a[0]);
  const v0 = w.v[0];
  const dv = w.v[1] - w.v[0];
  let v = v0 + dv * Math.max(0.03, Math.min(0.97, 0.12 + 0.55 * part + r.range(-0.2, 0.3)));
  // Globular arcs are often kept short, which lets drops touch (own choice).
  if (mode === 'globular') v = v0 + dv * r.range(0.02, 0.8) * (0.4 + 0.6 * part);
  if (r.chance(0.18)) {
    a *= r.pick([r.range(0.85, 0.95), r.range(1.05, 1.15)]);
    v *= r.pick([r.range(0.9, 0.96), r.range(1.04, 1.1)]);
  }
  return { a, v };
}

function drawSource(r: Random, volts: number, amps: number, d: number): SourcePlan {
  const slopeOhm = r.range(0.006, 0.032); // common practice 20 to 30 milliohm; flatter ones from memory
  const h = r.logRange(1.1e-4, 4.5e-4) * (d < 0.95 ? 0.85 : 1); // common practice: 100 to 500 uH
  return {
    kind: 'constant-voltage',
    openV: volts + slopeOhm * amps,
    slopeOhm,
    inductanceUpH: h,
    inductanceDownH: h * r.range(0.8, 1.7),
    rippleHz: r.pick([100, 120, 300, 360]),
    rippleShare: r.chance(0.5) ? 0 : r.logRange(0.002, 0.03),
  };
}

/** Draws one plan that aims at a mode. */
export function drawPlan(mode: ForeignMode, r: Random): ArcPlan {
  const { m, d, g } = drawMetal(mode, r);
  const metal = metals[m];
  const it = transitionCurrent(m, d, g) * r.range(0.93, 1.07); // extension and chemistry: within 10 %
  const stickMm = mode === 'short-circuit' ? r.range(7, 14) + 1.5 * (d - 0.8) : r.range(11, 21);
  const melt = meltConstants(metal, d);
  const meltArc = melt.arc * r.range(0.95, 1.05) * 1e-3;
  const meltOhm = melt.ohm * r.range(0.9, 1.1);
  const arc = arcConstants(m, g);
  const fallV = arc.fallV + r.range(-0.7, 0.7);
  const fieldVPerM = arc.fieldVPerM * r.range(0.85, 1.15);
  const wireOhmPerM = metal.wireOhm12 * (1.2 / d) ** 2;
  const leadOhm = r.range(0.001, 0.008); // common practice: 1 V at 100 A to 3 V at 500 A for the whole lead
  const target = drawTarget(mode, windowFor(mode, m, d, g), it, r);
  const stickM = stickMm * 1e-3;
  const speed = (a: number, a2: number): number => meltArc * a + meltOhm * stickM * a2;
  const lossOhm = arc.ohm + wireOhmPerM * stickM + leadOhm;
  const area = Math.PI * (d * 0.5e-3) ** 2;
  let source: SourcePlan;
  let feedMS = speed(target.a, target.a ** 2);
  let lengthM: number;
  if (mode === 'pulsed-spray') {
    const p = planPulses(r, it, d, speed, area * metal.swell);
    lengthM = r.range(0.0024, 0.006) + d * 1e-3;
    p.source.meanV = fallV + lossOhm * p.meanA + fieldVPerM * (lengthM - 0.0006);
    feedMS = p.feedMS;
    target.a = p.meanA;
    target.v = p.source.meanV;
    source = p.source;
  } else if (mode === 'short-circuit') {
    lengthM = r.range(0.0008, 0.0016);
    if (r.chance(0.25)) source = planLevels(r, target.a, d, m);
    else source = drawSource(r, target.v, target.a, d);
  } else {
    // The arc must have room: a target too low for any length is lifted to the shortest useful arc.
    const least = (mode === 'spray' ? 0.0024 : 0.0014) + d * 5e-4;
    const leastV = fallV + lossOhm * target.a + fieldVPerM * least;
    target.v = Math.max(target.v, leastV + (mode === 'spray' ? r.range(0, 1) : r.range(0, 2)));
    // Arcs in CO2-rich gas are often kept so short that drops touch (own choice).
    if (mode === 'globular' && repulsion(g) > 0.3 && r.chance(0.7)) {
      target.v = leastV + r.range(-0.9, 0.8);
    }
    lengthM = (target.v - fallV - lossOhm * target.a) / fieldVPerM;
    if (lengthM > 0.011) {
      lengthM = 0.011;
      target.v = fallV + lossOhm * target.a + fieldVPerM * lengthM;
    }
    source = drawSource(r, target.v, target.a, d);
  }
  const poolHz = r.logRange(25, 150); // from memory: tens of Hz to above 100 Hz
  const tensionNM = r.range(metal.surfaceTension[0], metal.surfaceTension[1]);
  const shape = { 'short-circuit': 0.9, globular: 1.6, spray: 1, 'pulsed-spray': 1 }[mode];
  const openV = source.kind === 'constant-voltage' ? source.openV : target.v + 0.01 * target.a;
  return {
    mode,
    setup: {
      material: m,
      wireDiameterMm: d,
      gas: g.name,
      setVoltageV: Math.round(openV * 2) / 2,
      wireFeedMPerMin: Math.round(feedMS * 60 * 10) / 10,
      stickOutMm: Math.round(stickMm + r.range(-1.5, 1.5)),
    },
    gas: g,
    targetA: target.a,
    targetV: target.v,
    source,
    feedMS,
    meltArc,
    meltOhm,
    swell: metal.swell,
    tipToPoolM: stickM + lengthM + shape * d * 1e-3,
    wireRadiusM: d * 0.5e-3,
    wireOhmPerM,
    leadOhm,
    fallV,
    arcOhm: arc.ohm,
    fieldVPerM,
    drop: {
      wireRadiusM: d * 0.5e-3,
      densityKgM3: metal.liquidDensity,
      tensionNM,
      transitionA: it,
      repulsion: repulsion(g),
      jet: r.range(0.8, 1.25) * (tensionNM / 1.25),
      damping: r.range(0.12, 0.35),
      blastS: r.range(0.0025, 0.006), // own choice
      upward: r.chance(0.06),
    },
    bridge: {
      densityKgM3: metal.liquidDensity,
      tensionNM,
      pinchA: 250 * (d / 1.2) ** 0.8 * r.range(0.85, 1.2),
      slowness: r.logRange(1.2, 3.2),
    },
    incipientShare: 0.12 * r.next() ** 2 + 0.06 * repulsion(g) * r.next(),
    stayDrop: r.range(0.12, 0.25),
    stayBridge: r.range(0.2, 0.5),
    handM: r.logRange(0.0001, 0.0014),
    handHz: r.range(0.3, 2.5),
    feedShare: r.range(0.005, 0.04),
    fuzzV: r.logRange(0.05, 0.45),
    fuzzHz: r.logRange(400, 4000),
    flutterV: r.logRange(0.03, 0.5),
    rootTimeS: r.logRange(0.002, 0.015),
    poolHz,
    poolDamping: r.range(0.08, 0.3),
    poolKickM: r.logRange(8e-6, 1.2e-4),
    // The arc digs and shakes the pool with the square of its current; CO2 arcs dig deeper (own choice).
    poolNoiseM:
      (r.logRange(8e-6, 1.2e-4) +
        2.5e-4 * Math.min(2, (target.a / 200) ** 3) * r.next() +
        1e-3 * repulsion(g) * Math.min(1.5, (target.a / 200) ** 3) * r.next()) *
      (60 / Math.max(60, poolHz)) ** 0.7,
    riseS: r.logRange(2.5e-5, 1.2e-4),
    overshootV: r.range(1, 7),
  };
}

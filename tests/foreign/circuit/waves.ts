/** Plans for the current-controlled sources: pulses for one drop each, and dip with levels. */
import type { Material } from './metals.js';
import type { Random } from './random.js';
import type { Levels, Pulses } from './source.js';

/** Speed of melting for a mean current and a mean squared current, m/s. */
type Melting = (a: number, a2: number) => number;

/**
 * Pulses that melt about one drop each. The peak and its length follow Ip2 tp = D with D near 500 A2s for
 * 1.2 mm steel (from memory of Allum and Quintino 1985), scaled by transition current and wire.
 */
export function planPulses(
  r: Random,
  it: number,
  wireMm: number,
  speed: Melting,
  meltedArea: number,
): { source: Pulses; feedMS: number; meanA: number } {
  for (let tries = 0; ; tries++) {
    const peakA = it * r.range(1.45, 2.05);
    const riseS = r.range(2e-4, 6e-4);
    const fallS = r.range(2e-4, 6e-4);
    const law = 500 * (it / 225) ** 2 * (wireMm / 1.2) ** 1.1 * r.range(0.75, 1.1);
    const peakS = law / peakA ** 2 - 0.4 * (riseS + fallS);
    const baseA = r.range(22, 80) * (0.4 + (0.5 * wireMm) / 1.0);
    const rateHz = r.logRange(35, 330);
    const periodS = 1 / rateHz;
    const onS = peakS + 0.5 * (riseS + fallS);
    const meanA = baseA + (peakA - baseA) * onS * rateHz;
    const squareA =
      baseA ** 2 + (peakA ** 2 - baseA ** 2) * (peakS + 0.38 * (riseS + fallS)) * rateHz;
    const feedMS = speed(meanA, squareA);
    const diameter = 1e3 * Math.cbrt((6 * feedMS * meltedArea * periodS) / Math.PI);
    const fits =
      peakS > 5e-4 &&
      onS * rateHz < 0.55 &&
      diameter > 0.82 * wireMm &&
      diameter < 1.3 * wireMm &&
      meanA < 0.98 * it;
    if (!fits && tries < 400) continue;
    return {
      source: {
        kind: 'pulses',
        baseA,
        peakA,
        riseS,
        peakS,
        fallS,
        // Clocks of sources turn in steps of 20 us (own choice).
        periodS: Math.round(periodS / 2e-5) * 2e-5,
        meanV: 0,
        hold: r.weighted([
          ['period', 0.45],
          ['base', 0.4],
          ['none', 0.15],
        ] as const),
        rippleHz: r.pick([100, 120, 300, 360]),
        rippleShare: r.chance(0.5) ? 0 : r.logRange(0.001, 0.012),
      },
      feedMS,
      meanA,
    };
  }
}

/** Dip with two or three levels of current: boost after the break, an optional tail, a base (own choice). */
export function planLevels(r: Random, meanA: number, wireMm: number, m: Material): Levels {
  const baseA = meanA * r.range(0.3, 0.55);
  const boostA = Math.min(420, meanA * r.range(1.7, 2.4));
  const rateHz = r.range(50, 125) * (m === 'aluminium' ? 0.9 : 1);
  const three = r.chance(0.5);
  const tailShare = three ? r.range(0.25, 0.5) : 0;
  const tailS = three ? r.range(0.001, 0.003) : 0;
  const charge = (meanA - baseA) / rateHz - tailShare * (boostA - baseA) * tailS;
  const cut = r.chance(0.6);
  return {
    kind: 'levels',
    baseA,
    boostA,
    boostS: Math.max(6e-4, Math.min(4.5e-3, (0.85 * charge) / (boostA - baseA))),
    tailShare,
    tailS,
    wetS: r.range(3e-4, 8e-4),
    wetA: r.range(25, 60),
    pinchAPerS: r.range(1e5, 2.5e5),
    pinchA: 330 * (wireMm / 1.2) * r.range(0.8, 1.2),
    cutNeck: cut ? r.range(0.12, 0.3) : 0,
    rippleHz: r.pick([100, 120, 300, 360]),
    rippleShare: r.chance(0.5) ? 0 : r.logRange(0.001, 0.012),
  };
}
